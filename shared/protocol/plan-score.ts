import type { Range } from "../plan-model.ts";
import type { Verdict } from "../score-report.ts";
import type { Declared } from "./message.ts";
import type { DeclaredAt } from "./project.ts";

/** What a person needs to see of the score of one plan: with which session, and how it came out. */
export interface PlanScore {
  readonly plan: Declared;
  /** Where the plan stands in its document. */
  readonly range: Range;
  /** The session shown on the plan, or one whose own file is open; null where no session practised the plan. */
  readonly session: DeclaredAt | null;
  /** False where the plan is shown with another session than this. */
  readonly shown: boolean;
  /** True where somebody picked the session; false where it is simply the latest. */
  readonly picked: boolean;
  /** All goals of the plan together; null where it sets none, or could not be scored. */
  readonly verdict: Verdict | null;
  /** How many goals came out how. */
  readonly goals: Readonly<Record<Verdict, number>>;
  /** Why the plan could not be scored, and what to do about it, in a sentence; null where it could. */
  readonly problem: string | null;
  /**
   * Where there is a problem: how the session came out before, as `3 goals met · 1 missed`. It is no longer current.
   * Null where the session was never scored while the server ran.
   */
  readonly before: string | null;
}
