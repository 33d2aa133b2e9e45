/** Three-valued truth and the four verdicts. */
import type { Verdict } from "../../shared/score-report.ts";

/** Whether a shot meets a condition; `undefined` where a value it needs is unknown. */
export type Truth = boolean | undefined;

/** Kleene's negation: unknown stays unknown. */
export function not(truth: Truth): Truth {
  return truth === undefined ? undefined : !truth;
}

/** Kleene's conjunction: false if any is false, else unknown if any is unknown. */
export function allOf(truths: Iterable<Truth>): Truth {
  let result: Truth = true;
  for (const truth of truths) {
    if (truth === false) return false;
    if (truth === undefined) result = undefined;
  }
  return result;
}

/** Kleene's disjunction: true if any is true, else unknown if any is unknown. */
export function anyOf(truths: Iterable<Truth>): Truth {
  let result: Truth = false;
  for (const truth of truths) {
    if (truth === true) return true;
    if (truth === undefined) result = undefined;
  }
  return result;
}

/**
 * The verdict on a group: missed if any is missed; else not measured if all are; else undecided if any is not met;
 * else met. Null for an empty group: nothing was asked, so nothing is answered.
 */
export function verdictOfAll(verdicts: readonly Verdict[]): Verdict | null {
  if (verdicts.length === 0) return null;
  if (verdicts.includes("missed")) return "missed";
  if (verdicts.every((verdict) => verdict === "not-measured")) return "not-measured";
  return verdicts.every((verdict) => verdict === "met") ? "met" : "undecided";
}
