/** From numbers to places on a picture, with ticks at round numbers. */

export interface Scale {
  /** The place of a number, rounded to a tenth. */
  at(value: number): number;
  /** Round numbers from one end to the other. */
  readonly ticks: readonly number[];
  readonly low: number;
  readonly high: number;
}

export interface ScaleOptions {
  /** Places of the two ends. */
  readonly from: number;
  readonly to: number;
  /** Size of the unit that ticks are round in. */
  readonly unit: number;
  /** About how many ticks. */
  readonly ticks?: number;
}

/** A scale that holds all these numbers and ends at round ones. Infinite numbers are passed over. */
export function scaleOf(values: readonly number[], { from, to, unit, ticks = 5 }: ScaleOptions): Scale {
  const known = values.filter(Number.isFinite).map((value) => value / unit);
  const least = known.reduce((one, other) => Math.min(one, other), Number.POSITIVE_INFINITY);
  const most = known.reduce((one, other) => Math.max(one, other), Number.NEGATIVE_INFINITY);
  const [start, end] = least > most ? [0, 1] : least === most ? [least - 1, most + 1] : [least, most];
  const step = roundStep((end - start) / ticks);
  const [first, last] = [Math.floor(start / step + 1e-9), Math.ceil(end / step - 1e-9)];
  const [low, high] = [first * step * unit, last * step * unit];
  return {
    low,
    high,
    ticks: Array.from({ length: last - first + 1 }, (_, place) => (first + place) * step * unit),
    at: (value) => tenth(from + ((value - low) / (high - low)) * (to - from)),
  };
}

/** The smallest of 1, 2, 5, 10, 20, 50 … that is no smaller, by steps instead of a logarithm: the same everywhere. */
function roundStep(least: number): number {
  let power = 1;
  while (power < least) power *= 10;
  while (power / 10 >= least) power /= 10;
  return [power / 5, power / 2, power].find((step) => step >= least) ?? power;
}

/** One digit is enough for a place. */
export function tenth(value: number): number {
  const rounded = Math.round(value * 10) / 10;
  return rounded === 0 ? 0 : rounded;
}
