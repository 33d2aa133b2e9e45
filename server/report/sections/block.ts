/** One block: how its shots stood to what it asks for, and every goal with its evidence. */
import type {
  BlockResult,
  ConditionResult,
  CriterionResult,
  Evidence,
} from "../../../shared/score-report.ts";
import { placeIn, rowsText } from "../places.ts";
import type { Detail, Entry, Section } from "../section.ts";
import { blockSummary } from "../summary.ts";

/** `planFile` is the file the reader has in mind: its lines go without its name. */
export function blockSection(block: BlockResult, planFile: string, mostRows: number): Section {
  return {
    title: `${block.name} (${block.kind})`,
    remark: blockSummary(block),
    mark: block.verdict,
    entries: [
      ...[...block.targets, ...block.requirements].map((condition) => conditionEntry(condition, planFile)),
      ...block.criteria.map((criterion) => goalEntry(criterion, planFile, mostRows)),
    ],
  };
}

/** A target or a requirement, with how many shots met it. */
function conditionEntry({ text, location, tally }: ConditionResult, planFile: string): Entry {
  const { hits, misses, unknown } = tally;
  const met = hits + misses === 0 ? "no shots to judge" : `${hits} of ${hits + misses} shots`;
  const open = unknown === 0 ? "" : `, ${unknown} more could not be judged`;
  return { mark: null, text: `${text}: ${met}${open}`, place: placeIn(planFile, location), details: [] };
}

function goalEntry(goal: CriterionResult, planFile: string, mostRows: number): Entry {
  const { verdict, text, location } = goal;
  return {
    mark: verdict,
    text,
    place: placeIn(planFile, location),
    details: evidenceDetails(goal, mostRows),
  };
}

/** The evidence in the order in which somebody asks for it. What was asked for is left out where the goal says it. */
function evidenceDetails({ text, evidence }: CriterionResult, mostRows: number): Detail[] {
  const { required, interval, settles, rows, cautions } = evidence;
  const details: (Detail | null)[] = [
    required === text ? null : { label: "asked", text: required },
    { label: "seen", text: seen(evidence) },
    interval && { label: "interval", text: `${interval.text}, ${interval.method}` },
    settles === null ? null : { label: "to settle", text: settles },
    rows.length === 0 ? null : { label: "rows", text: rowsText(rows, mostRows) },
    ...cautions.map((caution) => ({ label: "mind", text: caution })),
  ];
  return details.filter((detail) => detail !== null);
}

/** What was observed, with the number of shots where it does not say it. */
function seen({ observed, shotsUsed }: Evidence): string {
  const isSaid = shotsUsed === 0 || observed.match(/\d+/g)?.includes(String(shotsUsed));
  return isSaid ? observed : `${observed} (${shotsUsed} shots)`;
}
