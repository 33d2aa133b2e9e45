import { isCurriculumStep, type Plan } from "../generated/tree/ast.ts";
import { circleOver } from "../types/cycles.ts";
import { defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** Steps that wait for each other. */
export const check = defineCheck({
  on: ["Curriculum"],
  reason: "Plans that each come after the other leave nobody a place to begin.",
  run({ statements }, { report }) {
    const steps = statements.filter(isCurriculumStep);
    const byPlan = new Map(steps.map((step) => [step.plan?.ref, step]));
    const before = (plan: Plan) => byPlan.get(plan)?.after.flatMap(({ ref }) => ref ?? []) ?? [];
    const reported = new Set<Plan>();
    for (const step of steps) {
      for (const [index, { ref }] of step.after.entries()) {
        const plan = step.plan?.ref;
        const circle = plan && ref && circleOver(plan, ref, before);
        if (circle === undefined || circle.some((one) => reported.has(one))) continue;
        for (const one of circle) reported.add(one);
        const names = [...circle, circle[0]].map(({ name }) => quoted(name));
        report({
          message:
            circle.length === 1
              ? `${names[0]} comes after itself, so nobody can begin it. Take ${names[0]} out behind ${"`after`"}.`
              : `Each of these comes after the next: ${names.join(", ")}. Nobody can begin: take one of them out behind ${"`after`"}.`,
          node: step,
          property: "after",
          index,
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
  block "All" test {
    3 shots
    success 3 in a row with carry at least 110 m
  }
}

curriculum "Irons" {
  step "A" after «"B"»
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
