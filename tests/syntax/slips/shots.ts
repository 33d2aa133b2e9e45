/** Shots and how they are counted, in everyday words. */
import { block, type Slip } from "./slip.ts";

const OWN_LINE = "Each number of shots stands on a line of its own.";
const ONE_IS_ENOUGH = "Goals of which one is enough stand in `any of { … }`, one a line.";
const MISS =
  "A miss is a shot that is not on target: say how many must be, `at least … of … shots on target`.";
const ON_TARGET = "Shots that do what the targets ask are `on target`.";
const inARow = (text: string) => `Shots one after the other are \`${text}\`.`;

const effort = (percent: number) =>
  `How hard the swings are is a share of a full one: \`at ${percent} % effort\`.`;

const goals = (...lines: string[]) =>
  block("10 shots", "success {", ...lines.map((line) => `  ${line}`), "}");

/** A drill with a parameter for a share, and goals. */
const drill = (...lines: string[]) =>
  `drill "Gate" (share: ratio = 70) test {\n  10 shots\n  target carry at least 140 yd\n  success {\n${lines.map((line) => `    ${line}\n`).join("")}  }\n}\n`;

export const SLIPS: readonly Slip[] = [
  {
    name: "a range of shots",
    text: block("«10-15» shots"),
    messages: ["A block asks for one number of shots, so that it is known when it is over."],
    fixed: block("10 shots"),
  },
  {
    name: "two numbers of shots on a line",
    text: block("10 shots with 7-iron «and» 5 shots with 5-iron"),
    messages: [OWN_LINE],
    fixed: block("10 shots with 7-iron", "5 shots with 5-iron"),
  },
  {
    name: "a parameter for a share, without its sign",
    text: drill(
      "«at least share of shots» with carry at least 140 yd",
      "«at most share of the shots» on target",
    ),
    messages: ["at least share % of shots", "at most share % of shots"].map(
      (text) =>
        `A share of the shots is written with \`%\`, also where a parameter stands for it: \`${text}\`.`,
    ),
    fixed: drill(
      "at least share % of shots with carry at least 140 yd",
      "at most share % of shots on target",
    ),
  },
  {
    name: "a number of shots, of how many?",
    text: goals("«at least 7 of shots» with carry at least 140 yd"),
    messages: ["Say of how many, `at least 7 of … shots`, or that it is a share: `at least 7 % of shots`."],
  },
  {
    name: "goals on one line",
    text: goals("average carry at least 140 yd «and» spread of carry below 10 yd"),
    messages: ["Each goal stands on a line of its own; all of them count."],
    fixed: goals("average carry at least 140 yd", "spread of carry below 10 yd"),
  },
  {
    name: "both of two goals",
    text: goals("«both» average carry at least 140 yd"),
    messages: ["All goals of a block count: take `both` out."],
    fixed: goals("average carry at least 140 yd"),
  },
  {
    name: "one of two goals",
    text: goals("«either» 5 in a row on target", "7 in a row on target «or» average carry at least 140 yd"),
    messages: [ONE_IS_ENOUGH, ONE_IS_ENOUGH],
  },
  {
    name: "shots on target, in other words",
    text: goals(
      "at least 8 of 10 shots «within target»",
      "at least 8 of 10 shots «hit the target»",
      "at least 8 of 10 shots «in the target»",
    ),
    messages: [ON_TARGET, ON_TARGET, ON_TARGET],
    fixed: goals(
      "at least 8 of 10 shots on target",
      "at least 8 of 10 shots on target",
      "at least 8 of 10 shots on target",
    ),
  },
  {
    name: "a limit for no metric",
    text: goals("at least 8 of 10 shots «within» 2°"),
    messages: ["Say of which metric: `shots with … within …`."],
  },
  {
    name: "shots one after the other, in other words",
    text: goals(
      "«3 on target in a row»",
      "«3 consecutive shots on target»",
      "«5 good shots in a row»",
      "«4 straight shots» with carry at least 100 yd",
    ),
    messages: [
      inARow("3 in a row on target"),
      inARow("3 in a row on target"),
      inARow("5 in a row on target"),
      inARow("4 in a row"),
    ],
    fixed: goals(
      "3 in a row on target",
      "3 in a row on target",
      "5 in a row on target",
      "4 in a row with carry at least 100 yd",
    ),
  },
  {
    name: "no shots",
    text: goals("«no shots» with carry below 100 yd"),
    messages: ["How many shots is said as a number: `at most 0 shots`."],
    fixed: goals("at most 0 shots with carry below 100 yd"),
  },
  {
    name: "misses",
    text: goals("no «misses»", "at most 2 «misses»", "at most 1 shot «off» target"),
    messages: [MISS, MISS, MISS],
  },
  {
    name: "a word that begins no statement, before a number",
    text: block("10 shots", "«rest» 2 min"),
    messages: [
      "Found `rest`. A statement in a `block` starts with `at`, a number, `time`, `caution`, `change`, `cue`, `target`, `require`, `leave` or `success`.",
    ],
  },
  {
    name: "all of so many shots",
    text: goals("«all 10 shots» on target", "«every shot» on target"),
    messages: [
      "How many shots is said as a number: `at least 10 of 10 shots`.",
      "How many shots is said as a number: `at least 100 % of shots`.",
    ],
    fixed: goals("at least 10 of 10 shots on target", "at least 100 % of shots on target"),
  },
  {
    name: "a share of shots that are not named, or counted as well",
    text: goals(
      "at least 70 % «on» target",
      "at least 70 % «shots» on target",
      "at least 70 % of «10» shots on target",
    ),
    messages: [
      "A share is one `of shots`.",
      "A share is one `of shots`.",
      "A share is one of all shots of the block: take `10` out.",
    ],
    fixed: goals(
      "at least 70 % of shots on target",
      "at least 70 % of shots on target",
      "at least 70 % of shots on target",
    ),
  },
  {
    name: "a number of shots that is not certain, or stands behind a colon",
    text: block("«about» 10 shots", "«shots: 10»", "10 «putts» with putter"),
    messages: [
      "A block asks for one number of shots, so that it is known when it is over.",
      "The number stands first: `10 shots`.",
      "`putts` is `shots` here.",
    ],
    fixed: block("10 shots", "10 shots", "10 shots with putter"),
  },
  {
    name: "a word before the shots that is like no other",
    text: block("10 «easy» shots"),
    messages: ["Found `easy` where `shots` or `shot` was expected."],
  },
  {
    name: "a club before its shots",
    text: block("10 «7-iron shots»"),
    messages: ["The club stands behind `with`."],
    fixed: block("10 shots with 7-iron"),
  },
  {
    name: "a club behind the effort",
    text: block("10 shots «at 60 % effort with 7-iron»"),
    messages: ["The club stands before the effort: `with 7-iron at 60 % effort`."],
    fixed: block("10 shots with 7-iron at 60 % effort"),
  },
  {
    name: "two clubs for one number of shots",
    text: block("10 shots with 7-iron «and driver»"),
    messages: ["Each club has a line of its own, with its number of shots: `… shots with driver`."],
  },
  {
    name: "how hard the swings are, in other words",
    text: block(
      "10 shots «at half effort»",
      "10 shots «at 60 %»",
      "10 shots with 7-iron «effort 60 %»",
      "10 shots with 7-iron «60 % effort»",
      "5 shots with driver «at full speed»",
    ),
    messages: [effort(50), effort(60), effort(60), effort(60), effort(100)],
    fixed: block(
      "10 shots at 50 % effort",
      "10 shots at 60 % effort",
      "10 shots with 7-iron at 60 % effort",
      "10 shots with 7-iron at 60 % effort",
      "5 shots with driver at 100 % effort",
    ),
  },
];
