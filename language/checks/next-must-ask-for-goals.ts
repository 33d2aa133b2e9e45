import { defineCheck } from "./check.ts";
import { mayHaveGoals } from "./gate-must-have-goals.ts";
import { code, quoted } from "./wording.ts";

/** A question about the goals of a block that sets none. */
export const check = defineCheck({
  on: ["NextTest"],
  reason: "A block without goals has no verdict, so a line that asks for one never holds.",
  run(test, { report }) {
    const block = test.block?.ref;
    if (block === undefined || mayHaveGoals(block)) return;
    report({
      message: `${quoted(block.name)} sets no goals, so it has no verdict. Name a block with ${code("success")}, or write ${code("every goal")}.`,
      node: test,
      property: "block",
    });
  },
  reporting: `
plan "C" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    repeat when «"Look"» is missed
    repeat otherwise
  }
}`,
  silent: `
plan "C" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    repeat when "All" is missed
    repeat otherwise
  }
}`,
});
