import { AstUtils } from "langium";
import {
  isAgainstBaseline,
  isAgainstBlock,
  isChangeCriterion,
  isNeeds,
  isSession,
  isSessionPlan,
  type Plan,
} from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck } from "./check.ts";
import { asksForStandardCarry } from "./conditions-should-be-stated.ts";
import { type MetricUse, reachedFrom } from "./reached.ts";
import { code } from "./wording.ts";

/** Words by which balls are known that do not fly like new ones. */
const WORN = /\b(?:range|practice|training|used|old|limited)\b/i;

/** A range ball that does not say how far it carries. */
export const check = defineCheck({
  on: ["Ball"],
  reason: "Range balls carry a few percent less than new ones, and days with different balls do not compare.",
  run(ball, context) {
    if (ball.share !== undefined || !WORN.test(ball.name)) return;
    const session = AstUtils.getContainerOfType(ball, isSession);
    const plan = session?.statements.find(isSessionPlan)?.plan?.ref;
    // Where the plan asks for the standardised carry, that it is missing weighs more, and is told.
    if (plan === undefined || asksForStandardCarry(plan, context) || !judgesDistance(plan, context)) return;
    context.report({
      message: `How far does this ball carry, compared with a new one? If you know, write it behind the name: ${code("carries 92 %")}.`,
      node: ball,
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target carry at least 150 yd
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  «ball "range, two stripes"»
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target carry at least 150 yd
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  ball "range, two stripes" carries 94 %
}`,
});

/** The distances that hang most on the ball. */
const DISTANCES: ReadonlySet<string> = new Set(["carry", "total"]);

/** Whether a distance is held against an amount, or against shots of another day. */
function judgesDistance(plan: Plan, context: CheckContext): boolean {
  return reachedFrom(plan, context).uses.some(
    ({ node, metric }) => DISTANCES.has(metric.$refText) && !isNeeds(node) && !isOfTheDay(node),
  );
}

/** Whether a change is held against shots of the same day, which had the same ball. */
function isOfTheDay(node: MetricUse["node"]): boolean {
  return isChangeCriterion(node) && (isAgainstBlock(node.against) || isAgainstBaseline(node.against));
}
