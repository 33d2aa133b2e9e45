/** Statements that end too early, and braces that are missing or too many. */
import { block, plan, type Slip } from "./slip.ts";

export const SLIPS: readonly Slip[] = [
  {
    name: "a statement that ends too early",
    text: block("10 shots", "«cue»", "success at least 7 of 10 shots «on»"),
    messages: [
      'Behind `cue` something is missing: a text in "…".',
      "Behind `on` something is missing: `target`.",
    ],
    fixed: block("10 shots", "cue", "success at least 7 of 10 shots on target"),
  },
  {
    name: "a block that is not closed before the next",
    text: plan('block "One" «{»', "  10 shots", 'block "Two" {', "  10 shots", "}"),
    messages: ['This { is not closed. Put a } below the last line that belongs to block "One".'],
    fixed: plan('block "One" {', "  10 shots", "}", 'block "Two" {', "  10 shots", "}"),
  },
  {
    name: "a block whose brace the plan took",
    text: 'plan "Gate" {\n  block "One" «{»\n    10 shots\n}\n',
    messages: ['This { is not closed. Put a } below the last line that belongs to block "One".'],
  },
  {
    name: "a plan that is not closed at the end",
    text: 'plan "Gate" «{»\n  block "One" {\n    10 shots\n  }\n',
    messages: ['This { is not closed. Put a } below the last line that belongs to plan "Gate".'],
    fixed: 'plan "Gate" {\n  block "One" {\n    10 shots\n  }\n}\n',
  },
  {
    name: "a brace too many",
    text: plan('block "One" {', "  10 shots", "}", "}")
      .concat('«}»\n\nplayer "P-1" {\n}\n')
      .replace("  }\n}\n«}»", "}\n«}»"),
    messages: ["This } is one too many: nothing is open here. Take it out, or look for one too many above."],
    fixed: 'plan "Gate" {\n  block "One" {\n    10 shots\n  }\n}\n\n\nplayer "P-1" {\n}\n',
  },
  {
    name: "an opening brace that is missing",
    text: "«metric pace is speed»\n  shown in mph to 1\n  positive fast\n}\n",
    messages: ["The { of this `metric` is missing at the end of its line."],
    fixed: "metric pace is speed {\n  shown in mph to 1\n  positive fast\n}\n",
  },
  {
    name: "the end of the file where something is missing",
    text: "«metric»",
    messages: ["Behind `metric` something is missing: a name."],
  },
  {
    name: "a block without a name",
    text: plan("«block» {", "  10 shots", "}"),
    messages: ['Behind `block` something is missing: a text in "…".'],
  },
  {
    name: "a block without its {",
    text: plan('«block "Start"»', "  10 shots", "}"),
    messages: ["The { of this `block` is missing at the end of its line."],
    fixed: plan('block "Start" {', "  10 shots", "}"),
  },
  {
    name: "a success without its {",
    text: block("10 shots", "«success»", "  3 in a row on target", "  average carry at least 150 yd", "}"),
    messages: ["The { of this `success` is missing: without it there is one criterion."],
    fixed: block("10 shots", "success {", "  3 in a row on target", "  average carry at least 150 yd", "}"),
  },
  {
    name: "statements half typed, in the middle and at the end",
    text: 'plan "Gate" {\n  block "Start" {\n    «10»\n    target carry at least 150 yd\n  }\n  «for»\n}\n\nsession "First" {\n  data «"shots.csv"»\n}\n',
    messages: [
      "Behind `10` something is missing: `shots` or `shot`.",
      "Behind `for` something is missing: a name.",
      'Behind `"shots.csv"` something is missing: `from`.',
    ],
    fixed:
      'plan "Gate" {\n  block "Start" {\n    10\n    target carry at least 150 yd\n  }\n  for\n}\n\nsession "First" {\n  data "shots.csv" from\n}\n',
  },
  {
    name: "the last line of a file half typed",
    text: 'plan "Gate" {\n  block "Start" {\n    10 shots\n    target carry «at»',
    messages: ["Behind `at` something is missing: `least` or `most`."],
  },
  {
    name: "something that is no plan",
    text: "«Dear» coach,\n",
    messages: [
      "Found `Dear` where a declaration was expected: `use`, `dimension`, `metric`, `club`, `window`, `drill`, `plan`, `finding`, `curriculum`, `player`, `instrument`, `source` or `session`.",
    ],
  },
  {
    name: "what comes next, without braces",
    text: plan("«then repeat when every goal is met»", "time 40 min"),
    messages: ["What comes next stands between braces: `then { … }`, one recommendation a line."],
    fixed: plan("then { repeat when every goal is met }", "time 40 min"),
  },
  {
    name: "a word before the brace, which does not keep the block from being read",
    text: plan('block "Start" «practice» {', "  10 «balls»", "}"),
    messages: [
      "The statement is complete before `practice`. Take the rest out, or start a new line for the next one.",
      "`balls` is `shots` here.",
    ],
    fixed: plan('block "Start" practice {', "  10 shots", "}"),
  },
  {
    name: "a declaration that is indented, which does not end the plan",
    text: plan("«metric» depth is length", 'block "Start" {', "  10 shots", "}"),
    messages: ["`metric` cannot stand directly in a `plan`; it belongs outside all braces."],
  },
  {
    name: "a line that names a plan, where others are opened so",
    text: 'session "Lesson" {\n  plan "Gate"\n  «on» 2026-09-14\n}\n',
    messages: ["`on` is `date` here."],
    fixed: 'session "Lesson" {\n  plan "Gate"\n  date 2026-09-14\n}\n',
  },
];
