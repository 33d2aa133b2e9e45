import {
  isAirPressure,
  isAirTemperature,
  isAltitude,
  isBall,
  isSessionPlan,
  isWind,
  type Plan,
} from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck } from "./check.ts";
import { insertStatement } from "./edits.ts";
import { reachedFrom } from "./reached.ts";
import { code, listed } from "./wording.ts";

/** The carry in reference air, which takes the air of the day. */
const STANDARDISED = "standard-carry";

/** A standardised carry without the air it was hit in. */
export const check = defineCheck({
  on: ["Session"],
  reason: "What the air took or gave can only be taken out where the air is known.",
  run(session, context) {
    const { document, report } = context;
    const { statements } = session;
    const reference = statements.find(isSessionPlan);
    const plan = reference?.plan?.ref;
    if (plan === undefined || !asksForStandardCarry(plan, context)) return;
    const ball = statements.find(isBall);
    const missing = [
      statements.some(isAirTemperature) ? "" : "temperature 15 °C",
      statements.some(isWind) ? "" : "wind calm",
      statements.some((line) => isAirPressure(line) || isAltitude(line)) ? "" : "altitude 0 m",
    ].filter(Boolean);
    if (ball !== undefined && ball.share === undefined) {
      report({
        message: `The plan compares ${code(STANDARDISED)}, and how far this ball carries is not stated. Write for example ${code("carries 92 %")} behind its name.`,
        node: ball,
      });
    }
    if (missing.length === 0) return;
    const words = missing.map((line) => code(line.split(" ")[0] ?? ""));
    const edit = insertStatement(document, session, missing.join("\n  "));
    report({
      message: `The plan compares ${code(STANDARDISED)}, for which ${listed(words, "and")} must be known. State them as they were, such as ${listed(missing.map(code), "and")}.`,
      node: reference ?? session,
      fixes: edit === undefined ? [] : [{ title: "Write them, to be put right", edits: [edit] }],
    });
  },
  reporting: `
plan "Far" {
  block "Start" test {
    10 shots
    success average standard-carry at least 150 m
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  «plan "Far"»
  player "P-1"
  data "first.csv" from "Bay"
  wind calm
}`,
  fixed: `
plan "Far" {
  block "Start" test {
    10 shots
    success average standard-carry at least 150 m
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  temperature 15 °C
  altitude 0 m
  plan "Far"
  player "P-1"
  data "first.csv" from "Bay"
  wind calm
}`,
  silent: `
plan "Far" {
  block "Start" test {
    10 shots
    success average standard-carry at least 150 m
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Far"
  player "P-1"
  data "first.csv" from "Bay"
  wind calm
  temperature 18 °C
  altitude 300 m
}`,
});

/** Whether a plan speaks of the standardised carry. */
export function asksForStandardCarry(plan: Plan, context: CheckContext): boolean {
  return reachedFrom(plan, context).uses.some(({ metric }) => metric.$refText === STANDARDISED);
}
