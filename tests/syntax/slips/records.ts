/** Players, sources, sessions, curricula, findings, instruments and metrics in everyday words. */
import type { Slip } from "./slip.ts";

const within = (opener: string, ...lines: string[]) =>
  `${opener} {\n${lines.map((line) => `  ${line}\n`).join("")}}\n`;
const player = (...lines: string[]) => within('player "P-1"', ...lines);
const source = (...lines: string[]) => within('source "Bay"', ...lines);
const session = (...lines: string[]) => within('session "First"', ...lines);
const step = (...lines: string[]) =>
  within('curriculum "Irons"', 'step "Gate" {', ...lines.map((line) => `  ${line}`), "}");

export const SLIPS: readonly Slip[] = [
  {
    name: "the hand and the limits of a player",
    text: player("«hand: left»", "limit 40 «swings/day»"),
    messages: ["`hand : left` is `left-handed` here.", "`swings/day` is `swings a day` here."],
    fixed: player("left-handed", "limit 40 swings a day"),
  },
  {
    name: "a column without its word, with an arrow, and with a club as tables spell it",
    text: source(
      '«"Carry"» is carry in m',
      'column "Path" «→» club-path',
      'column "Club" is club where "7" is «7iron»',
    ),
    messages: [
      "What a column holds is said behind `column`.",
      "`→` is `is` here.",
      "The parts of a name are joined by hyphens: `7-iron`.",
    ],
    fixed: source(
      'column "Carry" is carry in m',
      'column "Path" is club-path',
      'column "Club" is club where "7" is 7-iron',
    ),
  },
  {
    name: "a file without its marks, a ball without its word, and a time with a point",
    text: session('data «first.csv» from "Bay"', 'ball "range" «92» %', 'block "Start" from «10.30»'),
    messages: [
      'Texts and names like this one stand in quotation marks: "first.csv".',
      "How far a ball carries stands behind `carries`.",
      "A time has a colon: 10:30.",
    ],
    fixed: session('data "first.csv" from "Bay"', 'ball "range" carries 92 %', 'block "Start" from 10:30'),
  },
  {
    name: "what opens a step, and when it is looked at again",
    text: step(
      'gate "Strike" «is» met',
      'gate "Strike" met «twice»',
      'gate "Strike" met «3 times»',
      "review «in» 7 d",
    ),
    messages: [
      "A gate says only what is `met`.",
      "How often is said in sessions: `in 2 sessions`.",
      "How often is said in sessions: `in 3 sessions`.",
      "`in` is `after` here.",
    ],
    fixed: step(
      'gate "Strike" met',
      'gate "Strike" met in 2 sessions',
      'gate "Strike" met in 3 sessions',
      "review after 7 d",
    ),
  },
  {
    name: "a gate whose block may be of any plan",
    text: step('gate block «"Test"» met'),
    messages: ['Say of which plan: `gate block "Test" of "…" met`.'],
  },
  {
    name: "two things seen at once, and what they may come from",
    text: within(
      'finding "Cut"',
      "when average club-path at least 3° out-to-in «and» average face-to-path at least 1° open",
      '«possible cause» "Open shoulders"',
    ),
    messages: [
      "Each thing that is seen has a `when` of its own; all must hold.",
      "`possible cause` is `suspect` here.",
    ],
    fixed: within(
      'finding "Cut"',
      "when average club-path at least 3° out-to-in",
      "when average face-to-path at least 1° open",
      'suspect "Open shoulders"',
    ),
  },
  {
    name: "a factor as a formula",
    text: within('instrument "Bay"', "coverage «k=»2"),
    messages: ["`k =` is `factor` here."],
    fixed: within('instrument "Bay"', "coverage factor 2"),
  },
  {
    name: "a metric in the marks of other notations",
    text: "metric pace«:» speed\nmetric rush is speed «in mph»\nmetric haste is speed {\n  formula «=» ball-speed * 2\n}\n",
    messages: [
      "What a metric is stands behind `is`.",
      "The unit in which a metric is shown stands between braces: `{ shown in mph to 1 }`.",
      "A formula stands right behind its word: take `=` out.",
    ],
    fixed:
      "metric pace is speed\nmetric rush is speed { shown in mph to 1 }\nmetric haste is speed {\n  formula ball-speed * 2\n}\n",
  },
  {
    name: "a formula where the dimension belongs",
    text: "metric pace is «ball-speed / club-speed»\n",
    messages: [
      "How a metric follows from others stands between braces: `metric pace is … { formula ball-speed / club-speed }`.",
    ],
  },
  {
    name: "a character that looks like a degree",
    text: 'plan "Gate" {\n  block "Start" {\n    10 shots\n    target launch-angle at most 20«º» up\n  }\n}\n',
    messages: ["This character only looks like the sign of degrees: write °."],
    fixed: 'plan "Gate" {\n  block "Start" {\n    10 shots\n    target launch-angle at most 20° up\n  }\n}\n',
  },
];
