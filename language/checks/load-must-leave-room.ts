import { AstUtils } from "langium";
import { isBlock, isPlan } from "../generated/tree/ast.ts";
import { numberOf } from "../types/parameters.ts";
import { shotsOf } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";
import { FULL, isFullEffort, swingsOf } from "./practice.ts";

/** A number of swings that the shots asked for never keep to. */
export const check = defineCheck({
  on: ["LoadCriterion"],
  reason:
    "Who hits every shot that is asked for has swung more often than the goal allows, or less than it wants.",
  run(criterion, { report }) {
    const block = AstUtils.getContainerOfType(criterion, isBlock);
    const plan = AstUtils.getContainerOfType(criterion, isPlan);
    const allowed = numberOf(criterion.count);
    const cst = cstOf(criterion, "count");
    if (block === undefined || plan === undefined || allowed === undefined || cst === undefined) return;
    const blocks = criterion.session ? plan.statements.filter(isBlock) : [block];
    const asked = blocks.map(shotsOf);
    if (asked.includes(undefined)) return;
    const planned = blocks.reduce(
      (sum, at) => sum + swingsOf(at, criterion.fullEffort ? isFullEffort : undefined),
      0,
    );
    const isOpen = asked.some((shots) => shots?.open);
    const isMost = criterion.bound === "most";
    if (isMost ? planned <= allowed : isOpen || planned >= allowed) return;
    if (!isMost && planned === 0) {
      const who = criterion.session ? "No block of the plan" : "No line of the block";
      report({
        message: `${who} asks for swings at ${FULL} % effort or more, which is full effort. Ask for more effort, or take this out.`,
        node: criterion,
        cst,
      });
      return;
    }
    const kind = criterion.fullEffort ? "full-effort swings" : "swings";
    const where = criterion.session ? "The blocks of the plan ask" : "The block asks";
    report({
      message: `${where} for ${planned} ${kind}${isMost ? " already" : " only"}. Ask for ${isMost ? "fewer shots, or allow" : "more shots, or"} ${planned} here.`,
      node: criterion,
      cst,
      fixes: [{ title: `Make it ${planned}`, edits: [writeNumber(criterion.count, String(planned))] }],
    });
  },
  reporting: `
plan "Gate" {
  block "Easy" {
    10 shots at 60 % effort
    success at least «2» full-effort swings
  }
  block "Start" {
    20 shots
    success {
      at most «12» full-effort swings
      at most «25» swings in the session
    }
  }
}`,
  fixed: `
plan "Gate" {
  block "Easy" {
    10 shots at 60 % effort
    success at least 2 full-effort swings
  }
  block "Start" {
    20 shots
    success {
      at most 20 full-effort swings
      at most 30 swings in the session
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Easy" {
    10 shots at 60 % effort
    success at most 12 swings
  }
  block "Start" {
    at least 20 shots
    success at least 25 swings
  }
}`,
});
