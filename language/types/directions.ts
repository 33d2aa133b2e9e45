/** The direction words of a metric, and the metric that a part of the text is about. */
import type { AstNode } from "langium";
import type { Direction as DirectionModel } from "../../shared/plan-model.ts";
import {
  type Direction,
  isHandedDirection,
  isMetric,
  isMetricColumn,
  isNegative,
  isPositive,
  isShotTest,
  isStatisticCriterion,
  type Metric,
} from "../generated/tree/ast.ts";

/** The declarations of a metric's direction words; empty for a metric without sides. */
export function directionsOf(metric: Metric): Direction[] {
  return metric.statements.flatMap((statement) =>
    isPositive(statement) || isNegative(statement) ? statement.words : [],
  );
}

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

/** The metric whose amounts are written at this place: in a test, a statistic, a column or the metric's own declaration. */
export function metricAt(node: AstNode): Metric | undefined {
  for (let at: AstNode | undefined = node; at !== undefined; at = at.$container) {
    if (isShotTest(at) || isStatisticCriterion(at) || isMetricColumn(at)) return at.metric?.ref;
    if (isMetric(at)) return at;
  }
  return undefined;
}
