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

/** The lower and upper limit, each wrong with probability at most 1 − level; `undefined` with too few shots for it. */
export type LimitsAt = (level: number) => Interval | undefined;

/** A decision and the limits that decided, or that left it open. */
export interface Judgement {
  readonly decision: Decision;
  readonly limits: Interval | undefined;
  /** The level of the limits: the confidence asked for, or the higher one at which a range is missed. */
  readonly level: number;
}

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
 * @param limitsAt how the method states limits
 * @param claim the values claimed; ±Infinity where there is no limit
 * @param confidence 0.5 … 1 (excluded)
 * @param slack see `slackOf`
 */
export function judgeByLimits(
  limitsAt: LimitsAt,
  claim: Interval,
  confidence: number,
  slack: number,
): Judgement {
  const limits = limitsAt(confidence);
  const judgement = { limits, level: confidence };
  if (limits !== undefined && liesWithin(limits, claim, slack)) return { decision: "met", ...judgement };
  const isRange = Number.isFinite(claim.low) && Number.isFinite(claim.high);
  const level = isRange ? (1 + confidence) / 2 : confidence;
  const outer = isRange ? limitsAt(level) : limits;
  if (outer !== undefined && liesOutside(outer, claim, slack)) {
    return { decision: "missed", limits: outer, level };
  }
  return { decision: "undecided", ...judgement };
}

/** The decision alone of `judgeByLimits`. */
export function verdictByLimits(
  limitsAt: LimitsAt,
  claim: Interval,
  confidence: number,
  slack: number,
): Decision {
  return judgeByLimits(limitsAt, claim, confidence, slack).decision;
}
