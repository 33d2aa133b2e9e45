/**
 * The law of the signed-rank statistic of n shots (Wilcoxon 1945): each of the ranks 1 … n counts or does not, with
 * probability ½ and independently.
 */
import { allowedError } from "./confidence.ts";
import type { RankLimit } from "./percentile.ts";
import { type CountedLaw, rankByCounting, rankBySeries, type SmoothLaw } from "./rank-law.ts";

/** Up to this many shots the law is counted: O(n³), 2 million additions. */
const MOST_COUNTED = 200;

/** Which of the n·(n + 1)/2 Walsh averages, from either end, is the limit; `undefined` where n shots have none. */
export function signedRankLimit(n: number, confidence: number): RankLimit | undefined {
  const error = allowedError(confidence);
  return n <= MOST_COUNTED ? rankByCounting(counted(n), error) : rankBySeries(smooth(n), error);
}

function counted(n: number): CountedLaw {
  const cases = new Float64Array(Math.floor((n * (n + 1)) / 4) + 1);
  cases[0] = 1;
  let total = 1;
  for (let rank = 1; rank <= n; rank++) {
    for (let sum = cases.length - 1; sum >= rank; sum--) cases[sum] = at(cases, sum) + at(cases, sum - rank);
    total *= 2;
  }
  return { cases, total };
}

/** A rank r that counts half of the time has the variance r²/4 and the fourth cumulant −r⁴/8. */
function smooth(n: number): SmoothLaw {
  let squares = 0;
  let fourths = 0;
  for (let rank = 1; rank <= n; rank++) {
    squares += rank * rank;
    fourths += rank * rank * rank * rank;
  }
  return { mean: (n * (n + 1)) / 4, variance: squares / 4, fourthCumulant: -fourths / 8 };
}

function at(cases: Float64Array, index: number): number {
  return cases[index] ?? 0;
}
