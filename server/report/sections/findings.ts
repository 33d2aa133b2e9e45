/** The patterns that the plan looks for in a baseline. What is shown is a suspicion to look into, never a diagnosis. */
import type { FindingResult } from "../../../shared/score-report.ts";
import { inWords } from "../../../shared/verdict.ts";
import { placeIn } from "../places.ts";
import { type Detail, type Entry, remark } from "../section.ts";
import { type GoalContext, goalEntry } from "./goal.ts";

/** `pattern "Cut from an open face": shown`, with where to look only where it is. */
export function findingEntry(finding: FindingResult, context: GoalContext): Entry {
  const { name, location, criteria } = finding;
  const entry = remark(
    `pattern "${name}": ${standing(finding)}`,
    placeIn(context.planFile, location),
    leads(finding),
  );
  return { ...entry, parts: criteria.map((criterion) => goalEntry(criterion, context)) };
}

/** Whether the pattern is shown, in words of its own: nobody meets or misses a pattern. */
export function standing({ verdict, strength }: FindingResult): string {
  switch (verdict) {
    case "met":
      return strength === null || strength === 0
        ? "shown, a suspicion and no diagnosis"
        : `shown, a suspicion and no diagnosis; it would hold at up to ${(100 * strength).toFixed(0)} % confidence`;
    case "missed":
      return "not shown";
    default:
      return inWords(verdict);
  }
}

/** Where to look: said only of a pattern that is shown. */
export function leads({ verdict, suspects, checks, tries }: FindingResult): Detail[] {
  if (verdict !== "met") return [];
  return [
    ...suspects.map((text) => ({ label: "perhaps", text })),
    ...checks.map((text) => ({ label: "check", text })),
    ...tries.map(({ text }) => ({ label: "try", text })),
  ];
}
