/** Three-valued truth and the four verdicts. */
import type { Verdict } from "../../shared/score-report.ts";
import type { Truth } from "../../shared/truth.ts";

export { allOf, anyOf, not, type Truth } from "../../shared/truth.ts";

/** Kleene's conjunction of two, without a list of them. */
export function both(one: Truth, other: Truth): Truth {
  if (one === false || other === false) return false;
  return one === undefined ? undefined : other;
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

/**
 * The verdict on so many of several: met if as many are; missed if fewer can still be; else not measured if none is
 * measured; else undecided.
 */
export function verdictOfSome(verdicts: readonly Verdict[], needed: number): Verdict {
  const ended = (verdict: Verdict) => verdicts.filter((each) => each === verdict).length;
  if (ended("met") >= needed) return "met";
  if (verdicts.length - ended("missed") < needed) return "missed";
  return ended("not-measured") === verdicts.length ? "not-measured" : "undecided";
}
