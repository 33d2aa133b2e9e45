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
