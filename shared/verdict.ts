/** A verdict in words. */
import type { Verdict } from "./score-report.ts";

export function inWords(verdict: Verdict): string {
  return verdict === "not-measured" ? "not measured" : verdict;
}
