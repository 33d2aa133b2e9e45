/** Which metrics a plan speaks of. */
import { metricsIn } from "../../language/criteria/condition.ts";
import { metricsReadBy } from "../../language/criteria/criteria.ts";
import type { Plan } from "../../shared/plan-model.ts";

/** The metrics that targets, requirements, shots to leave out, goals and findings of a plan read, in the order of the plan. */
export function metricsUsed({ blocks, findings }: Plan): readonly string[] {
  return [
    ...blocks.flatMap(({ targets, requirements, leaveOut, success }) => [
      ...[...targets, ...requirements, ...leaveOut].flatMap(({ condition }) => metricsIn(condition)),
      ...success.flatMap(metricsReadBy),
    ]),
    ...findings.flatMap(({ when }) => when.flatMap(metricsReadBy)),
  ];
}
