import { isAgainstUsual, isSummary } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** What a player's lines can state: the number itself stands for an average and for a median. */
const STATED: ReadonlySet<string> = new Set(["average", "median", "spread"]);

/** A change of a number of which nobody can say what is usual. */
export const check = defineCheck({
  on: ["ChangeCriterion"],
  reason: "A player states usual numbers and how much they vary, but no usual best, worst or percentile.",
  run(criterion, { report }) {
    const { statistic, against } = criterion;
    if (statistic === undefined || !isAgainstUsual(against)) return;
    if (isSummary(statistic) && STATED.has(statistic.name)) return;
    const what = isSummary(statistic) ? statistic.name : (statistic.$cstNode?.text ?? "statistic");
    report({
      message: `No player states a usual ${what}, so this is never measured. Take the ${code("average")}, the ${code("median")} or the ${code("spread")}, or hold it against a block or ${code("the last session")}.`,
      node: statistic,
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    12 shots
    success {
      «best» carry gains at least 5 yd against usual
      «90th percentile» of carry gains at least 5 yd against usual
      «middle 80 %» of carry falls by at least 2 yd against usual
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    12 shots
    success {
      carry gains at least 5 yd against usual
      median carry gains at least 5 yd against usual
      spread of carry falls by at least 2 yd against usual
      best carry gains at least 5 yd against the last session
    }
  }
}`,
});
