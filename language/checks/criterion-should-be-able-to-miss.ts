import type { CountCriterion, ShareCriterion } from "../generated/tree/ast.ts";
import { numberOf } from "../types/parameters.ts";
import { mostShots } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";

/** A criterion that every result meets. */
export const check = defineCheck({
  on: ["CountCriterion", "ShareCriterion"],
  reason: "A goal that cannot be missed tells nothing about the practice.",
  run(criterion, { report }) {
    const asked = numberOf(criterion.$type === "ShareCriterion" ? criterion.share : criterion.count);
    const most = mostOf(criterion);
    const isAlwaysMet = asked === (criterion.bound === "least" ? 0 : most);
    if (!isAlwaysMet || most === 0) return;
    const first = cstOf(criterion, "bound");
    const advice = criterion.bound === "least" ? "Ask for more than none" : "Allow fewer than all";
    report({
      message: `Every result meets this. ${advice}, or take the line out.`,
      node: criterion,
      ...(first === undefined ? {} : { cst: first }),
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success {
      at «least» 0 of 10 shots with carry at least 150 yd
      at «most» 10 of 10 shots with carry at least 150 yd
      at «most» 100 % of shots with carry at least 150 yd
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    success {
      at most 0 of 10 shots with carry below 100 yd
      at most 50 % of shots with carry below 140 yd
    }
  }
}`,
});

/** All shots that the criterion looks at; undefined where that is open. */
function mostOf(criterion: CountCriterion | ShareCriterion): number | undefined {
  if (criterion.$type === "ShareCriterion") return 100;
  return criterion.outOf === undefined ? mostShots(criterion) : numberOf(criterion.outOf);
}
