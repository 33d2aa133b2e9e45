/** Metrics that follow from others. */
import type { Expression, Metric } from "../../../shared/plan-model.ts";

/** A metric's name and how it follows from others. */
export interface Formula {
  readonly name: string;
  readonly expression: Expression;
}

export function formulas(metrics: Iterable<Metric>): Formula[] {
  return [...metrics].flatMap(({ name, formula }) =>
    formula === null ? [] : [{ name, expression: formula }],
  );
}

/**
 * Adds to `values` (SI, target frame) every metric that is missing there and follows from the ones that are, directly
 * or over others, and returns the names of what it added. What was measured is never replaced. A metric stays unknown
 * where an operand is unknown or the result is not finite, as after a division by zero. Formulas that lead back to
 * themselves do no harm: each round uses only what is already known, until a round adds nothing.
 */
export function derive(values: Record<string, number>, formulas: readonly Formula[]): string[] {
  const derived: string[] = [];
  let missing = formulas.filter(({ name }) => !Object.hasOwn(values, name));
  for (let before = -1; before !== missing.length; ) {
    before = missing.length;
    missing = missing.filter(({ name, expression }) => {
      const value = evaluate(expression, values);
      if (!Number.isFinite(value)) return true;
      values[name] = value === 0 ? 0 : value;
      derived.push(name);
      return false;
    });
  }
  return derived;
}

/** The value of the expression; not a number where an operand is unknown. */
function evaluate(expression: Expression, values: Readonly<Record<string, number>>): number {
  switch (expression.kind) {
    case "number":
      return expression.value;
    case "metric":
      return Object.hasOwn(values, expression.name) ? (values[expression.name] ?? Number.NaN) : Number.NaN;
    case "operation": {
      const left = evaluate(expression.left, values);
      const right = evaluate(expression.right, values);
      const result = OPERATIONS[expression.operator](left, right);
      return Number.isFinite(result) ? result : Number.NaN; // or a division by the result would hide it
    }
  }
}

const OPERATIONS: Record<"+" | "-" | "*" | "/", (left: number, right: number) => number> = {
  "+": (left, right) => left + right,
  "-": (left, right) => left - right,
  "*": (left, right) => left * right,
  "/": (left, right) => left / right,
};
