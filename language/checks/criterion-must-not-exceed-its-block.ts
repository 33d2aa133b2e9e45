import { numberOf } from "../types/parameters.ts";
import { shotsOf } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";
import { code, shots } from "./wording.ts";

/** A criterion over more shots than its block has. */
export const check = defineCheck({
  on: ["CountCriterion", "RunCriterion"],
  reason: "Shots that the block does not ask for are never hit, so the goal stays open for ever.",
  run(criterion, { report }) {
    const block = shotsOf(criterion);
    if (block === undefined || block.open) return;
    const { asked } = block;
    const isRun = criterion.$type === "RunCriterion";
    const wanted = numberOf(isRun ? criterion.length : criterion.outOf);
    if (wanted === undefined || wanted <= asked) return;
    const cst = cstOf(criterion, isRun ? "length" : "outOf");
    if (cst === undefined) return;
    const hits = isRun ? undefined : numberOf(criterion.count);
    const number = isRun ? criterion.length : (criterion.outOf ?? criterion.count);
    const edits = [writeNumber(number, String(asked))];
    if (!isRun && hits !== undefined && hits > asked && hits <= wanted) {
      edits.push(writeNumber(criterion.count, String(asked)));
    }
    const what = isRun ? `A run of ${wanted} is asked for` : `This is about ${shots(wanted)}`;
    report({
      message: `${what}, but the block has ${asked}. Ask for at most ${asked}, or write ${code(`at least ${asked} shots`)} in the block where more may be hit.`,
      node: criterion,
      cst,
      fixes: [{ title: `Make it ${asked}`, edits }],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of «12» shots on target
      at least 11 of «12» shots with carry at least 150 yd
      «11» in a row on target
    }
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target
      at least 10 of 10 shots with carry at least 150 yd
      10 in a row on target
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    at least 10 shots
    target start-direction within ±2°
    success {
      at least 7 of 12 shots on target
      11 in a row on target
    }
  }
}`,
});
