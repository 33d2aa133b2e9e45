import type { Location } from "../plan-model.ts";
import type { Verdict } from "../score-report.ts";
import type { Declared, RequestMessage } from "./message.ts";

/** Scores one session now, with documents open in the editor as they stand there. Null where there is no such session. */
export const sessionScore: RequestMessage<SessionScoreParams, SessionScore | null> = {
  method: "drillwright/sessionScore",
};

export interface SessionScoreParams {
  readonly session: Declared;
}

export interface SessionScore {
  readonly session: Declared;
  /** Null where the session names none. */
  readonly plan: Declared | null;
  /** All goals together; null where there are none, or the session could not be scored. */
  readonly verdict: Verdict | null;
  /** `3 goals met · 1 missed` */
  readonly summary: string;
  readonly blocks: readonly BlockScore[];
  /** Why the session could not be scored, and what to do about it, in a sentence; null where it could. */
  readonly problem: string | null;
}

export interface BlockScore {
  readonly name: string;
  readonly location: Location;
  /** Null where the block sets no goals. */
  readonly verdict: Verdict | null;
  /** `12 of 18 on target · 2 goals met · 1 undecided` */
  readonly summary: string;
  readonly goals: readonly GoalScore[];
}

export interface GoalScore {
  /** Stable within the plan: the block's name, then the goal's place in the block, from 1. */
  readonly id: string;
  /** As the coach wrote it. */
  readonly text: string;
  readonly location: Location;
  readonly verdict: Verdict;
  readonly required: string;
  readonly observed: string;
  /** What else there is to say, a line each: limits, what would settle it, cautions. */
  readonly details: readonly string[];
  /** The rows that decided, the first of many. */
  readonly rows: readonly { readonly location: Location; readonly text: string }[];
}
