import { numberOf } from "../types/parameters.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A group that asks for more goals than it has, or has none. */
export const check = defineCheck({
  on: ["GroupCriterion"],
  reason: "More goals than there are cannot be met, however well the player does.",
  run(group, { report }) {
    const has = group.criteria.length;
    if (has === 0) {
      report({ message: "This group has no goals. Write them between its braces.", node: group });
      return;
    }
    const needed = numberOf(group.needed);
    if (needed === undefined || needed <= has) return;
    report({
      message: `${needed} of ${has} cannot be met. Write ${code(`all of`)}, or ask for at most ${has}.`,
      node: group,
      property: "needed",
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success «3» of {
      3 in a row with carry at least 100 m
      average carry at least 100 m
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    success 1 of {
      3 in a row with carry at least 100 m
      average carry at least 100 m
    }
  }
}`,
});
