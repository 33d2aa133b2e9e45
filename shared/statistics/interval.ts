/**
 * Comparing with a limit, so that a value exactly at the limit counts as inside.
 *
 * Decimal readings are not exact in binary: 0.3 − 0.1 gives 0.19999999999999998, which a plain `>=` would put
 * below 0.2. Readings, means, differences and confidence limits are therefore compared with a slack of a
 * billionth of the unit the limit is written in: far below any display, far above rounding.
 *
 * Each function states something; about a NaN none of them is true.
 */

/** From `low` to `high`, both included; ±Infinity means no limit on that side. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The slack for limits written in a unit of this size (`unit` in SI: one degree is 0.01745… rad). */
export function slackOf(unit: number): number {
  return 1e-9 * unit;
}

export function isAtLeast(value: number, limit: number, slack: number): boolean {
  return value >= limit - slack;
}

export function isAtMost(value: number, limit: number, slack: number): boolean {
  return value <= limit + slack;
}

/** Below the limit by more than the slack: the opposite of `isAtLeast` for every number. */
export function isBelow(value: number, limit: number, slack: number): boolean {
  return value < limit - slack;
}

/** Above the limit by more than the slack: the opposite of `isAtMost` for every number. */
export function isAbove(value: number, limit: number, slack: number): boolean {
  return value > limit + slack;
}

export function isInside(value: number, interval: Interval, slack: number): boolean {
  return isAtLeast(value, interval.low, slack) && isAtMost(value, interval.high, slack);
}

/** All of `inner` is inside `outer`. */
export function liesWithin(inner: Interval, outer: Interval, slack: number): boolean {
  return isAtLeast(inner.low, outer.low, slack) && isAtMost(inner.high, outer.high, slack);
}

/** The two have no value in common. */
export function liesOutside(one: Interval, other: Interval, slack: number): boolean {
  return isBelow(one.high, other.low, slack) || isAbove(one.low, other.high, slack);
}
