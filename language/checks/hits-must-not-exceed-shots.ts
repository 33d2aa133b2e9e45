import { defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";

/** More hits are asked for than shots are looked at. */
export const check = defineCheck({
  on: ["CountCriterion"],
  reason: "A count that no number of hits can reach is never met, however well the player does.",
  run(criterion, { report }) {
    if (criterion.outOf === undefined || criterion.count <= criterion.outOf) return;
    const count = cstOf(criterion, "count");
    report({
      message: `${criterion.count} of ${criterion.outOf} shots is more hits than shots. Ask for at most ${criterion.outOf}.`,
      node: criterion,
      property: "count",
      fixes: count
        ? [
            {
              title: `Ask for ${criterion.outOf} of ${criterion.outOf}`,
              edits: [replace(count.range, String(criterion.outOf))],
            },
          ]
        : [],
    });
  },
  reporting: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least «12» of 10 shots on target
  }
}`,
  fixed: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 10 of 10 shots on target
  }
}`,
  silent: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 7 of 10 shots on target
  }
}`,
});
