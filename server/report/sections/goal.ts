/** A goal with its verdict and evidence; of a group with those of its parts. */
import type { Metric } from "../../../shared/plan-model.ts";
import { finer, formatAmount } from "../../../shared/quantity.ts";
import type { CriterionResult, Evidence } from "../../../shared/score-report.ts";
import { placeIn, rowsText } from "../places.ts";
import type { Detail, Entry } from "../section.ts";

/** What the words of a goal need besides its result. */
export interface GoalContext {
  /** The file the reader has in mind: its lines go without its name. */
  readonly planFile: string;
  readonly metrics: ReadonlyMap<string, Metric>;
  readonly mostRows: number;
}

export function goalEntry(goal: CriterionResult, context: GoalContext): Entry {
  const { verdict, text, location, parts } = goal;
  return {
    mark: verdict,
    text: parts.length === 0 ? text : groupHead(text),
    place: placeIn(context.planFile, location),
    details: evidenceDetails(goal, context),
    parts: parts.map((part) => goalEntry(part, context)),
  };
}

/** `2 of { … }` without its parts, which follow: `2 of these`. */
export function groupHead(text: string): string {
  const brace = text.indexOf("{");
  return brace < 0 ? text : `${text.slice(0, brace).trimEnd()} these`;
}

/** The evidence in the order in which somebody asks for it. What was asked for is left out where the goal says it. */
export function evidenceDetails({ text, evidence, parts }: CriterionResult, context: GoalContext): Detail[] {
  const { required, interval, settles, rows, cautions, isEstimate } = evidence;
  const smallest = smallestShown(evidence, context.metrics);
  const isSaid = required === text || parts.length > 0;
  const details: (Detail | null)[] = [
    isSaid ? null : { label: "asked", text: required },
    { label: "seen", text: parts.length === 0 ? seen(evidence) : evidence.observed },
    interval && { label: "interval", text: `${interval.text}, ${interval.method}` },
    smallest === null ? null : { label: "resolves", text: smallest },
    settles === null ? null : { label: "to settle", text: settles },
    rows.length === 0 || parts.length > 0 ? null : { label: "rows", text: rowsText(rows, context.mostRows) },
    isEstimate ? { label: "estimate", text: "a model had a part in these numbers" } : null,
    ...cautions.map((caution) => ({ label: "mind", text: caution })),
  ];
  return details.filter((detail) => detail !== null);
}

/** What was observed, with the number of shots where it does not say it. */
export function seen({ observed, shotsUsed }: Evidence): string {
  const isSaid = shotsUsed === 0 || observed.match(/\d+/g)?.includes(String(shotsUsed));
  return isSaid ? observed : `${observed} (${shotsUsed} shots)`;
}

/** The smallest change that these shots could have shown; null where that is not known. */
export function smallestShown(
  { comparison, metrics: [name = ""] }: Pick<Evidence, "comparison" | "metrics">,
  metrics: ReadonlyMap<string, Metric>,
): string | null {
  const metric = metrics.get(name);
  const smallest = comparison?.smallestShown ?? null;
  if (smallest === null || metric === undefined) return null;
  return `changes of ${formatAmount(smallest, finer(metric))} or more: these shots could not have shown a smaller one`;
}
