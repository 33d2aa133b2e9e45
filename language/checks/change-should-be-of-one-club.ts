import { AstUtils } from "langium";
import { isAgainstBaseline, isAgainstBlock, isBlock, isPlan } from "../generated/tree/ast.ts";
import { baselineBefore } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { clubsOf } from "./practice.ts";
import { listed, quoted } from "./wording.ts";

/** A change between shots with different clubs. */
export const check = defineCheck({
  on: ["ChangeCriterion"],
  reason: "A wedge does not carry as far as an iron: between two clubs most of the change is the clubs'.",
  run(criterion, { report }) {
    const { against } = criterion;
    const block = AstUtils.getContainerOfType(criterion, isBlock);
    const plan = AstUtils.getContainerOfType(block, isPlan);
    if (block === undefined || plan === undefined) return;
    const other = isAgainstBlock(against)
      ? against.block?.ref
      : isAgainstBaseline(against)
        ? baselineBefore(block, plan.statements.filter(isBlock))
        : undefined;
    if (other === undefined) return;
    const here = clubsOf(block);
    const there = clubsOf(other);
    if (here.size === 0 || there.size === 0 || [...here].every((club) => there.has(club))) return;
    report({
      message: `Here ${listed([...here], "and")} is hit, and in ${quoted(other.name)} ${listed([...there], "and")}. Compare shots with one club.`,
      node: criterion,
      property: "against",
    });
  },
  reporting: `
plan "Gate" {
  for 7-iron
  block "Look" baseline {
    10 shots
  }
  block "Start" test {
    10 shots with driver
    success carry loses no more than 4 yd against «"Look"»
  }
}`,
  silent: `
plan "Gate" {
  for 7-iron
  block "Look" baseline {
    10 shots
    5 shots with driver
  }
  block "Start" test {
    10 shots with driver
    success carry loses no more than 4 yd against "Look"
  }
}`,
});
