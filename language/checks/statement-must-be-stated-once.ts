import type { AstNode } from "langium";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** What can be said only once, and of what. */
const ONCE: Readonly<Record<string, string>> = {
  Intent: "The plan has its intent",
  PlanTime: "The plan says how long it takes",
  Handedness: "The player has a hand",
  Separator: "The source has its separator",
  DecimalMark: "The source has its decimal mark",
  HeaderRow: "The source has its header row",
  ShotOrder: "The source says what the order of the shots goes by",
  SessionPlan: "The session has its plan",
  SessionPlayer: "The session has its player",
  SessionDate: "The session has its date",
  SessionInstrument: "The session has its instrument",
  Wind: "The session has its wind",
  AirTemperature: "The session has its temperature",
  AirPressure: "The session has its air pressure",
  Altitude: "The session has its altitude",
  Humidity: "The session has its humidity",
  Ball: "The session has its ball",
  PlayerLevel: "The player has a level",
  DecisionLevel: "The plan says how sure a verdict must be",
  ThousandsMark: "The source has its mark between thousands",
  ShownIn: "The metric says how it is shown",
  Positive: "The metric has words for its positive side",
  Negative: "The metric has words for its negative side",
  Plausible: "The metric has its plausible range",
  Formula: "The metric has its formula",
};

/** A second statement of something that can be said only once. */
export const check = defineCheck({
  on: ["Plan", "Player", "Source", "Session", "Metric"],
  reason: "Two statements of what can be only one thing leave open which of them holds.",
  run({ statements }, { document, report }) {
    const first = new Map<string, AstNode>();
    for (const statement of statements as readonly AstNode[]) {
      const said = ONCE[statement.$type];
      if (said === undefined) continue;
      const earlier = first.get(statement.$type);
      if (earlier === undefined) {
        first.set(statement.$type, statement);
        continue;
      }
      report({
        message: `${said} in line ${rangeOf(earlier).start.line + 1} already. Keep one of the two.`,
        node: statement,
        fixes: [{ title: "Keep the first", edits: [remove(document, rangeOf(statement))] }],
      });
    }
  },
  reporting: `
plan "Gate" {
  intent "Start on line."
  «intent "Land it soft."»
  time 40 min
  «time 1 h»
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
  «left-handed»
}`,
  fixed: `
plan "Gate" {
  intent "Start on line."
  time 40 min
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}`,
  silent: `
plan "Gate" {
  intent "Start on line."
  caution "Warm up first."
  caution "Stop on any pain."
  block "Start" {
    10 shots
  }
}`,
});
