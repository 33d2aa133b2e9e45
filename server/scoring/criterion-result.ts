/** The result of a criterion, with the rows of the data behind it. */
import { metricsReadBy } from "../../language/criteria/criteria.ts";
import type { CountedShots, Outcome } from "../../language/criteria/criterion.ts";
import type { Criterion } from "../../shared/plan-model.ts";
import type { CriterionResult } from "../../shared/score-report.ts";
import type { Row, Shot } from "../../shared/session-data.ts";

/** What a criterion was judged on. */
export interface JudgedOn {
  readonly counted: readonly Shot[];
  readonly forCriteria: CountedShots;
  /** Metrics that are estimates. */
  readonly estimates: ReadonlySet<string>;
  /** To be said beside every verdict. */
  readonly cautions: readonly string[];
}

export function criterionResult(
  criterion: Criterion,
  { verdict, deciding, comparison = null, parts = [], ...outcome }: Outcome,
  on: JudgedOn,
): CriterionResult {
  const { id, kind, text, location } = criterion;
  const metrics = decidingMetrics(criterion, on.forCriteria);
  const partsOf = criterion.kind === "group" ? criterion.criteria : [];
  return {
    id,
    kind,
    text,
    location,
    verdict,
    evidence: {
      ...outcome,
      comparison,
      isEstimate: metrics.some((metric) => on.estimates.has(metric)),
      rows: rowsAt(on.counted, deciding),
      metrics,
      cautions: [...outcome.cautions, ...on.cautions],
    },
    parts: parts.flatMap((part, place) => {
      const of = partsOf[place];
      // What is to be said beside every verdict is said beside the group's.
      return of === undefined ? [] : [criterionResult(of, part, { ...on, cautions: [] })];
    }),
  };
}

/** What the criterion reads itself, what its targets read, and what the block requires. */
function decidingMetrics(criterion: Criterion, shots: CountedShots): string[] {
  return [
    ...new Set([
      ...metricsReadBy(criterion),
      ...metricsOfSubjects(criterion, shots),
      ...shots.requiredMetrics,
    ]),
  ];
}

function metricsOfSubjects(criterion: Criterion, shots: CountedShots): readonly string[] {
  if (criterion.kind === "group") return criterion.criteria.flatMap((part) => metricsOfSubjects(part, shots));
  return "subject" in criterion ? shots.metricsOf(criterion.subject) : [];
}

function rowsAt(counted: readonly Shot[], indices: readonly number[]): Row[] {
  const rows: Row[] = [];
  for (const index of indices) {
    const shot = counted[index];
    if (shot !== undefined) rows.push(shot.row);
  }
  return rows;
}
