/** How metrics hang together: by their formulas, and by the geometry of impact and flight. */
import type { Expression, Metric } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { circles } from "../../types/cycles.ts";
import { type Fact, UNREAD } from "./geometry.ts";

/** The value of an expression lies in a range, whatever the shot. */
export interface Relation {
  readonly expression: Expression;
  /** SI, target frame. */
  readonly range: Interval;
  /** How far readings, which are rounded, may be off it. SI. */
  readonly slack: number;
  /** In words, as the reason in a sentence: "face-to-path is face-angle − club-path". */
  readonly says: string;
  readonly metrics: readonly string[];
}

const EQUAL: Interval = { low: 0, high: 0 };

/** The relations among these metrics: their formulas, and facts. A formula that needs itself says nothing. Linear in both. */
export function relationsAmong(metrics: ReadonlyMap<string, Metric>, facts: readonly Fact[]): Relation[] {
  const circular = circles(metrics.keys(), (name) => {
    const formula = metrics.get(name)?.formula;
    return formula ? metricsOf(formula) : [];
  });
  const formulas = [...metrics.values()].flatMap((metric) =>
    metric.formula === null || circular.has(metric.name) ? [] : [formulaRelation(metric, metric.formula)],
  );
  const geometry = facts.flatMap(({ slackOf, ...relation }) => {
    const names = metricsOf(relation.expression);
    const read = names.filter((name) => !UNREAD.has(name));
    const steps = read.flatMap((name) => stepOf(metrics.get(name)) ?? []);
    return steps.length < read.length ? [] : [{ ...relation, metrics: names, slack: slackOf(steps) }];
  });
  return [...formulas, ...geometry];
}

function formulaRelation(metric: Metric, formula: Expression): Relation {
  const expression: Expression = {
    kind: "operation",
    operator: "-",
    left: formula,
    right: { kind: "metric", name: metric.name },
  };
  return {
    expression,
    range: EQUAL,
    slack: stepOf(metric) ?? 0,
    says: formulaInWords(metric.name, formula),
    metrics: metricsOf(expression),
  };
}

function stepOf(metric: Metric | undefined): number | undefined {
  return metric && metric.step * metric.unit.factor;
}

/** A number in a formula has lost its unit, so that only what it is made of is said. */
function formulaInWords(name: string, formula: Expression): string {
  const written = write(formula);
  return written === undefined
    ? `${name} follows from ${metricsOf(formula).join(" and ")}`
    : `${name} is ${written}`;
}

const SIGNS = { "+": "+", "-": "−", "*": "×", "/": "/" } as const;

function write(expression: Expression): string | undefined {
  if (expression.kind === "number") return undefined;
  if (expression.kind === "metric") return expression.name;
  const left = write(expression.left);
  const right = write(expression.right);
  if (left === undefined || right === undefined) return undefined;
  const bracketed = (text: string, part: Expression) => (part.kind === "operation" ? `(${text})` : text);
  return `${bracketed(left, expression.left)} ${SIGNS[expression.operator]} ${bracketed(right, expression.right)}`;
}

/** Each metric of an expression once. */
export function metricsOf(expression: Expression): string[] {
  const found = new Set<string>();
  const waiting = [expression];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    if (at.kind === "metric") found.add(at.name);
    if (at.kind === "operation") waiting.push(at.right, at.left);
  }
  return [...found];
}
