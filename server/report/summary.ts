/** One line about a block or a whole session. */

import type { BlockResult, ScoreReport, Verdict } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";

/**
 * `12 of 18 on target · 2 goals met · 1 undecided`; where one goal is open and waits for shots, what they must bring:
 * `9 of 18 on target · 1 goal undecided, needs 3 of the next 6`
 */
export function blockSummary(block: BlockResult): string {
  const parts: string[] = [];
  const { onTarget, shots } = block;
  const outOf = Math.max(shots.asked, shots.counted); // more count where the block asks for at least so many
  if (onTarget !== null && onTarget.hits + onTarget.misses > 0) {
    parts.push(`${onTarget.hits} of ${outOf} on target`);
  } else if (shots.hit > 0) {
    parts.push(`${shots.counted} of ${outOf} shots`);
  }
  parts.push(...goalCounts(block.criteria.map(({ verdict }) => verdict)));
  const summary = parts.join(" · ") || "no shots";
  const [open, another] = block.criteria.filter(({ verdict }) => verdict === "undecided");
  const needs = another === undefined ? open?.evidence.needs : undefined;
  return needs === undefined ? summary : `${summary}, ${needs}`;
}

/** `Second try, 2026-10-12: 3 goals met · 1 missed` */
export function sessionSummary(report: ScoreReport): string {
  return `${sessionTitle(report)}: ${goalSummary(report)}`;
}

/** `Second try, 2026-10-12` */
export function sessionTitle({ session: { name, date } }: ScoreReport): string {
  return date === null ? name : `${name}, ${date}`;
}

/** Whether a shot was read. Where none was, nothing is known: neither of goals nor of swings. */
export function hasShots({ data }: ScoreReport): boolean {
  return data.some(({ shots }) => shots > 0);
}

/** `3 goals met · 1 missed` */
export function goalSummary({ blocks }: ScoreReport): string {
  const verdicts = blocks.flatMap(({ criteria }) => criteria.map(({ verdict }) => verdict));
  return goalCounts(verdicts).join(" · ") || "no goals set";
}

function goalCounts(verdicts: readonly Verdict[]): string[] {
  const counts = Object.entries(goalTally(verdicts)) as [Verdict, number][];
  return counts
    .filter(([, count]) => count > 0)
    .map(([verdict, count], index) => {
      const noun = index > 0 ? "" : count === 1 ? " goal" : " goals";
      return `${count}${noun} ${inWords(verdict)}`;
    });
}

/** How many goals came out how. */
export function goalTally(verdicts: readonly Verdict[]): Record<Verdict, number> {
  const tally: Record<Verdict, number> = { met: 0, missed: 0, undecided: 0, "not-measured": 0 };
  for (const verdict of verdicts) tally[verdict]++;
  return tally;
}

/** `3 sessions scored: 1 met, 2 undecided.` */
export function verdictCounts(reports: readonly Pick<ScoreReport, "verdict">[]): string {
  const order = ["met", "missed", "undecided", "not-measured", null] as const;
  const counted = order
    .map((wanted) => [wanted, reports.filter(({ verdict }) => verdict === wanted).length] as const)
    .filter(([, count]) => count > 0)
    .map(([verdict, count]) => `${count} ${verdict === null ? "without goals" : inWords(verdict)}`);
  return `${reports.length} sessions scored: ${counted.join(", ")}.`;
}
