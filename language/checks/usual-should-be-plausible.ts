import type { Interval } from "../../shared/statistics/interval.ts";
import { holds } from "../analysis/reasoning/range.ts";
import { rangeInWords } from "../analysis/words.ts";
import { isUsual } from "../generated/tree/ast.ts";
import { lowerPlayer } from "../lowering/session.ts";
import { defineCheck } from "./check.ts";
import { fileName } from "./meanings.ts";

/** A usual number that no shot has, or a spread that no shots have. */
export const check = defineCheck({
  on: ["Player"],
  looksAtMeaning: true,
  reason: "Changes are held against usual numbers. One that cannot be right is mostly in another unit.",
  run(player, { meanings, report }) {
    if (!meanings.isSound(player)) return;
    const model = meanings.attempt(player, () => lowerPlayer(player, fileName));
    const vocabulary = meanings.vocabulary();
    for (const [index, node] of player.statements.filter(isUsual).entries()) {
      const usual = model?.usual[index];
      const metric = usual && vocabulary.metrics.get(usual.metric);
      if (usual === undefined || metric === undefined) continue;
      const hand = model?.hand ?? "right";
      const plausible = vocabulary.plausible(metric.name, hand);
      const isPlausible = holds(plausible, { low: usual.value, high: usual.value });
      if (isPlausible && (usual.spread ?? 0) <= largestSpread(usual.value, plausible)) continue;
      const manner = { hand, unit: metric.unit, isPlain: true };
      const what = `A plausible ${metric.name} is ${rangeInWords(plausible, metric, manner)}`;
      report({
        message: isPlausible
          ? `${what}, and such shots never vary so much around this number. Look at the spread and at its unit.`
          : `${what}. Look at the number and at its unit.`,
        node: isPlausible ? (node.spread ?? node) : node.amount,
      });
    }
  },
  reporting: `
player "P-1" {
  right-handed
  usual carry «900 yd» with 7-iron
  usual attack-angle «30° down» with 7-iron
  usual smash-factor 1.35 spread «5» with 7-iron
}`,
  silent: `
player "P-1" {
  right-handed
  usual carry 150 yd with 7-iron
  usual attack-angle 3° down with 7-iron
  usual smash-factor 1.35 spread 0.05 with 7-iron
}`,
});

/** The variance of shots within a range is at most the product of how far its ends are from the mean (Bhatia & Davis 2000). */
function largestSpread(mean: number, { low, high }: Interval): number {
  return Math.sqrt((high - mean) * (mean - low)) * OF_TWO_SHOTS;
}

/** What the standard deviation of a sample exceeds that of its distribution by, at most. */
const OF_TWO_SHOTS = Math.SQRT2;
