/** Which metrics are estimates: computed by a model for a shot at least, or from something that is. */
import { metricsIn } from "../../language/criteria/condition.ts";
import type { Expression, Metric } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";

/** By name. What was read is no estimate, even where a model could compute it. */
export function estimatesAmong(
  vocabulary: ReadonlyMap<string, Metric>,
  shots: readonly Shot[],
): ReadonlySet<string> {
  const derived = new Set<string>();
  for (const shot of shots) for (const name of shot.derived) derived.add(name);
  const computed = [...derived].flatMap((name) => vocabulary.get(name) ?? []);
  const estimates = new Set(computed.filter(({ model }) => model !== null).map(({ name }) => name));
  for (let before = -1; before !== estimates.size; ) {
    before = estimates.size;
    for (const metric of computed) {
      if (sourcesOf(metric).some((source) => estimates.has(source))) estimates.add(metric.name);
    }
  }
  return estimates;
}

function sourcesOf({ formula, categories }: Metric): string[] {
  const ofNames = categories.flatMap(({ condition }) => (condition === null ? [] : metricsIn(condition)));
  return formula === null ? ofNames : [...ofNames, ...operands(formula)];
}

/** The metrics in a formula. */
export function operands(expression: Expression): string[] {
  switch (expression.kind) {
    case "number":
      return [];
    case "metric":
      return [expression.name];
    case "operation":
      return [...operands(expression.left), ...operands(expression.right)];
  }
}
