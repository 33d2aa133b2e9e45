/** How a player's true number is judged from the shots hit. */
import type { Interval } from "../../../../shared/statistics/interval.ts";
import { firstThatDecides, MOST_SHOTS } from "../../../../shared/statistics/shots-to-decide.ts";
import { type LimitsAt, verdictByLimits } from "../../../../shared/statistics/verdict.ts";

/** What is claimed of the true number, and how sure that must be. See `claimOf` for the slack. */
export interface Question {
  readonly claim: Interval;
  readonly confidence: number;
  readonly slack: number;
}

export interface Method {
  /** Limits for the true number, each wrong with probability at most 1 − level; undefined where the shots are too few. */
  readonly limitsAt: LimitsAt;
  /** How limits of this level were found. */
  readonly words: (level: number) => string;
  /** The fewest shots from which the claim can be shown; undefined where none that are tried can. */
  readonly fewest: (question: Question) => number | undefined;
  /**
   * About how many shots in all would decide if the player goes on as observed; undefined where more than are tried would
   * be needed, and what is needed instead, in words, where no number would do.
   */
  readonly shotsToDecide: (question: Question) => number | string | undefined;
  /** What to bear in mind about limits of this level. */
  readonly cautions: (level: number) => readonly string[];
}

/** Whether these limits answer the question. */
export function isDecided(limitsAt: LimitsAt, { claim, confidence, slack }: Question): boolean {
  return verdictByLimits(limitsAt, claim, confidence, slack) !== "undecided";
}

/** How many shots decide if the player goes on as observed: hits these again and again. */
export function byHittingAgain(
  values: readonly number[],
  limitsOf: (values: readonly number[]) => LimitsAt,
): Method["shotsToDecide"] {
  return (question) => {
    const most = Math.floor(MOST_SHOTS / values.length);
    const repeated = (times: number) => Array.from({ length: times }, () => values).flat();
    const times = firstThatDecides(1, most, (number) => isDecided(limitsOf(repeated(number)), question));
    return times === undefined ? undefined : times * values.length;
  };
}
