import { AstUtils } from "langium";
import { type Advance, isAdvance, isNext, isPlan, type Plan } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, quoted } from "./wording.ts";

/** Plans that lead on to each other. */
export const check = defineCheck({
  on: ["Advance"],
  reason: "Whoever meets every goal should get somewhere. Plans that lead on to each other never end.",
  run(step, { report }) {
    const plan = AstUtils.getContainerOfType(step, isPlan);
    const chain = plan && circleFrom(plan, step);
    if (chain === undefined) return;
    const names = chain.map(({ name }) => quoted(name));
    report({
      message:
        chain.length === 1
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

/** The plans on a way that begins with this step and comes back; undefined where none does. */
function circleFrom(plan: Plan, step: Advance): readonly Plan[] | undefined {
  const cameFrom = new Map<Plan, Plan>();
  const first = step.plan?.ref;
  if (first === undefined) return undefined;
  if (first === plan) return [plan];
  const open = [first];
  const seen = new Set(open);
  for (const at of open) {
    for (const next of advancesOf(at)) {
      if (next === plan) {
        const way = [at];
        for (let back = cameFrom.get(at); back !== undefined; back = cameFrom.get(back)) way.unshift(back);
        return [plan, ...way];
      }
      if (seen.has(next)) continue;
      seen.add(next);
      cameFrom.set(next, at);
      open.push(next);
    }
  }
  return undefined;
}

function advancesOf({ statements }: Plan): Plan[] {
  return statements
    .filter(isNext)
    .flatMap(({ steps }) => steps.filter(isAdvance))
    .flatMap(({ plan }) => plan?.ref ?? []);
}
