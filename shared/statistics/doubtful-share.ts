/**
 * Shares as ability when readings may be off: two doubts at once. A simple safe answer: the shots that surely conform are
 * the fewest hits there can be, those that do not surely fail the most, and only what holds for both is decided.
 */
import { verdictByProbability } from "./conformance.ts";
import { shareVerdict } from "./proportion.ts";
import type { Bound, Decision } from "./verdict.ts";

/** The fewest and the most hits that shots with these conformance probabilities are taken to have. */
export function surelyAndPossiblyHits(
  chances: readonly number[],
  level: number,
): { readonly surely: number; readonly possibly: number } {
  const verdicts = chances.map((chance) => verdictByProbability(chance, level));
  return {
    surely: verdicts.filter((verdict) => verdict === "met").length,
    possibly: verdicts.filter((verdict) => verdict !== "missed").length,
  };
}

/**
 * Judges a share as ability from the conformance probability of each shot: "at least" is met if the sure hits alone meet
 * it, and missed if even the possible hits miss it; "at most" is the mirror.
 *
 * @param level how probable a shot must be inside, or outside, to be counted as sure
 */
export function doubtfulShareVerdict(
  chances: readonly number[],
  share: number,
  confidence: number,
  level: number,
  bound: Bound = "at least",
): Decision {
  const { surely, possibly } = surelyAndPossiblyHits(chances, level);
  const fewest = shareVerdict(surely, chances.length, share, confidence, bound);
  const most = shareVerdict(possibly, chances.length, share, confidence, bound);
  return fewest === most ? fewest : "undecided";
}
