/** The direction words of a metric, and the metric that a part of the text is about. */
import type { AstNode } from "langium";
import { once } from "../../shared/once.ts";
import type { Direction as DirectionModel } from "../../shared/plan-model.ts";
import {
  CategoryTest,
  ChangeCriterion,
  type Direction,
  isHandedDirection,
  isNegative,
  isPositive,
  Metric,
  MetricColumn,
  NumberTest,
  StatisticCriterion,
  Uncertainty,
  Usual,
} from "../generated/tree/ast.ts";

/** The declarations of a metric's direction words; empty for a metric without sides. */
export const directionsOf = once((metric: Metric): readonly Direction[] =>
  metric.statements.flatMap((statement) =>
    isPositive(statement) || isNegative(statement) ? statement.words : [],
  ),
);

/** A word for each side of a metric, the positive one first: the one that mirrors with the hand, where there is one. */
export function sideWords(metric: Metric): string[] {
  const sides = [metric.statements.filter(isPositive), metric.statements.filter(isNegative)];
  return sides.flatMap((side) => {
    const words = side.flatMap((statement) => statement.words);
    const word = words.find(isHandedDirection) ?? words[0];
    return word === undefined ? [] : [word.name];
  });
}

/** What a direction word means. */
export function directionModel(direction: Direction): DirectionModel {
  const sign = isPositive(direction.$container) ? 1 : -1;
  return { word: direction.name, sign, handed: isHandedDirection(direction) };
}

/**
 * The metric whose amounts and names are written at this place: in a test, a criterion, a column, what is usual of a
 * player or an instrument, or the metric's own declaration.
 */
export function metricAt(node: AstNode): Metric | undefined {
  for (let at: AstNode | undefined = node; at !== undefined; at = at.$container) {
    if (isAboutMetric(at)) return at.metric?.ref;
    if (at.$type === Metric.$type) return at as Metric;
  }
  return undefined;
}

type AboutMetric =
  | NumberTest
  | CategoryTest
  | StatisticCriterion
  | ChangeCriterion
  | MetricColumn
  | Usual
  | Uncertainty;

/** As a set, since this is asked of every part of a text and of all that is around it. */
const ABOUT_METRIC: ReadonlySet<string> = new Set<AboutMetric["$type"]>([
  NumberTest.$type,
  CategoryTest.$type,
  StatisticCriterion.$type,
  ChangeCriterion.$type,
  MetricColumn.$type,
  Usual.$type,
  Uncertainty.$type,
]);

function isAboutMetric(node: AstNode): node is AboutMetric {
  return ABOUT_METRIC.has(node.$type);
}
