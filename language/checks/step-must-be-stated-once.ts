import { isCurriculumStep } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { repeated } from "./repeated.ts";
import { quoted } from "./wording.ts";

/** A plan that is two steps of one curriculum. */
export const check = defineCheck({
  on: ["Curriculum"],
  reason: "Two steps of one plan leave open what comes before it.",
  run({ statements }, { document, report }) {
    for (const { thing } of repeated(statements.filter(isCurriculumStep), ({ plan }) => plan?.ref)) {
      report({
        message: `${quoted(thing.plan.$refText)} is a step already. Keep one of the two.`,
        node: thing,
        property: "plan",
        fixes: [{ title: "Keep the first", edits: [remove(document, rangeOf(thing))] }],
      });
    }
  },
  reporting: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 100 m
  }
}
plan "B" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 110 m
  }
}

curriculum "Irons" {
  step "A"
  step "B" after "A"
  step «"A"»
}`,
  fixed: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 100 m
  }
}
plan "B" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 110 m
  }
}

curriculum "Irons" {
  step "A"
  step "B" after "A"
}`,
  silent: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 100 m
  }
}
plan "B" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 110 m
  }
}

curriculum "Irons" {
  step "A"
  step "B"
}`,
});
