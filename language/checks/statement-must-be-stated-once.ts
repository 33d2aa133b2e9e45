import type { AstNode } from "langium";
import type { LoadLimit, Uncertainty, Usual } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** What can be said only once, and of what. */
const ONCE: Readonly<Record<string, string>> = {
  Intent: "The intent is stated",
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
  Estimated: "The metric is estimated",
  Next: "The plan says what comes next",
  Review: "The step has its reviews",
  Coverage: "The instrument says what its figures cover",
  Usual: "What is usual of this is stated",
  LoadLimit: "How many of these swings are enough is stated",
  Uncertainty: "How exact these readings are is stated",
};

/** What a statement is about, where the same can be said of several things; empty for everything there is. */
const ABOUT: Readonly<Record<string, (statement: never) => readonly string[]>> = {
  Usual: ({ metric, club }: Usual) => [`${metric?.$refText} ${club?.$refText ?? ""}`],
  LoadLimit: ({ fullEffort, period }: LoadLimit) => [`${fullEffort} ${period ?? "session"}`],
  Uncertainty: ({ metric, clubs }: Uncertainty) =>
    (clubs.length === 0 ? [""] : clubs.map(({ $refText }) => $refText)).map(
      (club) => `${metric?.$refText} ${club}`,
    ),
};

/** A second statement of something that can be said only once. */
export const check = defineCheck({
  on: ["Plan", "Player", "Source", "Session", "Metric", "Instrument", "Curriculum", "CurriculumStep"],
  reason: "Two statements of what can be only one thing leave open which of them holds.",
  run({ statements }, { document, report }) {
    const first = new Map<string, AstNode>();
    for (const statement of statements as readonly AstNode[]) {
      const said = ONCE[statement.$type];
      if (said === undefined) continue;
      const things = ABOUT[statement.$type]?.(statement as never) ?? [""];
      const keys = things.map((thing) => `${statement.$type} ${thing}`);
      const earlier = keys.map((key) => first.get(key)).find((known) => known !== undefined);
      if (earlier === undefined) {
        for (const key of keys) first.set(key, statement);
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
  usual carry 150 yd with 7-iron
  usual carry 120 yd with 9-iron
  «usual carry 155 yd with 7-iron»
  limit 60 swings
  «limit 50 swings a session»
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random
  reads carry within 3 m random for driver
  «reads carry within 4 m random for 7-iron, driver»
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
  usual carry 150 yd with 7-iron
  usual carry 120 yd with 9-iron
  limit 60 swings
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random
  reads carry within 3 m random for driver
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
