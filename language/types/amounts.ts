/** What an amount in the text is an amount of. */
import { type AstNode, AstUtils } from "langium";
import {
  AirPressure,
  AirTemperature,
  Altitude,
  type ChangeCriterion,
  type Dimension,
  type EllipseCriterion,
  isMove,
  isMovement,
  isQuantity,
  isSpan,
  isSummary,
  type Metric,
  type MetricColumn,
  type Parameter,
  PlanTime,
  type Quantity,
  type Range,
  Review,
  type ShownIn,
  type StatisticCriterion,
  type UnitName,
  WindPart,
} from "../generated/tree/ast.ts";
import { combine, type DimensionVector, isPlainNumber, sameDimension, vectorOf } from "./dimensions.ts";
import { directionsOf, metricAt } from "./directions.ts";
import { parameterOf } from "./parameters.ts";
import { dimensionOfUnit, primarySymbol, shownIn, TIME, unitSymbols } from "./units.ts";

/**
 * A `place` on the metric's scale has a direction where the metric has sides; a `width` (a tolerance, a spread, a change)
 * has none; a `share` may be in % besides; an `operand` stands in a formula; an `argument` is what a parameter stands for;
 * of a `circumstance`, such as the time of a plan or the wind, the language itself says what it is.
 */
export type AmountRole = "place" | "width" | "circumstance" | "argument" | "operand";

export function roleOf(quantity: Quantity): AmountRole {
  const around = quantity.$container;
  if (isCircumstance(around)) return "circumstance";
  switch (around.$type) {
    case "AmountValue":
      return "argument";
    case "QuantityOperand":
      return "operand";
    case "Fall":
    case "Gain":
    case "Stay":
    case "UncertaintyPart":
      return "width";
    case "Move":
    case "Plausible":
      return "place";
    case "Usual":
      return around.spread === quantity ? "width" : "place";
    case "Within":
      return around.tolerance === quantity ? "width" : roleOfLimit(around);
    default:
      return roleOfLimit(around);
  }
}

/** The role of the amounts that a range ends at. */
function roleOfLimit({ $container: limited }: Range): AmountRole {
  if (limited.$type === "EllipseCriterion") return "width";
  return limited.$type === "StatisticCriterion" && isWidth(limited.statistic) ? "width" : "place";
}

/** Whether a statistic of a metric is an amount without a side. */
export function isWidth(statistic: StatisticCriterion["statistic"] | ChangeCriterion["statistic"]): boolean {
  return isSpan(statistic) || (isSummary(statistic) && statistic.name === "spread");
}

/** Whether a change may also be stated in % of what there was. */
export function mayBeShare(quantity: Quantity): boolean {
  return isMovement(quantity.$container) && !isMove(quantity.$container);
}

/** Whether readings of a metric go two ways from zero. */
export function hasSides(metric: Metric): boolean {
  return directionsOf(metric).length > 0;
}

/** What is measured at a place of the text, and in what it is best written. */
export interface Measure {
  /** The metric; undefined where the amount is not one of a metric. */
  readonly metric: Metric | undefined;
  readonly dimension: MeasuredDimension;
  /** The symbol of the unit to write; empty for a plain number. */
  readonly unit: string;
}

export interface MeasuredDimension {
  readonly name: string;
  readonly vector: DimensionVector;
}

const DURATION = { name: TIME, vector: new Map([[TIME, 1]]) };
const LENGTH = { name: "length", vector: new Map([["length", 1]]) };

/** Amounts that are not those of a metric, by the statement they stand in. */
const CIRCUMSTANCES = {
  [PlanTime.$type]: { metric: undefined, dimension: DURATION, unit: "min" },
  [Review.$type]: { metric: undefined, dimension: DURATION, unit: "d" },
  [WindPart.$type]: {
    metric: undefined,
    dimension: { name: "speed", vector: combine(LENGTH.vector, DURATION.vector, -1) },
    unit: "m/s",
  },
  [AirTemperature.$type]: {
    metric: undefined,
    dimension: { name: "air-temperature", vector: new Map([["air-temperature", 1]]) },
    unit: "°C",
  },
  [AirPressure.$type]: {
    metric: undefined,
    dimension: { name: "air-pressure", vector: new Map([["air-pressure", 1]]) },
    unit: "hPa",
  },
  [Altitude.$type]: { metric: undefined, dimension: LENGTH, unit: "m" },
} satisfies Readonly<Record<string, Measure>>;

type Around = Quantity["$container"];
type Circumstance = Extract<Around, { readonly $type: keyof typeof CIRCUMSTANCES }>;

function isCircumstance(around: Around): around is Circumstance {
  return around.$type in CIRCUMSTANCES;
}

/** What is measured here; undefined in a formula, and where the metric, its dimension or a unit of it is not known. */
export function measureAt(node: Quantity | MetricColumn | ShownIn): Measure | undefined {
  if (node.$type !== "Quantity") return measureOfMetricAt(node);
  const around = node.$container;
  switch (roleOf(node)) {
    case "circumstance":
      return isCircumstance(around) ? CIRCUMSTANCES[around.$type] : undefined;
    case "argument":
      return measureOfParameter(around);
    case "operand":
      return undefined;
    default: {
      const limited = around.$container;
      return limited.$type === "EllipseCriterion" ? measureOfEllipse(limited) : measureOfMetricAt(node);
    }
  }
}

function measureOfMetricAt(node: AstNode): Measure | undefined {
  const metric = knownMetricAt(node);
  return metric === undefined ? undefined : measureOf(metric);
}

function measureOfParameter(node: AstNode): Measure | undefined {
  const parameter = parameterOf(node);
  const dimension = parameter?.dimension?.ref;
  if (parameter === undefined || dimension === undefined) return undefined;
  if (!hasUnit(dimension)) return undefined;
  return new LateMeasure(undefined, dimension, () =>
    isPlainNumber(dimension) ? "" : (unitWhereItStands(parameter) ?? unitSymbols(dimension)[0]),
  );
}

/** The unit in which amounts are best written at a place in the drill where the parameter stands. */
function unitWhereItStands(parameter: Parameter): string | undefined {
  for (const quantity of AstUtils.streamAst(parameter.$container).filter(isQuantity)) {
    if (quantity.parameter?.ref === parameter) return measureAt(quantity)?.unit;
  }
  return undefined;
}

/** An axis is as long as its first metric; an area is the product of both. */
function measureOfEllipse({ measure, first, second }: EllipseCriterion): Measure | undefined {
  const along = first?.ref && measureOf(first.ref);
  const across = second?.ref && measureOf(second.ref);
  if (along === undefined || across === undefined) return undefined;
  if (measure !== "area") return along;
  const vector = combine(along.dimension.vector, across.dimension.vector, 1);
  const name =
    along.dimension.name === "length" && across.dimension.name === "length" ? "ground-area" : "product";
  return { metric: undefined, dimension: { name, vector }, unit: name === "ground-area" ? "yd²" : "" };
}

/** What a metric measures; undefined where that is not known. */
export function measureOf(metric: Metric): Measure | undefined {
  const dimension = metric.dimension?.ref;
  if (dimension === undefined || !hasUnit(dimension)) return undefined;
  return new LateMeasure(metric, dimension, () => unitToWrite(metric));
}

/** Works out what hardly anybody asks for when it is asked for: every amount of a text is measured. */
class LateMeasure implements Measure {
  readonly metric: Metric | undefined;
  readonly dimension: DeclaredDimension;
  private readonly findUnit: () => string | undefined;

  constructor(metric: Metric | undefined, dimension: Dimension, findUnit: () => string | undefined) {
    this.metric = metric;
    this.dimension = new DeclaredDimension(dimension);
    this.findUnit = findUnit;
  }

  get unit(): string {
    return this.findUnit() ?? "";
  }
}

class DeclaredDimension implements MeasuredDimension {
  readonly node: Dimension;

  constructor(node: Dimension) {
    this.node = node;
  }

  get name(): string {
    return this.node.name;
  }

  get vector(): DimensionVector {
    return vectorOf(this.node);
  }
}

/** Whether amounts of a dimension can be written. */
function hasUnit(dimension: Dimension): boolean {
  return isPlainNumber(dimension) || dimension.units.some((unit) => primarySymbol(unit) !== "");
}

/**
 * The unit in which amounts of this metric are best written: the one it is shown in, or else the first of its dimension;
 * empty for a plain number, undefined where nothing is known.
 */
export function unitToWrite(metric: Metric): string | undefined {
  const dimension = metric.dimension?.ref;
  if (dimension === undefined) return undefined;
  const { symbol } = shownIn(metric).unit;
  const symbols = unitSymbols(dimension);
  if (symbol === "" ? isPlainNumber(dimension) : symbols.includes(symbol)) return symbol;
  return isPlainNumber(dimension) ? "" : symbols[0];
}

/** Whether a unit is one of this dimension. */
export function unitFits(unit: UnitName, measured: MeasuredDimension): boolean {
  const its = dimensionOfUnit(unit);
  if (measured instanceof DeclaredDimension && measured.node === its) return true;
  return sameDimension(vectorOf(its), measured.vector);
}

/** The metric whose amounts stand here, where it is known and so is its dimension. */
export function knownMetricAt(node: AstNode): Metric | undefined {
  const metric = metricAt(node);
  return metric?.dimension?.ref === undefined ? undefined : metric;
}
