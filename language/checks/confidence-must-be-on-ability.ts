import {
  type Confidence,
  isCountCriterion,
  isRunCriterion,
  isStatisticCriterion,
  isSummary,
} from "../generated/tree/ast.ts";
import { numberOf } from "../types/parameters.ts";
import { defineCheck, type Fix } from "./check.ts";
import { cstOf, rangeOf, removeWords, replace } from "./edits.ts";
import { code } from "./wording.ts";

/** A confidence on a criterion that says nothing about the player's ability. */
export const check = defineCheck({
  on: ["Confidence"],
  reason:
    "A confidence makes a sentence one about the player's ability, and shots can be held against such a sentence only for a share of shots and for an average.",
  run(confidence, { document, report }) {
    const about = aboutShots(confidence);
    if (about === undefined) return;
    const takeOut: Fix = {
      title: "Take the confidence out",
      edits: [removeWords(document, rangeOf(confidence))],
    };
    const share = asShare(confidence);
    report({
      message: `${about} is about the shots that were hit, so it has no confidence. Ability can be judged by a share (${code("at least 70 % of shots …")}) or an average. Take ${code(confidence.$cstNode?.text ?? "")} out, or ask for one of these.`,
      node: confidence,
      fixes: share === undefined ? [takeOut] : [takeOut, share],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target «at 80 % confidence»
      3 in a row on target «at 80 % confidence»
      median carry at least 150 yd «at 90 % confidence»
      spread of carry at most 5 yd «at 90 % confidence»
    }
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target
      3 in a row on target
      median carry at least 150 yd
      spread of carry at most 5 yd
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 70 % of shots on target at 80 % confidence
      average carry at least 150 yd at 90 % confidence
    }
  }
}`,
});

/** The subject of the message; undefined where the confidence belongs. */
function aboutShots({ $container: criterion }: Confidence): string | undefined {
  if (isCountCriterion(criterion)) return "A number of hits";
  if (isRunCriterion(criterion)) return "A run of hits";
  if (!isStatisticCriterion(criterion) || !isSummary(criterion.statistic)) return undefined;
  const { name } = criterion.statistic;
  return name === "best" || name === "worst" ? `The ${name} shot` : undefined;
}

/** `7 of 10 shots` as `70 % of shots`. */
function asShare({ $container: criterion }: Confidence): Fix | undefined {
  if (!isCountCriterion(criterion)) return undefined;
  const count = numberOf(criterion.count);
  const outOf = numberOf(criterion.outOf);
  const first = cstOf(criterion, "count");
  const last = cstOf(criterion, "outOf");
  if (
    outOf === undefined ||
    count === undefined ||
    first === undefined ||
    last === undefined ||
    outOf < count
  )
    return undefined;
  const share = `${Number(((100 * count) / outOf).toPrecision(3))} % of`;
  return {
    title: `Ask for ${share} shots`,
    edits: [replace({ start: first.range.start, end: last.range.end }, share)],
  };
}
