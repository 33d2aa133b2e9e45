import {
  type ChangeCriterion,
  type Confidence,
  isChangeCriterion,
  isCountCriterion,
  isEllipseCriterion,
  isRunCriterion,
  isStatisticCriterion,
  isSummary,
  type StatisticCriterion,
} from "../generated/tree/ast.ts";
import { numberOf } from "../types/parameters.ts";
import { defineCheck, type Fix } from "./check.ts";
import { cstOf, rangeOf, removeWords, replace } from "./edits.ts";
import { code } from "./wording.ts";

/** A confidence on a criterion that says nothing about the player's ability. */
export const check = defineCheck({
  on: ["Confidence"],
  reason:
    "A confidence makes a sentence one about the player's ability, and few shots can be held against such a sentence only where there is a method that keeps its promise with them.",
  run(confidence, { document, report }) {
    const about = aboutShots(confidence);
    if (about === undefined) return;
    const takeOut: Fix = {
      title: "Take the confidence out",
      edits: [removeWords(document, rangeOf(confidence))],
    };
    const share = asShare(confidence);
    report({
      message: `${about} is about the shots that were hit, so it has no confidence. Ability can be judged by a share (${code("at least 70 % of shots …")}), an average, a median, a percentile, a spread or the area of an ellipse. Take ${code(confidence.$cstNode?.text ?? "")} out, or ask for one of these.`,
      node: confidence,
      fixes: share === undefined ? [takeOut] : [takeOut, share],
    });
  },
  reporting: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target «at 80 % confidence»
      3 in a row on target «at 80 % confidence»
      best carry at least 150 yd «at 80 % confidence»
      worst offline within ±10 yd «at 80 % confidence»
      major axis of the 80 % ellipse of offline and carry at most 20 yd «at 80 % confidence»
      best carry gains 5 yd against "Before" «at 80 % confidence»
      90th percentile of carry gains 5 yd against "Before" «at 80 % confidence»
      median carry gains 5 % against "Before" «at 80 % confidence»
    }
  }
}`,
  fixed: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target
      3 in a row on target
      best carry at least 150 yd
      worst offline within ±10 yd
      major axis of the 80 % ellipse of offline and carry at most 20 yd
      best carry gains 5 yd against "Before"
      90th percentile of carry gains 5 yd against "Before"
      median carry gains 5 % against "Before"
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "Start" test {
    40 shots
    target start-direction within ±2°
    success {
      at least 70 % of shots on target at 80 % confidence
      average carry at least 150 yd at 90 % confidence
      median carry at least 150 yd at 90 % confidence
      spread of carry at most 5 yd at 90 % confidence
      90th percentile of carry at most 170 yd at 80 % confidence
      middle 80 % of carry spans at most 12 yd at 80 % confidence
      area of the 80 % ellipse of offline and carry at most 250 yd² at 80 % confidence
      carry gains 5 % against "Before" at 80 % confidence
      median carry gains 5 yd against "Before" at 80 % confidence
      spread of carry falls by at least 20 % against "Before" at 80 % confidence
    }
  }
}`,
});

/** The subject of the message; undefined where the confidence belongs. */
function aboutShots({ $container: criterion }: Confidence): string | undefined {
  if (isCountCriterion(criterion)) return "A number of hits";
  if (isRunCriterion(criterion)) return "A run of hits";
  if (isStatisticCriterion(criterion)) return aboutOneShot(criterion.statistic);
  if (isEllipseCriterion(criterion) && criterion.measure !== "area") return "An axis of an ellipse";
  return isChangeCriterion(criterion) ? aboutChange(criterion) : undefined;
}

function aboutOneShot(statistic: StatisticCriterion["statistic"]): string | undefined {
  const isExtreme = isSummary(statistic) && (statistic.name === "best" || statistic.name === "worst");
  return isExtreme ? `The ${statistic.name} shot` : undefined;
}

/** There are methods for changes of averages, medians and spreads, of medians not in %. */
function aboutChange({ statistic, movement, metric }: ChangeCriterion): string | undefined {
  if (statistic === undefined) return undefined;
  if (!isSummary(statistic)) return "A change of a percentile or a span";
  const isShare = movement.amount.unit?.$refText === "%" && metric.ref?.dimension?.$refText !== "ratio";
  if (statistic.name === "median" && isShare) return "A change of a median in %";
  return aboutOneShot(statistic) && `A change of the ${statistic.name} shot`;
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
