/** Numbers as people read them: in a unit, sensibly rounded, with the direction word of the player's hand. */
import { signOf } from "./interval.ts";
import type { Amount, Bounds, Direction, Hand, Metric, Unit } from "./plan-model.ts";

/**
 * A number in SI, written in `unit` with the decimals that a step of that size needs: 0.0349 rad → `2.0°`.
 * The degree and percent signs stand as typography has them: `2°`, `70 %`.
 */
export function formatNumber(value: number, unit: Unit, step: number): string {
  const rounded = stepsTo(value, unit, step) * step;
  const sign = value < 0 && rounded > 0 ? "−" : "";
  const number = sign + rounded.toFixed(decimalsOf(step));
  return number + unitSuffix(unit);
}

/** How far a binary fraction may fall short of the half that it stands for, in steps. */
const SHORT_OF_HALF = 1e-9;

/**
 * How many steps there are from zero to a value, rounded. Halves go away from zero, so that mirror images are shown with
 * the same digits, and the same shots in any order are: an average of 0.25° is often a little less in binary.
 */
function stepsTo(value: number, unit: Unit, step: number): number {
  return Math.round(Math.abs(value) / unit.factor / step + SHORT_OF_HALF);
}

/** Decimals a step needs: 0.1 → 1, 0.25 → 2, 10 → 0. */
function decimalsOf(step: number): number {
  const text = String(step);
  const point = text.indexOf(".");
  return point < 0 ? 0 : text.length - point - 1;
}

/** A unit as it stands behind a number: nothing for the unit one. */
export function unitSuffix({ symbol }: Pick<Unit, "symbol">): string {
  if (symbol === "") return "";
  return touchesNumber(symbol) ? symbol : ` ${symbol}`;
}

/** Whether a unit stands without a space behind its number, as degrees of angle do (and °C does not: ISO 80000-1). */
export function touchesNumber(symbol: string): boolean {
  return /^°(?!\p{L})/u.test(symbol);
}

/**
 * A reading of a metric, SI and target frame, as this player would hear it: `2.4° in-to-out`, `12 yd left`, `96.1 mph`.
 * The word a hand gives a side is preferred to the plain one. `unit` is the one to show; the metric's own by default.
 */
export function formatReading(value: number, metric: Metric, hand: Hand, unit: Unit = metric.unit): string {
  const step = stepIn(unit, metric);
  if (metric.directions.length === 0) return formatNumber(value, unit, step);
  const text = formatNumber(Math.abs(value), unit, step);
  const sign = value < 0 ? -1 : 1;
  const word = isShownAsZero(value, unit, step) ? undefined : wordFor(sign, metric.directions, hand);
  return word === undefined ? text : `${text} ${word}`;
}

/**
 * From one reading to another as this player would hear it: `0.6° left to 1.2° right`. On one side its word is said once
 * and the smaller amount comes first: `1.6° to 2.4° out-to-in`.
 */
export function formatRange(
  low: number,
  high: number,
  metric: Metric,
  hand: Hand,
  unit: Unit = metric.unit,
): string {
  const isOneSided = metric.directions.length > 0 && (low >= 0 || high <= 0 || isZero(low) || isZero(high));
  const [from, to] = isOneSided && Math.abs(high) < Math.abs(low) ? [high, low] : [low, high];
  const first = isOneSided
    ? formatAmount(Math.abs(from), metric, unit)
    : formatReading(from, metric, hand, unit);
  return `${first} to ${formatReading(to, metric, hand, unit)}`;

  function isZero(value: number): boolean {
    return isShownAsZero(value, unit, stepIn(unit, metric));
  }
}

function isShownAsZero(value: number, unit: Unit, step: number): boolean {
  return stepsTo(value, unit, step) === 0;
}

/** An amount without a side (a spread, a tolerance) of this metric. */
export function formatAmount(value: number, metric: Metric, unit: Unit = metric.unit): string {
  return formatNumber(value, unit, stepIn(unit, metric));
}

/** The metric shown one digit finer than its readings, as a statistic may have to be. */
export function finer(metric: Metric): Metric {
  return { ...metric, step: Number((metric.step / 10).toPrecision(3)) };
}

/** The metric's step, or the power of ten nearest to it where another unit is shown. */
function stepIn(unit: Unit, metric: Metric): number {
  if (unit.factor === metric.unit.factor) return metric.step;
  const exponent = Math.round(Math.log10((metric.step * metric.unit.factor) / unit.factor));
  return Number(`1e${exponent}`);
}

/** The word for a side (+1 or -1 in the target frame) as a player of this hand says it. */
export function wordFor(sign: 1 | -1, directions: readonly Direction[], hand: Hand): string | undefined {
  const matching = directions.filter((direction) => signOf(direction, hand) === sign);
  return (matching.find((direction) => direction.handed) ?? matching[0])?.word;
}

/** An amount as it was written: `2° in-to-out`. */
export function writeAmount(amount: Amount): string {
  const number = trimmed(amount.value / amount.unit.factor) + unitSuffix(amount.unit);
  return amount.direction === null ? number : `${number} ${amount.direction.word}`;
}

/** Bounds as they are written in a plan: `within 2° of 1° in-to-out`, `within ±2°`, `within 5 yd`. */
export function writeBounds(bounds: Bounds): string {
  switch (bounds.kind) {
    case "within": {
      const tolerance = `within ${bounds.plusMinus ? "±" : ""}${writeAmount(bounds.tolerance)}`;
      return bounds.centre.value === 0 ? tolerance : `${tolerance} of ${writeAmount(bounds.centre)}`;
    }
    case "between":
      return `between ${writeAmount(bounds.one)} and ${writeAmount(bounds.other)}`;
    default:
      return `${bounds.kind} ${writeAmount(bounds.limit)}`;
  }
}

/** Up to ten significant digits, so that 2° in radians and back is 2 again. */
function trimmed(value: number): string {
  return String(Number(value.toPrecision(10)));
}
