/** Shots that follow one another: a statement about ability takes them for independent of each other. */
import { metricsReadBy } from "../../../language/criteria/criteria.ts";
import type { CountedShots } from "../../../language/criteria/criterion.ts";
import { confidencesOf } from "../../../language/criteria/group/evaluate.ts";
import { listed } from "../../../language/criteria/wording.ts";
import type { Block, Criterion } from "../../../shared/plan-model.ts";
import { orderOfShots, worthInIndependentShots } from "../../../shared/statistics/order-of-shots.ts";

/** Of the metrics that goals about ability read, in the order in which the shots were hit. Never a correction. */
export function driftCautions(block: Block, shots: CountedShots): string[] {
  const metrics = [...new Set(block.success.flatMap((criterion) => readForAbility(criterion, shots)))];
  const orders = metrics.flatMap((metric) => {
    const values = shots.values(metric).filter((value) => value !== undefined);
    const order = orderOfShots(values);
    return order === undefined ? [] : { metric, n: values.length, ...order };
  });
  const drifting = orders.filter(({ drifts }) => drifts).map(({ metric }) => metric);
  const following = orders.filter(({ followsOn, drifts }) => followsOn && !drifts);
  const names = following.map(({ metric }) => metric);
  return [
    said(drifting, (are) => `${are === "is" ? "drifts" : "drift"} from the first shot to the last`),
    said(names, (are) => `of a shot ${are} not independent of the one before${worthOf(following)}`),
  ].flatMap((text) =>
    text === null
      ? []
      : `Block "${block.name}": ${text}, so goals about ability are less sure than they say.`,
  );
}

/** What shots that resemble the one before say about an average, for the metric that loses most; empty where none does. */
function worthOf(orders: readonly { readonly n: number; readonly autocorrelation: number }[]): string {
  const losses = orders.map(({ n, autocorrelation }) => ({
    n,
    worth: Math.max(1, Math.round(worthInIndependentShots(n, autocorrelation))),
  }));
  const [most] = losses.sort((one, other) => one.worth / one.n - other.worth / other.n);
  if (most === undefined || most.worth >= most.n) return "";
  return ` (about an average, ${most.n} shots say as much as about ${most.worth} independent ${most.worth === 1 ? "one" : "ones"} would: an estimate)`;
}

function said(metrics: readonly string[], predicate: (are: "is" | "are") => string): string | null {
  if (metrics.length === 0) return null;
  return `${listed(metrics)} ${predicate(metrics.length === 1 ? "is" : "are")}`;
}

function readForAbility(criterion: Criterion, shots: CountedShots): readonly string[] {
  if (confidencesOf(criterion).length === 0) return [];
  if (criterion.kind === "group") return criterion.criteria.flatMap((part) => readForAbility(part, shots));
  return "subject" in criterion ? shots.metricsOf(criterion.subject) : metricsReadBy(criterion);
}
