/** Changes of spreads by the laws of normally distributed shots: their ratio, or the difference of their limits. */
import type { Interval } from "../../../../shared/statistics/interval.ts";
import { limitsWithoutReadings } from "../../../../shared/statistics/reading-uncertainty.ts";
import { type SpreadOf, spreadLimits } from "../../../../shared/statistics/spread.ts";
import { spreadDifferenceLimits, spreadRatioLimits } from "../../../../shared/statistics/spread-change.ts";
import type { Method } from "../../statistic/methods/method.ts";
import type { Measure } from "../movement.ts";
import { newShots } from "./new-shots.ts";

/** A block: its spread, and what its readings scatter by themselves. */
export interface SpreadBlock extends SpreadOf {
  readonly random: number;
}

export function spreadChangeMethod(
  before: SpreadBlock,
  now: SpreadBlock,
  measure: Measure,
  cautions: readonly string[],
): Method {
  const isExact = before.random === 0 && now.random === 0;
  const limits = isExact
    ? measure === "share"
      ? ratioLimits
      : spreadDifferenceLimits
    : limitsOfTwo(measure);
  const limitsOf = (n: number, m: number) => (level: number) =>
    limits({ ...before, n }, { ...now, n: m }, level);
  return {
    limitsAt: limitsOf(before.n, now.n),
    words: () =>
      isExact && measure === "share"
        ? "F limits of the ratio, for normally distributed shots"
        : "the chi-square limits of both spreads, for normally distributed shots (Bonferroni)",
    fewest: () => 2,
    shotsToDecide: (question) =>
      newShots({ before: before.n, now: now.n, limitsOf, drawCloser: true }, question),
    cautions: () => cautions,
  };
}

function ratioLimits(before: SpreadOf, now: SpreadOf, level: number): Interval | undefined {
  const ratio = spreadRatioLimits(before, now, level);
  return ratio && { low: ratio.low - 1, high: ratio.high - 1 };
}

/** Of readings that scatter by themselves that is taken off the limits of each spread, which have half of the error each. */
function limitsOfTwo(measure: Measure) {
  return (before: SpreadBlock, now: SpreadBlock, level: number): Interval | undefined => {
    const half = (1 + level) / 2;
    const [one, other] = [spreadLimits(before, half), spreadLimits(now, half)];
    if (one === undefined || other === undefined) return undefined;
    const old = limitsWithoutReadings(one, before.random);
    const fresh = limitsWithoutReadings(other, now.random);
    return measure === "share"
      ? { low: fresh.low / old.high - 1, high: fresh.high / old.low - 1 }
      : { low: fresh.low - old.high, high: fresh.high - old.low };
  };
}
