/** What verdicts are called. */
import type { Verdict } from "./score-report.ts";

/** `source` of the diagnostics that carry verdicts, so that nobody takes them for mistakes in the text. */
export const VERDICT_SOURCE = "drillwright score";

/** All that can be said of a goal. */
export const VERDICTS: readonly Verdict[] = ["met", "missed", "undecided", "not-measured"];

export function inWords(verdict: Verdict): string {
  return verdict === "not-measured" ? "not measured" : verdict;
}
