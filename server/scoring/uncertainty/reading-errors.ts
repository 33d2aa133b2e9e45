/** How far the readings of a shot may be off, from what is stated of the instrument. */
import { type Readings, reading } from "../../../language/criteria/condition.ts";
import type { Expression, Instrument, Metric } from "../../../shared/plan-model.ts";
import { statedFor } from "../../../shared/stated-uncertainty.ts";

/**
 * The errors of one reading, SI. `shared` has what each systematic error adds to it, with its sign, for one standard
 * deviation of the error: by the metric that the error belongs to, the same for all shots of a session.
 */
export interface ReadingErrors {
  readonly random: number;
  readonly shared: ReadonlyMap<string, number>;
}

/** The errors of a shot's reading of a metric; null where nothing is known of them. */
export type ErrorsOf = (metric: string, shot: Readings) => ReadingErrors | null;

export const EXACT: ErrorsOf = () => null;

/**
 * What is stated of a metric counts, with the shot's club first, then of any club. Of a metric of which nothing is stated
 * and that follows from others by a formula, the errors follow too: exactly for sums and differences, to first order for
 * products and quotients (JCGM 100, 5.1.2). The random errors of two metrics are taken as independent; a systematic error
 * that goes into a formula twice is one and the same.
 */
export function readingErrors(instrument: Instrument, vocabulary: ReadonlyMap<string, Metric>): ErrorsOf {
  const stated = Map.groupBy(instrument.uncertainties, ({ metric }) => metric);
  const statedOf = (metric: string, club: string | null) => statedFor(club, stated.get(metric) ?? []);

  /** How a small change of each metric that something is stated of changes this one. */
  const slopes = (metric: string, shot: Readings, above: readonly string[]): Slopes => {
    if (statedOf(metric, shot.club) !== undefined) return new Map([[metric, 1]]);
    const formula = vocabulary.get(metric)?.formula ?? null;
    return formula === null || above.includes(metric) ? NONE : slopesOf(formula, shot, [...above, metric]);
  };
  const slopesOf = (expression: Expression, shot: Readings, above: readonly string[]): Slopes => {
    if (expression.kind === "number") return NONE;
    if (expression.kind === "metric") return slopes(expression.name, shot, above);
    const left = slopesOf(expression.left, shot, above);
    const right = slopesOf(expression.right, shot, above);
    const [x, y] = [numberOf(expression.left, shot), numberOf(expression.right, shot)];
    switch (expression.operator) {
      case "+":
        return sum(left, 1, right, 1);
      case "-":
        return sum(left, 1, right, -1);
      case "*":
        return sum(left, y, right, x);
      case "/":
        return sum(left, 1 / y, right, -x / (y * y));
    }
  };

  return (metric, shot) => {
    let variance = 0;
    const shared = new Map<string, number>();
    for (const [source, slope] of slopes(metric, shot, [])) {
      const line = statedOf(source, shot.club);
      if (line === undefined) continue;
      if (!Number.isFinite(slope)) return null; // an operand of this shot is missing
      variance += slope * slope * line.random * line.random;
      if (slope * line.systematic !== 0) shared.set(source, slope * line.systematic);
    }
    return variance === 0 && shared.size === 0 ? null : { random: Math.sqrt(variance), shared };
  };
}

type Slopes = ReadonlyMap<string, number>;
const NONE: Slopes = new Map();

/** a·left + b·right. A factor that is not known matters only where there is something to multiply. */
function sum(left: Slopes, a: number, right: Slopes, b: number): Slopes {
  const total = new Map<string, number>();
  for (const [metric, slope] of left) total.set(metric, a * slope);
  for (const [metric, slope] of right) total.set(metric, (total.get(metric) ?? 0) + b * slope);
  return total;
}

/** Not a number where a reading is missing. */
function numberOf(expression: Expression, shot: Readings): number {
  switch (expression.kind) {
    case "number":
      return expression.value;
    case "metric":
      return reading(shot.values, expression.name) ?? Number.NaN;
    case "operation":
      return OPERATIONS[expression.operator](
        numberOf(expression.left, shot),
        numberOf(expression.right, shot),
      );
  }
}

const OPERATIONS: Record<"+" | "-" | "*" | "/", (left: number, right: number) => number> = {
  "+": (left, right) => left + right,
  "-": (left, right) => left - right,
  "*": (left, right) => left * right,
  "/": (left, right) => left / right,
};

/** All errors of a reading together, as one standard uncertainty. */
export function totalUncertainty({ random, shared }: ReadingErrors): number {
  return Math.sqrt(random * random + systematicVariance(shared));
}

/** The part that all readings share. */
export function systematicUncertainty({ shared }: ReadingErrors): number {
  return Math.sqrt(systematicVariance(shared));
}

function systematicVariance(shared: ReadingErrors["shared"]): number {
  let total = 0;
  for (const slope of shared.values()) total += slope * slope;
  return total;
}
