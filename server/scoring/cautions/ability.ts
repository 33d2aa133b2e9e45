/** Several verdicts about ability in one report. */
import { confidencesOf } from "../../../language/criteria/group/evaluate.ts";
import { listed, percent, roundedPercent } from "../../../language/criteria/wording.ts";
import type { Criterion, Plan } from "../../../shared/plan-model.ts";
import type { BlockResult, CriterionResult } from "../../../shared/score-report.ts";
import { chanceAllRight } from "../../../shared/statistics/several-criteria.ts";

/**
 * That several verdicts about ability, each of which may be wrong, are less sure together. Each is right with a
 * probability of at least its confidence, so if they are independent all are with at least the product.
 */
export function abilityCautions(plan: Plan, results: readonly BlockResult[]): string[] {
  const decided = new Set(
    results
      .flatMap(({ criteria }) => criteria)
      .flatMap(withParts)
      .filter(({ verdict }) => verdict === "met" || verdict === "missed")
      .map(({ id }) => id),
  );
  const confidences = plan.blocks
    .flatMap(({ success }) => success)
    .flatMap(single)
    .filter(({ id }) => decided.has(id))
    .flatMap(confidencesOf);
  if (confidences.length < 2) return [];
  const levels = [...new Set(confidences)].sort((one, other) => one - other).map(percent);
  const together = chanceAllRight(confidences);
  const all = confidences.length === 2 ? "both" : `all ${confidences.length}`;
  return [
    `Each of the ${confidences.length} verdicts about ability, at ${listed(levels)} confidence, can be wrong on its own: the chance that ${all} are right may be no more than ${roundedPercent(together)}.`,
  ];
}

function withParts(result: CriterionResult): CriterionResult[] {
  return [result, ...result.parts.flatMap(withParts)];
}

/** The criteria of a group instead of it. */
function single(criterion: Criterion): Criterion[] {
  return criterion.kind === "group" ? criterion.criteria.flatMap(single) : [criterion];
}
