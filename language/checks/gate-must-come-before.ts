import {
  type CurriculumStep,
  isCurriculum,
  isCurriculumStep,
  isGate,
  type Plan,
} from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { cstOf, insertAfter } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** A gate on a plan that need not come before its step. */
export const check = defineCheck({
  on: ["CurriculumStep"],
  reason: "A gate opens by what was met before. On a plan that need not come before, it may never open.",
  run(step, { report }) {
    const before = plansBefore(step);
    for (const gate of step.statements.filter(isGate)) {
      const plan = gate.plan?.ref;
      if (plan === undefined || before.has(plan)) continue;
      const last = cstOf(step, "after", step.after.length - 1) ?? cstOf(step, "plan");
      const text = step.after.length > 0 ? `, ${quoted(plan.name)}` : ` after ${quoted(plan.name)}`;
      const isItself = plan === step.plan?.ref;
      report({
        message: isItself
          ? `${quoted(plan.name)} is this step itself, and cannot be met before it. Name a plan that comes before.`
          : `${quoted(plan.name)} need not come before this step. Name it behind ${code("after")}.`,
        node: gate,
        property: "plan",
        fixes:
          isItself || last === undefined
            ? []
            : [{ title: "Write it behind after", edits: [insertAfter(last.range, text)] }],
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
  step "B" {
    gate block "All" of «"A"» met
  }
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
  step "B" after "A" {
    gate block "All" of "A" met
  }
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
  step "B" after "A" {
    gate "A" met in 2 sessions
  }
}`,
});

/** The plans that come before a step, directly or over others. */
function plansBefore(step: CurriculumStep): Set<Plan> {
  const curriculum = isCurriculum(step.$container) ? step.$container : undefined;
  const steps = curriculum?.statements.filter(isCurriculumStep) ?? [];
  const before = new Set<Plan>();
  const open = [step];
  for (const at of open) {
    for (const { ref: plan } of at.after) {
      if (plan === undefined || before.has(plan)) continue;
      before.add(plan);
      open.push(...steps.filter((other) => other.plan?.ref === plan));
    }
  }
  return before;
}
