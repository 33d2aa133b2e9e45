/** What the model answers: an estimate, or why there is none. */
import type { Validity } from "./validity.ts";

export interface Estimated {
  readonly status: "supported" | "extrapolated";
  /** SI. Rounded: see `settled`. */
  readonly value: number;
  /**
   * How far the other coefficient set is from the value, and where a condition was assumed half of what it could change on top.
   * SI, not negative. The spread of balls and of readings is not in it.
   */
  readonly uncertainty: number;
  /** Why it is extrapolated; null where it is supported. */
  readonly warning: string | null;
  /** What was not stated and taken for granted, in words. */
  readonly assumptions: readonly string[];
}

export interface NotMeasured {
  readonly status: "not-measured";
  /** In words: what is missing or out of reach, and what to do about it. A sentence. */
  readonly reason: string;
}

export type Estimate = Estimated | NotMeasured;

export function notMeasured(reason: string): NotMeasured {
  return { status: "not-measured", reason };
}

/** @param validity the least certain of what went into the value */
export function estimated(
  value: number,
  uncertainty: number,
  step: number,
  { status, reason }: Validity,
  assumptions: readonly string[],
): Estimate {
  if (status === "unsupported") return notMeasured(`There is no estimate, since ${reason}.`);
  return {
    status,
    value: settled(value, step),
    uncertainty: settled(Math.abs(uncertainty), step),
    warning: status === "extrapolated" ? `Extrapolated, since ${reason}.` : null,
    assumptions,
  };
}

/** Steps to which results are rounded before anything is decided by them: 0.1 mm, and a millionth. */
export const LENGTH_STEP = 1e-4;
export const RATIO_STEP = 1e-6;

/**
 * The value as a whole number of steps, so that a verdict is the same on every machine: engines may disagree about the last bit of a
 * sine or a power, which makes some 1e-12 m of a flight, a hundred-millionth of a step. Never negative zero.
 */
export function settled(value: number, step: number): number {
  // Halves go away from zero, so that mirror images are rounded alike.
  const size = Math.round(Math.abs(value) / step) / Math.round(1 / step);
  return value < 0 ? 0 - size : size;
}
