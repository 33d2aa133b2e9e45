/** Shots with readings of several metrics, and all that numbers that sum them up may depend on. */
import type { Comparison, CountedShots, StandardUncertainty } from "../../language/criteria/criterion.ts";
import { type Circumstances, shotsLike } from "./shots.ts";
import { metricCalled } from "./words.ts";

/** By metric, in the unit it is shown in, target frame. `null` is unknown. */
export type Readings = Readonly<Record<string, readonly (number | null)[]>>;

export interface MeasuredCircumstances extends Circumstances {
  /** How far readings may be off, by metric, in its unit; exact where it is not stated. */
  readonly uncertainty?: Readonly<Record<string, StandardUncertainty>>;
  readonly decisionLevel?: number;
  readonly club?: string;
  /** What changes are held against, or why there is nothing. */
  readonly against?: CountedShots["against"];
}

export function measured(readings: Readings, circumstances: MeasuredCircumstances = {}): CountedShots {
  const { uncertainty = {}, decisionLevel = 0.95, club = null, against } = circumstances;
  const lists = Object.values(readings);
  const size = lists[0]?.length ?? 0;
  if (lists.some(({ length }) => length !== size))
    throw new Error("Every shot needs a reading of every metric.");
  const plain = shotsLike("U".repeat(size), circumstances);
  return {
    ...plain,
    clubs: Array.from({ length: size }, () => club),
    decisionLevel,
    values: (metric) => {
      const { factor } = metricCalled(metric).unit;
      const values = readings[metric] ?? Array.from({ length: size }, () => null);
      return values.map((value) => (value === null ? undefined : value * factor));
    },
    uncertainty: (metric) => {
      const stated = uncertainty[metric];
      if (stated === undefined) return null;
      const { factor } = metricCalled(metric).unit;
      const inSi = { random: stated.random * factor, systematic: stated.systematic * factor };
      return Array.from({ length: size }, () => inSi);
    },
    against: against ?? plain.against,
  };
}

/** Other shots to compare with: as in `against …`. */
export function otherShots(name: string, shots: CountedShots, isSameSession = true): Comparison {
  return { kind: "shots", name, shots, isSameSession };
}

/** The player's usual number, in the unit the metric is shown in. */
export function usual(
  metric: string,
  value: number,
  spread: number | null = null,
  count: number | null = null,
): Comparison {
  const { factor } = metricCalled(metric).unit;
  return { kind: "usual", name: "usual", value: value * factor, spread: spread && spread * factor, count };
}
