/**
 * One shot whose readings may be off, held against limits: the limits cut the values of every uncertain metric into parts,
 * and in each combination of parts, a cell, the answer is one and the same.
 */
import type { Readings } from "../../../language/criteria/condition.ts";
import type { Truth } from "../../../language/criteria/verdict.ts";
import { normalCdf } from "../../../shared/statistics/distributions.ts";
import type { ReadingErrors } from "./reading-errors.ts";

/** An uncertain reading of a shot, and the limits that it is held against, the smallest first. */
export interface UncertainReading {
  /** The metrics that this is the reading of: one, and those that are only other names for it. */
  readonly metrics: readonly string[];
  readonly value: number;
  readonly errors: ReadingErrors;
  readonly limits: readonly number[];
}

/** A shot, its answer in each cell; the last of the readings runs fastest. */
export interface UncertainShot {
  readonly readings: readonly UncertainReading[];
  readonly answers: readonly Truth[];
}

/** Beyond so many cells a shot is not worked out: nothing is said of it then. */
const MOST_CELLS = 4096;

/** @param question what is asked of the shot, with names computed anew from these readings */
export function uncertainShot(
  shot: Readings,
  readings: readonly UncertainReading[],
  question: (shot: Readings) => Truth,
): UncertainShot {
  const cells = readings.reduce((product, { limits }) => product * (limits.length + 1), 1);
  if (cells > MOST_CELLS) return { readings: [], answers: [undefined] };
  const answers: Truth[] = [];
  const values = { ...shot.values };
  const walk = (place: number): void => {
    const reading = readings[place];
    if (reading === undefined) {
      answers.push(question({ ...shot, values }));
      return;
    }
    for (let part = 0; part <= reading.limits.length; part++) {
      const value = insidePart(reading.limits, part);
      for (const metric of reading.metrics) values[metric] = value;
      walk(place + 1);
    }
  };
  walk(0);
  return { readings, answers };
}

/** A value between the limit before a part and the one after it. */
function insidePart(limits: readonly number[], part: number): number {
  const before = limits[part - 1];
  const after = limits[part];
  if (before === undefined) return (after ?? 0) - 1;
  return after === undefined ? before + 1 : (before + after) / 2;
}

/**
 * The probabilities that the answer is yes, and that it is yes or cannot be told. The random errors of the readings are
 * taken as independent of each other. O(cells).
 *
 * @param centres where each reading is taken to lie, without the errors that all shots share
 * @param deviations the standard deviation of what is left of each
 */
export function chancesOfShot(
  { readings, answers }: UncertainShot,
  centres: readonly number[],
  deviations: readonly number[],
): { readonly certain: number; readonly possible: number } {
  const cells = new Float64Array(answers.length);
  cells[0] = 1;
  let filled = 1;
  for (const [place, { limits }] of readings.entries()) {
    const parts = partProbabilities(limits, centres[place] ?? 0, deviations[place] ?? 0);
    // Each cell is split into as many as the reading has parts, from the last one on, so that none is overwritten unread.
    for (let cell = filled - 1; cell >= 0; cell--) {
      const whole = cells[cell] ?? 0;
      for (let part = 0; part < parts.length; part++) {
        cells[cell * parts.length + part] = whole * (parts[part] ?? 0);
      }
    }
    filled *= parts.length;
  }
  let certain = 0;
  let not = 0;
  for (let cell = 0; cell < filled; cell++) {
    const answer = answers[cell];
    if (answer === true) certain += cells[cell] ?? 0;
    else if (answer === false) not += cells[cell] ?? 0;
  }
  return { certain: Math.min(1, certain), possible: Math.max(0, 1 - not) };
}

function partProbabilities(limits: readonly number[], centre: number, deviation: number): Float64Array {
  const parts = new Float64Array(limits.length + 1);
  let below = 0;
  for (let part = 0; part < limits.length; part++) {
    const limit = limits[part] ?? 0;
    const upTo = deviation === 0 ? Number(centre <= limit) : normalCdf((limit - centre) / deviation);
    parts[part] = upTo - below;
    below = upTo;
  }
  parts[limits.length] = 1 - below;
  return parts;
}
