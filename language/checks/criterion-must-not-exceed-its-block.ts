import { AstUtils } from "langium";
import { FEWEST_SHOTS } from "../criteria/ellipse/measures.ts";
import {
  type Block,
  type ChangeCriterion,
  type EllipseCriterion,
  isAgainstBaseline,
  isAgainstBlock,
  isBlock,
  isChangeCriterion,
  isCountCriterion,
  isEllipseCriterion,
  isPlan,
  isRunCriterion,
  isSummary,
  type StatisticCriterion,
} from "../generated/tree/ast.ts";
import { baselineBefore } from "../types/kinds.ts";
import { numberOf } from "../types/parameters.ts";
import { shotsOf } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";
import { code, quoted, shots } from "./wording.ts";

/** A criterion over more shots than its block has. */
export const check = defineCheck({
  on: ["CountCriterion", "RunCriterion", "StatisticCriterion", "EllipseCriterion", "ChangeCriterion"],
  reason: "Shots that the block does not ask for are never hit, so the goal stays open for ever.",
  run(criterion, { report }) {
    const block = shotsOf(criterion);
    if (block === undefined || block.open) return;
    const { asked } = block;
    if (!isCountCriterion(criterion) && !isRunCriterion(criterion)) {
      const fewest = fewestFor(criterion);
      // With a confidence more is said: how many shots it takes to show something.
      if (asked === 0 || criterion.confidence !== undefined) return;
      const what = isEllipseCriterion(criterion) ? "An ellipse" : "A spread";
      const takes = `${what} takes ${shots(fewest)} or more`;
      const before = isChangeCriterion(criterion) ? baselineOf(criterion) : undefined;
      const shotsBefore = before && shotsOf(before);
      if (asked < fewest) {
        report({
          message: `${takes}, but the block has ${asked}. Ask for more shots in the block.`,
          node: criterion,
        });
      } else if (shotsBefore !== undefined && !shotsBefore.open && shotsBefore.asked < fewest) {
        report({
          message: `${takes}, but ${quoted(before?.name ?? "")} has ${shotsBefore.asked}. Ask for more shots there.`,
          node: criterion,
        });
      }
      return;
    }
    const isRun = isRunCriterion(criterion);
    const wanted = numberOf(isRun ? criterion.length : criterion.outOf);
    if (wanted === undefined || wanted <= asked) return;
    const cst = cstOf(criterion, isRun ? "length" : "outOf");
    if (cst === undefined) return;
    const hits = isRun ? undefined : numberOf(criterion.count);
    const number = isRun ? criterion.length : (criterion.outOf ?? criterion.count);
    const edits = [writeNumber(number, String(asked))];
    if (!isRun && hits !== undefined && hits > asked && hits <= wanted) {
      edits.push(writeNumber(criterion.count, String(asked)));
    }
    const what = isRun ? `A run of ${wanted} is asked for` : `This is about ${shots(wanted)}`;
    report({
      message: `${what}, but the block has ${asked}. Ask for at most ${asked}, or write ${code(`at least ${asked} shots`)} in the block where more may be hit.`,
      node: criterion,
      cst,
      fixes: [{ title: `Make it ${asked}`, edits }],
    });
  },
  reporting: `
plan "Gate" {
  block "Once" baseline {
    1 shot
    success «spread of carry at most 5 m»
  }
  block "Again" {
    12 shots
    success {
      «spread of carry falls by at least 2 m against "Once"»
      «spread of carry falls by at least 2 m against the baseline»
    }
  }
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of «12» shots on target
      at least 11 of «12» shots with carry at least 150 yd
      «11» in a row on target
    }
  }
}`,
  fixed: `
plan "Gate" {
  block "Once" baseline {
    1 shot
    success spread of carry at most 5 m
  }
  block "Again" {
    12 shots
    success {
      spread of carry falls by at least 2 m against "Once"
      spread of carry falls by at least 2 m against the baseline
    }
  }
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target
      at least 10 of 10 shots with carry at least 150 yd
      10 in a row on target
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Twice" baseline {
    2 shots
    success spread of carry at most 5 m
  }
  block "Again" {
    12 shots
    success spread of carry falls by at least 2 m against the baseline
  }
  block "Start" test {
    at least 10 shots
    target start-direction within ±2°
    success {
      at least 7 of 12 shots on target
      11 in a row on target
    }
  }
}`,
});

/** The fewest shots that give the number it is about. */
function fewestFor(criterion: StatisticCriterion | EllipseCriterion | ChangeCriterion): number {
  if (isEllipseCriterion(criterion)) return FEWEST_SHOTS;
  return isSummary(criterion.statistic) && criterion.statistic.name === "spread" ? 2 : 1;
}

/** The block of the same plan that a change is held against. */
function baselineOf(criterion: ChangeCriterion): Block | undefined {
  const { against } = criterion;
  if (isAgainstBlock(against)) return against.block?.ref;
  const block = AstUtils.getContainerOfType(criterion, isBlock);
  const blocks = AstUtils.getContainerOfType(block, isPlan)?.statements.filter(isBlock) ?? [];
  return isAgainstBaseline(against) && block !== undefined ? baselineBefore(block, blocks) : undefined;
}
