/** How something moved, in everyday words. */
import { block, type Slip } from "./slip.ts";

const goals = (...lines: string[]) =>
  block("10 shots", "success {", ...lines.map((line) => `  ${line}`), "}");

const moved = (text: string) => `A change is written \`carry ${text} against …\`.`;

export const SLIPS: readonly Slip[] = [
  {
    name: "what a change is held against, in other words",
    text: goals(
      "carry gains 5 yd against «baseline»",
      "carry gains 5 yd against «last session»",
      "carry gains 5 yd against «the previous session»",
      "carry gains 5 yd against «the usual»",
    ),
    messages: [
      "`baseline` is `the baseline` here.",
      "`last session` is `the last session` here.",
      "`the previous session` is `the last session` here.",
      "`the usual` is `usual` here.",
    ],
    fixed: goals(
      "carry gains 5 yd against the baseline",
      "carry gains 5 yd against the last session",
      "carry gains 5 yd against the last session",
      "carry gains 5 yd against usual",
    ),
  },
  {
    name: "a change as a comparison",
    text: goals(
      'carry «is 5 yd more than» "Start"',
      'carry «5 yd longer than» "Start"',
      'carry «+5 yd against» "Start"',
      "average carry «is 5 yd less than» usual",
    ),
    messages: [moved("gains 5 yd"), moved("gains 5 yd"), moved("gains 5 yd"), moved("loses 5 yd")],
    fixed: goals(
      'carry gains 5 yd against "Start"',
      'carry gains 5 yd against "Start"',
      'carry gains 5 yd against "Start"',
      "average carry loses 5 yd against usual",
    ),
  },
  {
    name: "no change, which is a small one",
    text: goals(
      'carry «does not fall» against "Start"',
      'carry «must not increase by» 5 yd against "Start"',
      'carry «stays the same as» "Start"',
    ),
    messages: [
      "How little it may move is said with an amount: `carry loses no more than … against …`.",
      "How little it may move is said with an amount: `carry gains no more than … against …`.",
      "How little it may move is said with an amount: `stays within … against …`.",
    ],
  },
];
