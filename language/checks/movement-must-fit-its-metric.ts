import { isMove, isStay } from "../generated/tree/ast.ts";
import { hasSides, isWidth } from "../types/amounts.ts";
import { sideWords } from "../types/directions.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A change in words that do not fit what changes. */
export const check = defineCheck({
  on: ["ChangeCriterion"],
  reason:
    "More of a path is two things, to the right or to the left. More carry is one thing, and has no side.",
  run(criterion, { report }) {
    const { movement } = criterion;
    const metric = criterion.metric?.ref;
    if (metric?.dimension?.ref === undefined || isStay(movement)) return;
    const isSided = hasSides(metric) && !(criterion.statistic !== undefined && isWidth(criterion.statistic));
    if (isSided === isMove(movement)) return;
    const [word = "right"] = sideWords(metric);
    report({
      message: isSided
        ? `${code(metric.name)} has two sides. Say where it moves: ${code(`${metric.name} moves at least … ${word}`)}.`
        : `This has no sides, so it ${code("gains")}, ${code("loses")}, ${code("rises by")} or ${code("falls by")} an amount.`,
      node: criterion,
      property: "movement",
    });
  },
  reporting: `
plan "Gate" {
  block "Look" baseline {
    10 shots
  }
  block "Start" test {
    10 shots
    success club-path «gains at least 2°» against "Look"
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
      club-path moves at least 2° in-to-out against "Look"
      spread of club-path falls by at least 1° against "Look"
    }
  }
}`,
});
