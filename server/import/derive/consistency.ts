/** Readings that were measured and also follow from others: do they fit each other? */
import type { Expression } from "../../../shared/plan-model.ts";
import type { Formula } from "./derive.ts";

/** How far a reading may be off, in SI: what was rounded away, and what the instrument does not resolve. */
export type Margins = Readonly<Record<string, number>>;

/** A metric whose reading and whose formula disagree. SI. */
export interface Disagreement {
  readonly formula: Formula;
  readonly measured: number;
  readonly derived: number;
}

interface Range {
  readonly low: number;
  readonly high: number;
}

/** Readings are not exact in binary: this share of a margin more does no harm. */
const SLACK = 1e-9;

/**
 * The metrics of `measured` whose formula, over readings that were measured too, gives something else, whatever the true
 * values within the margins are. A result that is not finite disagrees with nothing.
 *
 * Source: interval arithmetic (Moore 1966): the range of a sum, difference, product or quotient over ranges of its parts.
 */
export function disagreements(
  measured: Readonly<Record<string, number>>,
  margins: Margins,
  formulas: readonly Formula[],
): Disagreement[] {
  return formulas.flatMap((formula): Disagreement[] => {
    const value = measured[formula.name];
    if (value === undefined) return [];
    const range = rangeOf(formula.expression, measured, margins);
    if (range === undefined) return [];
    const margin = (margins[formula.name] ?? 0) + SLACK * Math.abs(value);
    if (range.low <= value + margin && range.high >= value - margin) return [];
    return [{ formula, measured: value, derived: (range.low + range.high) / 2 }];
  });
}

/** Undefined where a part was not measured, or the range has no end. */
function rangeOf(
  expression: Expression,
  measured: Readonly<Record<string, number>>,
  margins: Margins,
): Range | undefined {
  switch (expression.kind) {
    case "number":
      return { low: expression.value, high: expression.value };
    case "metric": {
      const value = measured[expression.name];
      if (value === undefined) return undefined;
      const margin = margins[expression.name] ?? 0;
      return { low: value - margin, high: value + margin };
    }
    case "operation": {
      const left = rangeOf(expression.left, measured, margins);
      const right = rangeOf(expression.right, measured, margins);
      if (left === undefined || right === undefined) return undefined;
      const range = combined(expression.operator, left, right);
      return Number.isFinite(range.low) && Number.isFinite(range.high) ? range : undefined;
    }
  }
}

function combined(operator: "+" | "-" | "*" | "/", left: Range, right: Range): Range {
  switch (operator) {
    case "+":
      return { low: left.low + right.low, high: left.high + right.high };
    case "-":
      return { low: left.low - right.high, high: left.high - right.low };
    case "*":
      return ofCorners(left, right, (one, other) => one * other);
    case "/":
      return right.low <= 0 && right.high >= 0
        ? { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }
        : ofCorners(left, right, (one, other) => one / other);
  }
}

function ofCorners(left: Range, right: Range, of: (one: number, other: number) => number): Range {
  const corners = [
    of(left.low, right.low),
    of(left.low, right.high),
    of(left.high, right.low),
    of(left.high, right.high),
  ];
  return { low: Math.min(...corners), high: Math.max(...corners) };
}
