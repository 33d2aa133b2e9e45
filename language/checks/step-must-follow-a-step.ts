import { isCurriculumStep } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { cstOf, insertBefore, rangeOf } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** A step that comes after a plan which is no step. */
export const check = defineCheck({
  on: ["Curriculum"],
  reason: "A plan that is no step of the curriculum is never taken, so what comes after it is never reached.",
  run({ statements }, { report }) {
    const steps = statements.filter(isCurriculumStep);
    const plans = new Set(steps.map(({ plan }) => plan?.ref));
    for (const step of steps) {
      for (const [index, { ref: before }] of step.after.entries()) {
        if (before === undefined || plans.has(before)) continue;
        const line = `step ${quoted(before.name)}`;
        const indentation = " ".repeat(rangeOf(step).start.character);
        report({
          message: `${quoted(before.name)} is no step of this curriculum, so nobody gets to this one. Write ${code(line)} for it, or take it out behind ${code("after")}.`,
          node: step,
          ...(cstOf(step, "after", index) === undefined ? {} : { property: "after", index }),
          fixes: [
            { title: `Write ${line}`, edits: [insertBefore(rangeOf(step), `${line}\n${indentation}`)] },
          ],
        });
      }
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
  step "B" after «"A"»
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
  step "B" after "A"
}`,
});
