import { type Block, isBlock, isSuccess, type Plan } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, quoted } from "./wording.ts";

/** A gate on something that sets no goals. */
export const check = defineCheck({
  on: ["Gate"],
  reason: "Only goals are met. A gate on a block or plan without any never opens.",
  run(gate, { report }) {
    const block = gate.block?.ref;
    const plan = gate.plan?.ref;
    const part = gate.block === undefined ? plan : block;
    if (part === undefined || mayHaveGoals(part)) return;
    report({
      message: `${quoted(part.name)} sets no goals, so it is never met. Give it a ${code("success")}, or name another.`,
      node: gate,
      property: gate.block === undefined ? "plan" : "block",
    });
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
  step "B"
  step "A" after "B" {
    gate block «"Look"» of "B" met
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
  step "B"
  step "A" after "B" {
    gate block "All" of "B" met
  }
}`,
});

/** Whether it sets goals, itself or by a drill; also where a drill is not known yet. */
export function mayHaveGoals(part: Block | Plan): boolean {
  if (part.$type === "Plan") return part.statements.filter(isBlock).some(mayHaveGoals);
  if (part.statements.some(isSuccess)) return true;
  return part.use !== undefined && (part.use.drill?.ref?.statements.some(isSuccess) ?? true);
}
