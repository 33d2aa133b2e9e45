/** Conditions in words, and held against shots: shared by whoever names shots by them and whoever judges shots by them. */
import { intervalOf, unitOf } from "./interval.ts";
import type { Bounds, Condition, Hand, ShotTest } from "./plan-model.ts";
import { writeBounds } from "./quantity.ts";
import { type Interval, isInside, slackOf } from "./statistics/interval.ts";
import { allOf, anyOf, not, type Truth } from "./truth.ts";

/** What is known of one shot: readings by metric, SI and target frame, names by metric, the club. What is missing is unknown. */
export interface Readings {
  readonly values: Readonly<Record<string, number>>;
  readonly categories: Readonly<Record<string, string>>;
  readonly club: string | null;
}

/** What conditions need to know of a player: the hand settles direction words, the level the variant of a window. */
export interface PlayerTraits {
  readonly hand: Hand;
  readonly level: string | null;
}

/** A condition with the player settled, to be asked shot by shot. */
export type ShotQuestion = (readings: Readings) => Truth;

/** The numbers that meet bounds, and the slack to compare with: see `statistics/interval.ts`. */
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
export function questionOf(condition: Condition, player: PlayerTraits): ShotQuestion {
  const alternatives = condition.anyOf.map(({ allOf: tests }) =>
    joined(
      allOf,
      tests.map((test) => testQuestion(test, player)),
    ),
  );
  return joined(anyOf, alternatives);
}

/** One question of several. Of one it is that one: most conditions are a single test, asked of every shot. */
function joined(join: typeof allOf, questions: readonly ShotQuestion[]): ShotQuestion {
  const [only, another] = questions;
  if (only !== undefined && another === undefined) return only;
  return (readings) => join(questions.map((question) => question(readings)));
}

/** Whether one shot meets a condition. */
export function meets(condition: Condition, readings: Readings, player: PlayerTraits): Truth {
  return questionOf(condition, player)(readings);
}

function testQuestion(test: ShotTest, player: PlayerTraits): ShotQuestion {
  switch (test.kind) {
    case "number": {
      const { interval, slack } = claimOf(test.bounds, player.hand);
      return ({ values }) => {
        const value = reading(values, test.metric);
        return value === undefined ? undefined : isInside(value, interval, slack);
      };
    }
    case "category":
      return ({ categories }) => {
        const name = categories[test.metric];
        return name === undefined ? undefined : test.categories.includes(name);
      };
    case "window":
      return windowQuestion(test, player);
  }
}

/** The variant that fits the shot's club decides; where none fits, or the club is unknown and matters, nothing is known. */
function windowQuestion(
  { variants, inside }: Extract<ShotTest, { kind: "window" }>,
  player: PlayerTraits,
): ShotQuestion {
  const fitting = variants
    .filter(({ level }) => level === null || level === player.level)
    .map(({ clubs, condition }) => ({ clubs, isInside: questionOf(condition, player) }));
  return (readings) => {
    const { club } = readings;
    for (const { clubs, isInside } of fitting) {
      if (clubs.length > 0 && club === null) return undefined;
      if (clubs.length > 0 && !clubs.includes(club ?? "")) continue;
      const truth = isInside(readings);
      return inside ? truth : not(truth);
    }
    return undefined;
  };
}

/** A shot's reading of a metric; undefined where there is none, or none that is a number. */
export function reading(values: Readings["values"], metric: string): number | undefined {
  const value = values[metric];
  return Number.isFinite(value) ? value : undefined;
}

/** A condition as a plan says it: `club-path within ±2° and carry at least 150 yd or …`. */
export function writeCondition(condition: Condition): string {
  return condition.anyOf.map(({ allOf }) => allOf.map(writeTest).join(" and ")).join(" or ");
}

function writeTest(test: ShotTest): string {
  switch (test.kind) {
    case "number":
      return `${test.metric} ${writeBounds(test.bounds)}`;
    case "category":
      return `${test.metric} is ${test.categories.join(" or ")}`;
    case "window":
      return `${test.inside ? "inside" : "outside"} ${JSON.stringify(test.window)}`;
  }
}
