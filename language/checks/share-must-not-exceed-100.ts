import { numberOf } from "../types/parameters.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";

/** A share of more than all shots. */
export const check = defineCheck({
  on: ["ShareCriterion"],
  reason: "No player hits more than all shots, however well they do.",
  run(criterion, { report }) {
    const asked = numberOf(criterion.share);
    if (asked === undefined || asked <= 100) return;
    const share = cstOf(criterion, "share");
    if (share === undefined) return;
    report({
      message: `${asked} % is more than all shots. Ask for at most 100 %.`,
      node: criterion,
      property: "share",
      fixes:
        criterion.bound === "least"
          ? [{ title: "Ask for 100 %", edits: [writeNumber(criterion.share, "100")] }]
          : [],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least «110» % of shots with carry at least 150 yd
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 100 % of shots with carry at least 150 yd
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 100 % of shots with carry at least 150 yd
  }
}`,
});
