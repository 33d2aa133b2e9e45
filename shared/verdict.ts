/** What verdicts are called. */
import type { Verdict } from "./score-report.ts";

/** `source` of the diagnostics that carry verdicts, so that nobody takes them for mistakes in the text. */
export const VERDICT_SOURCE = "drillwright score";

export function inWords(verdict: Verdict): string {
  return verdict === "not-measured" ? "not measured" : verdict;
}
