/** What comes next, in everyday words. */
import { plan, type Slip } from "./slip.ts";

const next = (...lines: string[]) => plan("then {", ...lines.map((line) => `  ${line}`), "}");

const ALL = "What is asked of all goals is written `every goal is`.";
const but = (text: string) => `What must not be is said with what may be: \`${text}\`.`;

export const SLIPS: readonly Slip[] = [
  {
    name: "all goals, in other words",
    text: next(
      'advance to "Gate" when «all goals are» met',
      "repeat when «everything is» missed",
      "repeat when «all goals» met",
    ),
    messages: [ALL, ALL, ALL],
    fixed: next(
      'advance to "Gate" when every goal is met',
      "repeat when every goal is missed",
      "repeat when every goal is met",
    ),
  },
  {
    name: "a verdict that must not be",
    text: next(
      'repeat when "Start" is «not met»',
      'repeat when "Start" «not missed»',
      'repeat «unless "Start" is met»',
    ),
    messages: [
      but("is missed or undecided or not-measured"),
      but("is met or undecided or not-measured"),
      but('when "Start" is missed or undecided or not-measured'),
    ],
    fixed: next(
      'repeat when "Start" is missed or undecided or not-measured',
      'repeat when "Start" is met or undecided or not-measured',
      'repeat when "Start" is missed or undecided or not-measured',
    ),
  },
  {
    name: "a goal and its verdict without a word between",
    text: next('repeat when "Start" «missed»', "repeat when any goal «missed»"),
    messages: [
      "A word stands between a goal and its verdict: `is`.",
      "A word stands between a goal and its verdict: `is`.",
    ],
    fixed: next('repeat when "Start" is missed', "repeat when any goal is missed"),
  },
  {
    name: "where the player goes from here",
    text: next(
      'advance «"Gate"» when every goal is met',
      '«go on to» "Gate" when every goal is met',
      'step back «"Gate"» when any goal is missed',
      "«stay» when any goal is undecided",
      "repeat «else»",
    ),
    messages: [
      "The plan that comes next stands behind `to`.",
      "`go on to` is `advance to` here.",
      "The plan that comes next stands behind `to`.",
      "`stay` is `repeat` here.",
      "`else` is `otherwise` here.",
    ],
    fixed: next(
      'advance to "Gate" when every goal is met',
      'advance to "Gate" when every goal is met',
      'step back to "Gate" when any goal is missed',
      "repeat when any goal is undecided",
      "repeat otherwise",
    ),
  },
];
