import type { CurriculumStep, Plan } from "../generated/tree/ast.ts";
import { isCurriculumStep } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** Steps that wait for each other. */
export const check = defineCheck({
  on: ["Curriculum"],
  reason: "Plans that each come after the other leave nobody a place to begin.",
  run({ statements }, { report }) {
    const steps = statements.filter(isCurriculumStep);
    const byPlan = new Map(steps.map((step) => [step.plan?.ref, step]));
    const reported = new Set<Plan>();
    for (const step of steps) {
      for (const [index, { ref: before }] of step.after.entries()) {
        const chain = before && chainTo(step.plan?.ref, before, byPlan, []);
        if (chain === undefined || chain.some((plan) => reported.has(plan))) continue;
        for (const plan of chain) reported.add(plan);
        const names = [...chain, chain[0]].map((plan) => quoted(plan?.name ?? ""));
        report({
          message:
            chain.length === 1
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

/** The plans from `wanted` over what comes before it back to `at`; undefined where no way leads there. */
function chainTo(
  wanted: Plan | undefined,
  at: Plan,
  steps: ReadonlyMap<Plan | undefined, CurriculumStep>,
  above: readonly Plan[],
): readonly Plan[] | undefined {
  if (at === wanted) return [at, ...above];
  if (above.includes(at)) return undefined;
  for (const { ref: before } of steps.get(at)?.after ?? []) {
    const chain = before && chainTo(wanted, before, steps, [...above, at]);
    if (chain !== undefined) return chain;
  }
  return undefined;
}
