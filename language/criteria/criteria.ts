/** The kinds of criteria. A kind of the plan model that is missing here does not compile. */
import type { Criterion } from "../../shared/plan-model.ts";
import { change } from "./change/evaluate.ts";
import { count } from "./count/evaluate.ts";
import type { CountedShots, CriterionKind, CriterionOf, Outcome } from "./criterion.ts";
import { ellipse } from "./ellipse/evaluate.ts";
import { groupKind } from "./group/evaluate.ts";
import { load } from "./load/evaluate.ts";
import { run } from "./run/evaluate.ts";
import { share } from "./share/evaluate.ts";
import { statistic } from "./statistic/evaluate.ts";

const kinds: { readonly [Kind in Criterion["kind"]]: CriterionKind<Kind> } = {
  change,
  count,
  ellipse,
  group: groupKind({ sentence, metrics: metricsReadBy, evaluate }),
  load,
  run,
  share,
  statistic,
};

/**
 * The criterion in a sentence: what it asks for, and whether it is about these shots or about ability.
 *
 * @param isRequiring whether its block has requirements, so that the sentence says that they play a part
 */
export function sentence(criterion: Criterion, isRequiring = false): string {
  return kindOf(criterion).sentence(criterion, isRequiring);
}

/** The metrics a criterion reads from every shot, besides those of the block's targets and requirements. */
export function metricsReadBy(criterion: Criterion): readonly string[] {
  return kindOf(criterion).metrics(criterion);
}

/** The verdict on a criterion over these shots. */
export function evaluate(criterion: Criterion, shots: CountedShots): Outcome {
  return kindOf(criterion).evaluate(criterion, shots);
}

/** The compiler does not follow that the entry found under a criterion's kind takes that criterion. */
function kindOf<Kind extends Criterion["kind"]>(criterion: CriterionOf<Kind>): CriterionKind<Kind> {
  return kinds[criterion.kind as Kind];
}
