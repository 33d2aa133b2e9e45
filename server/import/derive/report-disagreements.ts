/** What to say about readings that do not fit each other. */
import type { Expression, ScoringInput } from "../../../shared/plan-model.ts";
import { formatReading } from "../../../shared/quantity.ts";
import type { Report } from "../finding.ts";
import type { Disagreement } from "./consistency.ts";

/** One finding about one shot. The reading is kept. */
export function reportDisagreement(
  { formula, measured, derived }: Disagreement,
  line: number,
  { metrics, player }: ScoringInput,
  report: Report,
): void {
  const metric = metrics.get(formula.name);
  if (metric === undefined) return;
  const [read, follows] = [measured, derived].map((value) =>
    formatReading(value, metric, player.hand ?? "right"),
  );
  report({
    code: "value-inconsistent",
    severity: "warning",
    line,
    message: `${formula.name} was read as ${read}, but ${written(formula.expression)} gives ${follows}: one of these readings, or the sign or unit of a column, is wrong. All are kept as they were read.`,
  });
}

/** An expression as a formula is written: `face-angle − club-path`. */
function written(expression: Expression): string {
  switch (expression.kind) {
    case "number":
      return String(expression.value);
    case "metric":
      return expression.name;
    case "operation":
      return `${part(expression.left)} ${SIGNS[expression.operator]} ${part(expression.right)}`;
  }
}

function part(expression: Expression): string {
  return expression.kind === "operation" ? `(${written(expression)})` : written(expression);
}

const SIGNS = { "+": "+", "-": "−", "*": "×", "/": "/" } as const;
