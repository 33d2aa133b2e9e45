/** Where a player stands at a step of a curriculum. */
import type { Verdict } from "./score-report.ts";

/**
 * - `met`: every goal of the plan was met in a session. A plan without goals is met when it was practised.
 * - `due`: it was met, and a review is due.
 * - `current`: it is open and not met yet.
 * - `closed`: its gates do not hold yet.
 */
export type StepState = "met" | "due" | "current" | "closed";

/** Days are year-month-day. */
export interface Standing {
  readonly state: StepState;
  /** The first day it was met; null where it was not, or where no session that met it states its date. */
  readonly metOn: string | null;
  /** The first review that is not done yet; null where there is none, or no day to count it from. */
  readonly review: string | null;
  /** The gates that keep the step closed. */
  readonly waitsFor: readonly WaitingGate[];
  /** How many sessions of the plan there are, and how many of them could not be scored: they may have shown anything. */
  readonly sessions: number;
  readonly unscored: number;
  /** How all goals together came out in the last session that was scored; null where there is none, or no goal. */
  readonly latest: Verdict | null;
}

export interface WaitingGate {
  readonly plan: string;
  /** Null: every goal of the plan. */
  readonly block: string | null;
  /** In how many sessions it must have been met, and was. */
  readonly times: number;
  readonly met: number;
}
