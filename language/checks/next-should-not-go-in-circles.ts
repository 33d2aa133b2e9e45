import { AstUtils } from "langium";
import { isAdvance, isNext, isPlan, type Plan } from "../generated/tree/ast.ts";
import { circleOver } from "../types/cycles.ts";
import { defineCheck } from "./check.ts";
import { code, quoted } from "./wording.ts";

/** Plans that lead on to each other. */
export const check = defineCheck({
  on: ["Advance"],
  reason: "Whoever meets every goal should get somewhere. Plans that lead on to each other never end.",
  run(step, { report }) {
    const plan = AstUtils.getContainerOfType(step, isPlan);
    const next = step.plan?.ref;
    const circle = plan && next && circleOver(plan, next, advancesOf);
    if (circle === undefined) return;
    const names = circle.map(({ name }) => quoted(name));
    report({
      message:
        circle.length === 1
          ? `This leads on to the plan itself. Write ${code("repeat")} if that is meant, or name the plan that comes next.`
          : `This leads in a circle: ${[...names, names[0]].join(", then ")}. Name another plan, or step back with ${code("step back to")}.`,
      node: step,
      property: "plan",
    });
  },
  reporting: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    advance to «"B"»
  }
}
plan "B" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 99 m
  }
  then {
    advance to «"A"»
  }
}`,
  silent: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    advance to "B"
  }
}
plan "B" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 99 m
  }
  then {
    step back to "A"
  }
}`,
});

function advancesOf({ statements }: Plan): Plan[] {
  return statements
    .filter(isNext)
    .flatMap(({ steps }) => steps.filter(isAdvance))
    .flatMap(({ plan }) => plan?.ref ?? []);
}
