import { isStatisticCriterion } from "../generated/tree/ast.ts";
import { hasSides, isWidth, knownMetricAt } from "../types/amounts.ts";
import { defineCheck, type Fix } from "./check.ts";
import { insertBefore, rangeOf, replace } from "./edits.ts";
import { code } from "./wording.ts";

/** A tolerance that does not say around what. */
export const check = defineCheck({
  on: ["Within"],
  reason:
    "A tolerance is an amount more or less than another, and only ±, around straight, goes without that other.",
  run(within, { report }) {
    const metric = knownMetricAt(within);
    if (within.centre !== undefined || metric === undefined) return;
    const tolerance = within.tolerance.$cstNode?.text ?? "";
    const statistic = within.$container;
    const isSpread = isStatisticCriterion(statistic) && isWidth(statistic.statistic);
    if (hasSides(metric) && !isSpread) {
      if (within.symmetric) return;
      report({
        message: `Within ${tolerance} of what? Write ${code(`within ±${tolerance}`)} for both sides of straight, or ${code(`within ${tolerance} of …`)} for another middle.`,
        node: within,
        fixes: [
          { title: `Write within ±${tolerance}`, edits: [insertBefore(rangeOf(within.tolerance), "±")] },
        ],
      });
      return;
    }
    const most = `at most ${tolerance}`;
    const fix: Fix = { title: `Write ${most}`, edits: [replace(rangeOf(within), most)] };
    const what = isSpread ? "A spread" : code(metric.name);
    report({
      message: `${what} has no sides, so the middle must be stated: write ${code(`within ${tolerance} of …`)}, or ${code(most)}.`,
      node: within,
      fixes: [fix],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target start-direction «within 2°»
    target carry «within ±5 yd»
    success spread of carry «within 5 yd»
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
    target start-direction within ±2°
    target carry at most 5 yd
    success spread of carry at most 5 yd
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target start-direction within ±2°
    require carry within 5 yd of 150 yd
    success average start-direction within 2° of 1° right
  }
}`,
});
