/**
 * Lets relations narrow what is left for readings, until nothing changes: each relation is evaluated from its metrics up,
 * and what is known of the whole is handed back down to them.
 */
import type { Expression } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import type { Box } from "./box.ts";
import { difference, isEmpty, meet, otherFactor, product, quotient, sum, widened } from "./range.ts";
import type { Relation } from "./relation.ts";

/** Relations that lead round in a circle may narrow for ever in ever smaller steps. Stopping early loses no reading. */
const MOST_TURNS = 40;

/** An expression with where its value lies. */
interface Evaluated {
  readonly expression: Expression;
  readonly range: Interval;
  readonly left?: Evaluated;
  readonly right?: Evaluated;
}

/**
 * Narrows the box in place. Says whether some reading is left for every metric; it may say so where none is, but never the
 * other way round. Cost: a bounded number of visits to each relation.
 *
 * @param isExact takes readings for exact: for what is said to people, not for what is decided.
 */
export function propagate(box: Box, relations: readonly Relation[], isExact = false): boolean {
  for (let turn = 0; turn < MOST_TURNS && box.possible && box.narrowed.size > 0; turn++) {
    const changed = new Set(box.narrowed);
    box.narrowed.clear();
    for (const relation of relations) {
      if (!relation.metrics.some((metric) => changed.has(metric) || box.narrowed.has(metric))) continue;
      const range = widened(relation.range, isExact ? 0 : relation.slack);
      if (!handDown(evaluate(relation.expression, box), range, box)) return false;
    }
  }
  return box.possible;
}

function evaluate(expression: Expression, box: Box): Evaluated {
  switch (expression.kind) {
    case "number":
      return { expression, range: { low: expression.value, high: expression.value } };
    case "metric":
      return { expression, range: box.range(expression.name) };
    case "operation": {
      const left = evaluate(expression.left, box);
      const right = evaluate(expression.right, box);
      return { expression, range: OPERATIONS[expression.operator](left.range, right.range), left, right };
    }
  }
}

const OPERATIONS = { "+": sum, "-": difference, "*": product, "/": quotient } as const;

/** Leaves of the metrics in an expression what lets its value lie in `wanted`. */
function handDown({ expression, range, left, right }: Evaluated, wanted: Interval, box: Box): boolean {
  const possible = meet(range, wanted);
  if (isEmpty(possible)) return box.fail();
  if (expression.kind === "metric") return box.narrow(expression.name, possible);
  if (expression.kind === "number" || left === undefined || right === undefined) return true;
  const [forLeft, forRight] = PARTS[expression.operator](possible, left.range, right.range);
  return handDown(left, forLeft, box) && handDown(right, forRight, box);
}

type Parts = readonly [left: Interval, right: Interval];

/** What is left for the parts of an operation whose value lies in `whole`. */
const PARTS: Readonly<
  Record<"+" | "-" | "*" | "/", (whole: Interval, left: Interval, right: Interval) => Parts>
> = {
  "+": (whole, left, right) => [difference(whole, right), difference(whole, left)],
  "-": (whole, left, right) => [sum(whole, right), difference(left, whole)],
  "*": (whole, left, right) => [otherFactor(whole, right), otherFactor(whole, left)],
  "/": (whole, left, right) => [product(whole, right), otherFactor(left, whole)],
};
