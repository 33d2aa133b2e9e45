/** Conditions held against shots, and conditions in words. */
import { intervalOf, unitOf } from "../../shared/interval.ts";
import type { Bounds, Condition, Hand, ShotTest, Subject } from "../../shared/plan-model.ts";
import { writeBounds } from "../../shared/quantity.ts";
import { type Interval, isInside, slackOf } from "../../shared/statistics/interval.ts";
import { allOf, anyOf, type Truth } from "./verdict.ts";

/** One shot's readings by metric, SI and target frame. What is missing is unknown. */
export type Readings = Readonly<Record<string, number>>;

/** A condition with the player's hand settled, to be asked shot by shot. */
export type ShotQuestion = (readings: Readings) => Truth;

/** The numbers that meet bounds, and the slack to compare with: see `shared/statistics/interval.ts`. */
export interface Claim {
  readonly interval: Interval;
  readonly slack: number;
}

/**
 * What bounds claim of a number, for a player of this hand. `isInside` with this interval and slack counts a value at
 * a limit as inside; a limit that does not belong to its bounds (`below`, `above`) is therefore moved inwards by twice
 * the slack, and a value within the slack of it is outside.
 */
export function claimOf(bounds: Bounds, hand: Hand): Claim {
  const { low, high, lowOpen, highOpen } = intervalOf(bounds, hand);
  const slack = slackOf(unitOf(bounds).factor);
  const interval = { low: lowOpen ? low + 2 * slack : low, high: highOpen ? high - 2 * slack : high };
  return { interval, slack };
}

/** Makes a condition ready to be asked of many shots. Unknown readings give an unknown answer where they matter. */
export function questionOf(condition: Condition, hand: Hand): ShotQuestion {
  const alternatives = condition.anyOf.map(({ allOf }) => allOf.map((test) => testQuestion(test, hand)));
  return (readings) => anyOf(alternatives.map((tests) => allOf(tests.map((test) => test(readings)))));
}

/** Whether one shot meets a condition. */
export function meets(condition: Condition, readings: Readings, hand: Hand): Truth {
  return questionOf(condition, hand)(readings);
}

function testQuestion({ metric, bounds }: ShotTest, hand: Hand): ShotQuestion {
  const { interval, slack } = claimOf(bounds, hand);
  return (readings) => {
    const value = reading(readings, metric);
    return value === undefined ? undefined : isInside(value, interval, slack);
  };
}

/** A shot's reading of a metric; undefined where there is none, or none that is a number. */
export function reading(readings: Readings, metric: string): number | undefined {
  const value = readings[metric];
  return Number.isFinite(value) ? value : undefined;
}

/** A condition as a plan says it: `club-path within ±2° and carry at least 150 yd or …`. */
export function writeCondition(condition: Condition): string {
  return condition.anyOf
    .map(({ allOf }) => allOf.map(({ metric, bounds }) => `${metric} ${writeBounds(bounds)}`).join(" and "))
    .join(" or ");
}

/** The metrics a condition asks about, each once. */
export function metricsIn(condition: Condition): readonly string[] {
  return [...new Set(condition.anyOf.flatMap(({ allOf }) => allOf.map(({ metric }) => metric)))];
}

/** The metrics a subject names itself; those of `on target` are the targets'. */
export function metricsOfSubject(subject: Subject): readonly string[] {
  return subject.kind === "meeting" ? metricsIn(subject.condition) : [];
}
