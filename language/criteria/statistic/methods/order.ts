/** Medians, percentiles and spans by order statistics: shots in order of size, whatever the shape of their distribution. */
import { middleSpanLimits } from "../../../../shared/statistics/middle-span.ts";
import {
  fewestShotsForLimits,
  percentileLimits,
  percentileRanks,
  percentileShotsToDecide,
  type RankLimit,
} from "../../../../shared/statistics/percentile.ts";
import { percent } from "../../wording.ts";
import { ordinal } from "../names.ts";
import { byHittingAgain, type Method } from "./method.ts";

/** The median is the 50th percentile. */
export function percentileMethod(values: readonly number[], share: number): Method {
  return {
    limitsAt: (level) => percentileLimits(values, share, level),
    words: (level) => ranksInWords(values.length, share, level),
    fewest: ({ claim, confidence }) => {
      const { low, high } = fewestShotsForLimits(share, confidence);
      return mostOf(
        claim.low === Number.NEGATIVE_INFINITY ? 0 : low,
        claim.high === Number.POSITIVE_INFINITY ? 0 : high,
      );
    },
    shotsToDecide: ({ claim, confidence, slack }) =>
      percentileShotsToDecide(values, share, claim, confidence, slack),
    cautions: () => [],
  };
}

/** `order statistics: the 3rd (94.5 %) and the 8th (94.5 %) of 10 shots by size`: the confidence that each reaches. */
function ranksInWords(n: number, share: number, level: number): string {
  const { low, high } = percentileRanks(n, share, level);
  const ranks = [low, high].filter((limit) => limit !== undefined).map(rankInWords);
  return `order statistics: ${ranks.join(" and ")} of ${n} shots by size`;
}

function rankInWords({ rank, reached }: RankLimit): string {
  return `the ${ordinal(rank)} (${percent(Math.floor(reached * 1000) / 1000)})`;
}

/** The outer limits of a span take a limit of each of two percentiles, which have half of the error each. */
export function spanMethod(values: readonly number[], share: number): Method {
  const limitsOf = (some: readonly number[]) => (level: number) => middleSpanLimits(some, share, level);
  return {
    limitsAt: limitsOf(values),
    words: () => "outer limits by order statistics at either end (Bonferroni)",
    fewest: ({ claim, confidence }) => {
      const { low, high } = fewestShotsForLimits((1 + share) / 2, (1 + confidence) / 2);
      return claim.high === Number.POSITIVE_INFINITY ? low : high;
    },
    shotsToDecide: byHittingAgain(values, limitsOf),
    cautions: () => [],
  };
}

function mostOf(one: number | undefined, other: number | undefined): number | undefined {
  return one === undefined || other === undefined ? undefined : Math.max(one, other);
}
