/** What metrics, units, direction words, clubs and dimensions are, for hovers. */
import { AstUtils } from "langium";
import {
  type Club,
  type Dimension,
  type Direction,
  isFormula,
  isFrameDirection,
  isHandedDirection,
  isMetric,
  isNegative,
  isPlausible,
  isPositive,
  isShownIn,
  type Metric,
  type UnitName,
} from "../../generated/tree/ast.ts";
import { directionsOf } from "../../types/directions.ts";
import { dimensionOfUnit, factorOf, primarySymbol } from "../../types/units.ts";
import { code, declared, inWords, list, paragraphs, written } from "./markdown.ts";

export function describeMetric(metric: Metric, documentation: string | undefined): string {
  const { statements } = metric;
  const plausible = statements.find(isPlausible);
  const formula = statements.find(isFormula);
  const shown = statements.find(isShownIn);
  return paragraphs(
    declared(`metric ${metric.name} is ${metric.dimension?.$refText ?? "?"}`),
    documentation,
    list([
      ...directionsOf(metric).map((word) => `${code(word.name)}: ${meaningOf(word)}`),
      shown && `shown in ${shown.unit?.$refText ?? "plain numbers"}, to ${shown.step}`,
      plausible && `plausible from ${written(plausible.low)} to ${written(plausible.high)}`,
      formula && `follows from ${code(written(formula.expression))} where the table does not hold it`,
    ]),
  );
}

export function describeDirection(word: Direction, _documentation: string | undefined): string {
  const metric = AstUtils.getContainerOfType(word, isMetric);
  return paragraphs(
    declared(`${word.name} // of ${metric?.name ?? "a metric"}`),
    `${sentence(meaningOf(word))}`,
  );
}

/** Which side a word means, and for whom: `right for a right-hander, left for a left-hander`. */
export function meaningOf(word: Direction): string {
  const side = isPositive(word.$container) ? "positive" : "negative";
  if (!isHandedDirection(word)) return `the ${side} side, for every player`;
  const other = side === "positive" ? "negative" : "positive";
  return `${sideName(word, side)} for a right-hander, ${sideName(word, other)} for a left-hander`;
}

/** The word that names a side for every player, where the metric has one. */
function sideName(word: Direction, side: "positive" | "negative"): string {
  const metric = AstUtils.getContainerOfType(word, isMetric);
  const isOfSide = (other: Direction) =>
    side === "positive" ? isPositive(other.$container) : isNegative(other.$container);
  const words = metric === undefined ? [] : directionsOf(metric);
  return words.find((other) => isFrameDirection(other) && isOfSide(other))?.name ?? `the ${side} side`;
}

export function describeUnit(name: UnitName, _documentation: string | undefined): string {
  const unit = name.$container;
  const dimension = dimensionOfUnit(name);
  const spellings = unit.names.map((other) => other.name).filter((other) => other !== name.name);
  return paragraphs(
    declared(`unit ${name.name} // of ${dimension.name}`),
    sentence(worthOf(name)),
    spellings.length > 0 ? `Also written ${inWords(spellings.map(code))}.` : undefined,
  );
}

/** What one of a unit is worth in the SI unit of its dimension: `1 yd is 0.9144 m`. */
export function worthOf(name: UnitName): string {
  const [si] = dimensionOfUnit(name).units;
  if (si === undefined || name.$container === si) return `the SI unit of ${dimensionOfUnit(name).name}`;
  const factor = Number(factorOf(name.$container).toPrecision(10));
  return `${amount(1, name.name)} is ${amount(factor, primarySymbol(si))}`;
}

function amount(value: number, unit: string): string {
  return unit === "" || unit.startsWith("°") ? `${value}${unit}` : `${value} ${unit}`;
}

export function describeClub(club: Club, documentation: string | undefined): string {
  return paragraphs(
    declared(`club ${club.name}`),
    documentation,
    club.spellings.length > 0 ? `Tables also spell it ${inWords(club.spellings.map(code))}.` : undefined,
  );
}

export function describeDimension(dimension: Dimension, documentation: string | undefined): string {
  const { left, operator, right } = dimension;
  const made = left && right ? ` = ${left.$refText} ${operator} ${right.$refText}` : "";
  const units = dimension.units.map(primarySymbol).filter((symbol) => symbol !== "");
  return paragraphs(
    declared(`dimension ${dimension.name}${made}`),
    documentation,
    units.length > 0 ? `Units: ${inWords(units.map(code))}.` : undefined,
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
