/** What the uncertainty of single readings does to the numbers made of them (JCGM 100, propagation of uncertainty). */
import type { Interval } from "./interval.ts";

/** Standard uncertainties of a reading, in its unit: of its own, and shared by all readings of the session. */
export interface ReadingUncertainty {
  readonly random: number;
  readonly systematic: number;
}

/**
 * The standard uncertainty of the mean of n shots hit: √(random²/n + systematic²). The systematic part does not average
 * out. For the mean as ability see `meanLimits`, where the scatter of the shots holds the random part already.
 */
export function uncertaintyOfMean(n: number, { random, systematic }: ReadingUncertainty): number {
  return Math.sqrt((random * random) / n + systematic * systematic);
}

/**
 * The standard deviation of the shots without that of their readings: √(sd² − random²), and 0 where the readings alone
 * scatter more. From about random = 0.3 sd on it matters by 5 % or more.
 */
export function spreadWithoutReadings(sd: number, random: number): number {
  return Math.sqrt(Math.max(0, sd * sd - random * random));
}

/** The same for both limits of a spread. */
export function limitsWithoutReadings({ low, high }: Interval, random: number): Interval {
  return { low: spreadWithoutReadings(low, random), high: spreadWithoutReadings(high, random) };
}
