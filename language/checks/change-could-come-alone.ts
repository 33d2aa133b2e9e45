import { type Change, isBlock, isChange } from "../generated/tree/ast.ts";
import { isTest } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { statedIn } from "./practice.ts";

/** A change before the one before it was tested. */
export const check = defineCheck({
  on: ["Plan"],
  isAboutPractice: true,
  reason: "Of two changes at once nobody can say afterwards which one worked.",
  run({ statements }, { isBroken, report }) {
    let untested: Change | undefined;
    for (const block of statements.filter(isBlock)) {
      if (isBroken(block)) return; // it may be the test
      const changes = statedIn(block, isChange);
      for (const change of changes) {
        if (untested !== undefined && change.$container === block) {
          report({
            message:
              untested.$container === block
                ? "This block tries two changes. Try one at a time: then it can be said which one worked."
                : "The change before this one was not tested yet. Put a block that tests it between, or try one at a time.",
            node: change,
          });
        }
        untested = change;
      }
      if (isTest(block)) untested = undefined;
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    change grip "Weaker by a knuckle"
    «change motion "Slower back"»
    10 shots
  }
  block "Again" {
    «change set-up "Ball further back"»
    10 shots
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    change grip "Weaker by a knuckle"
    10 shots
  }
  block "Look" test {
    10 shots
    success 3 in a row with carry at least 100 m
  }
  block "Again" {
    change set-up "Ball further back"
    10 shots
  }
}`,
});
