import { AstUtils } from "langium";
import { isAgainstBlock, isBlock, isFinding, isPlan } from "../generated/tree/ast.ts";
import { baselineBefore } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { code, quoted } from "./wording.ts";

/** A change against shots that have not been hit yet. */
export const check = defineCheck({
  on: ["AgainstBlock", "AgainstBaseline"],
  reason: "A change is measured from what was there before it.",
  run(against, { report }) {
    if (AstUtils.getContainerOfType(against, isFinding) !== undefined) return;
    const block = AstUtils.getContainerOfType(against, isBlock);
    const plan = AstUtils.getContainerOfType(block, isPlan);
    if (block === undefined || plan === undefined) return;
    const blocks = plan.statements.filter(isBlock);
    if (isAgainstBlock(against)) {
      const other = against.block?.ref;
      if (other === undefined || blocks.slice(0, blocks.indexOf(block)).includes(other)) return;
      report({
        message:
          other === block
            ? `${quoted(other.name)} is this block itself. Name one that comes before.`
            : `${quoted(other.name)} comes later. Name a block that is hit before this one.`,
        node: against,
      });
    } else if (baselineBefore(block, blocks) === undefined) {
      report({
        message: `No baseline comes before this block. Add a block of the kind ${code("baseline")}, or name the block that is meant.`,
        node: against,
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success {
      carry loses no more than 4 yd against «"Later"»
      spread of offline falls by at least 2 yd against «the baseline»
    }
  }
  block "Later" baseline {
    10 shots
  }
}`,
  silent: `
plan "Gate" {
  block "Look" baseline {
    10 shots
  }
  block "Start" test {
    10 shots
    success {
      carry loses no more than 4 yd against "Look"
      spread of offline falls by at least 2 yd against the baseline
    }
  }
}`,
});
