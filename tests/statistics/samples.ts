/** Samples from cells of the reference tables. */
import { type Sample, sampleOf } from "../../shared/statistics/summary.ts";
import { numbersIn } from "../support/oracle.ts";

/** No limit on this side. */
export const unlimited = Number.POSITIVE_INFINITY;

export function sampleIn(cell: string): Sample {
  return sampleWith(numbersIn(cell));
}

export function sampleWith(values: readonly number[]): Sample {
  const sample = sampleOf(values);
  if (sample === undefined) throw new Error("A sample needs values.");
  return sample;
}

/**
 * Shots from a known law, the same every time: a multiply-with-carry sequence (Marsaglia) and the normal shots that
 * follow from it by the polar method.
 */
export function shotsFrom(seed: number): { readonly even: () => number; readonly normal: () => number } {
  let [upper, lower] = [362_436_069 + seed, 521_288_629];
  const even = (): number => {
    upper = 36_969 * (upper & 0xffff) + (upper >>> 16);
    lower = 18_000 * (lower & 0xffff) + (lower >>> 16);
    return (((upper << 16) + (lower & 0xffff)) >>> 0) / 2 ** 32;
  };
  const normal = (): number => {
    for (;;) {
      const [x, y] = [2 * even() - 1, 2 * even() - 1];
      const square = x * x + y * y;
      if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
    }
  };
  return { even, normal };
}
