/**
 * The words a criterion may end in, and the rule that turns confidence limits into one of them.
 * Every method that can state limits for a true value (average, median, spread, change …) decides by this rule.
 */
import type { Interval } from "./interval.ts";
import { liesOutside, liesWithin } from "./interval.ts";

/** How a criterion ends. */
export type Verdict = "met" | "missed" | "undecided" | "not-measured";

/** How a criterion ends once there is at least one usable value. */
export type Decision = Exclude<Verdict, "not-measured">;

/** The side from which a count or share is limited. */
export type Bound = "at least" | "at most";

/**
 * Decides whether a true value lies in `claim` from its confidence limits.
 *
 * The promise: *met* while the claim is false, and *missed* while it is true, each happen with probability at
 * most 1 − confidence.
 * - Met when the limits lie within the claim. For a range these are two one-sided tests, and no correction is
 *   due (Schuirmann 1987).
 * - Missed when the limits lie wholly outside. With one limit that can go wrong in one way only. A range can
 *   be left on two sides, so there each side gets half of the error: limits of level (1 + confidence)/2.
 *
 * @param limitsAt the lower and upper limit, each wrong with probability at most 1 − level; `undefined` when
 *   there are too few shots for that level
 * @param claim the values claimed; ±Infinity where there is no limit
 * @param confidence 0.5 … 1 (excluded)
 * @param slack see `slackOf`
 */
export function verdictByLimits(
  limitsAt: (level: number) => Interval | undefined,
  claim: Interval,
  confidence: number,
  slack: number,
): Decision {
  const limits = limitsAt(confidence);
  if (limits !== undefined && liesWithin(limits, claim, slack)) return "met";
  const isRange = Number.isFinite(claim.low) && Number.isFinite(claim.high);
  const outer = isRange ? limitsAt((1 + confidence) / 2) : limits;
  if (outer !== undefined && liesOutside(outer, claim, slack)) return "missed";
  return "undecided";
}
