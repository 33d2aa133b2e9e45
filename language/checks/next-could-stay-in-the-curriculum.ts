import { isCurriculumStep, isNext, isRepeat } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, quoted } from "./wording.ts";

/** A step whose plan leads out of the curriculum. */
export const check = defineCheck({
  on: ["Curriculum"],
  reason:
    "A player who follows what a plan recommends is then in no step, and no gate of the curriculum opens.",
  run({ statements }, { report }) {
    const steps = statements.filter(isCurriculumStep);
    const plans = new Set(steps.map(({ plan }) => plan?.ref));
    for (const step of steps) {
      const plan = step.plan?.ref;
      const moves = plan?.statements.filter(isNext).flatMap((next) => next.steps) ?? [];
      for (const move of moves) {
        const to = isRepeat(move) ? undefined : move.plan?.ref;
        if (to === undefined || plans.has(to)) continue;
        report({
          message: `${quoted(plan?.name ?? "")} leads to ${quoted(to.name)}, which is no step here. Add ${code(`step ${quoted(to.name)}`)}, or have the plan lead to one.`,
          node: step,
          property: "plan",
        });
        break;
      }
    }
  },
  reporting: `
plan "Strike" {
  block "Start" test {
    10 shots
    success 3 in a row with carry at least 100 m
  }
  then {
    advance to "Windows" when every goal is met
    repeat otherwise
  }
}

plan "Windows" {
  block "Start" {
    10 shots
  }
}

curriculum "Irons" {
  step «"Strike"»
}`,
  silent: `
plan "Strike" {
  block "Start" test {
    10 shots
    success 3 in a row with carry at least 100 m
  }
  then {
    advance to "Windows" when every goal is met
    repeat otherwise
  }
}

plan "Windows" {
  block "Start" {
    10 shots
  }
}

curriculum "Irons" {
  step "Strike"
  step "Windows" after "Strike"
}`,
});
