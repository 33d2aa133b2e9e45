/** How likely a statement about a spread, or about its change, is to be decided. Exact for normal shots. */

import type { Chances } from "./chances.ts";
import { allowedError } from "./confidence.ts";
import {
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  fisherCdf,
  fisherQuantile,
} from "./distributions.ts";

/** Two numbers of shots, of the baseline and now. */
export interface BlockSizes {
  readonly baseline: number;
  readonly now: number;
}

/**
 * The chances of "the true spread is at most `limit`" with n shots of a player whose spread is `sd`. For "at least"
 * exchange them.
 */
export function spreadChances(n: number, sd: number, limit: number, confidence: number): Chances {
  const error = allowedError(confidence);
  if (!(n >= 2) || Number.isNaN(error)) return { met: 0, missed: 0 };
  const scale = (limit / sd) * (limit / sd);
  return {
    met: chiSquareCdf(chiSquareQuantile(error, n - 1) * scale, n - 1),
    missed: chiSquareUpperTail(chiSquareQuantile(1 - error, n - 1) * scale, n - 1),
  };
}

/**
 * The chances of "the spread now is at most `limit` times that of the baseline" when it is truly `ratio` times as large.
 * For "at least" exchange them.
 */
export function spreadRatioChances(
  { baseline, now }: BlockSizes,
  ratio: number,
  limit: number,
  confidence: number,
): Chances {
  const level = 1 - allowedError(confidence);
  if (!(baseline >= 2 && now >= 2) || Number.isNaN(level)) return { met: 0, missed: 0 };
  const scale = (limit / ratio) * (limit / ratio);
  const [before, after] = [baseline - 1, now - 1];
  return {
    met: fisherCdf(scale / fisherQuantile(level, before, after), after, before),
    missed: fisherCdf(1 / (scale * fisherQuantile(level, after, before)), before, after),
  };
}
