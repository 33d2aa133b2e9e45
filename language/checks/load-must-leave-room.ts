import { AstUtils } from "langium";
import { FULL_EFFORT } from "../../shared/full-effort.ts";
import { isBlock, isPlan } from "../generated/tree/ast.ts";
import { numberOf } from "../types/parameters.ts";
import { shotsOf } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";
import { asksForFullEffort, isEffortKnown, swingsOf } from "./practice.ts";

/** A number of swings that the shots asked for never keep to. */
export const check = defineCheck({
  on: ["LoadCriterion"],
  reason:
    "Who hits every shot that is asked for has swung more often than the goal allows, or less than it wants.",
  run(criterion, { report }) {
    const block = shotsOf(criterion)?.block;
    const plan = AstUtils.getContainerOfType(criterion, isPlan);
    const allowed = numberOf(criterion.count);
    const cst = cstOf(criterion, "count");
    if (block === undefined || allowed === undefined || cst === undefined) return;
    if (criterion.session && plan === undefined) return; // a drill is practised in any
    const blocks = criterion.session && plan !== undefined ? plan.statements.filter(isBlock) : [block];
    if (criterion.fullEffort && !blocks.every(isEffortKnown)) return;
    const asked = blocks.map(shotsOf);
    if (asked.includes(undefined)) return;
    const planned = blocks.reduce(
      (sum, at) => sum + swingsOf(at, criterion.fullEffort ? asksForFullEffort : undefined),
      0,
    );
    const isOpen = asked.some((shots) => shots?.open);
    const isMost = criterion.bound === "most";
    if (isMost ? planned <= allowed : isOpen || planned >= allowed) return;
    if (!isMost && planned === 0) {
      const who = criterion.session ? "No block of the plan" : "No line of the block";
      report({
        message: `${who} asks for swings at ${FULL_EFFORT} % effort or more, which is full effort. Ask for more effort, or take this out.`,
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
  block "Eased" from "Easy does it"
}

drill "Easy does it" (effort-asked: ratio = 70, number: ratio = 8) blocked {
  number shots at effort-asked % effort
  success {
    at least «5» full-effort swings
    at most «5» swings
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
      at most 38 swings in the session
    }
  }
  block "Eased" from "Easy does it"
}

drill "Easy does it" (effort-asked: ratio = 70, number: ratio = 8) blocked {
  number shots at effort-asked % effort
  success {
    at least 5 full-effort swings
    at most 8 swings
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
  block "Eased" from "Easy does it" with effort-asked = 95
}

drill "Easy does it" (effort-asked: ratio) blocked {
  8 shots at effort-asked % effort
  success {
    at least 5 full-effort swings
    at most 12 swings
    at most 50 swings in the session
  }
}`,
});
