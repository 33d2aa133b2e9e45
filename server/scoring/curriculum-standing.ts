/** Where the players of a curriculum stand, after the sessions that were scored. */
import type { Standing, StepState, WaitingGate } from "../../shared/curriculum-standing.ts";
import type { Curriculum, CurriculumStep } from "../../shared/plan-model.ts";
import type { BlockResult, ScoreReport } from "../../shared/score-report.ts";

/** A session of one of the plans, and how it came out. */
export interface Practised<Player> {
  readonly player: Player;
  readonly plan: string;
  /** Year-month-day, or null where the session states none. */
  readonly date: string | null;
  /** Null where the session could not be scored. */
  readonly outcome: Outcome | null;
}

/** What counts of a score report. */
export interface Outcome extends Pick<ScoreReport, "verdict"> {
  readonly blocks: readonly Pick<BlockResult, "name" | "verdict">[];
}

/**
 * The standing of every player who practised a plan of the curriculum, at each of its steps.
 *
 * A review that falls on a day is done by a session of that day or later in which the step is met again: until then it
 * stays due, however the sessions in between came out. Reviews are counted from the first day the step was met.
 *
 * @param today year-month-day.
 * @returns in the order of the steps, then of the players as they first appear among the sessions. Linear in steps times
 *   sessions.
 */
export function standingsIn<Player>(
  { steps }: Pick<Curriculum, "steps">,
  sessions: readonly Practised<Player>[],
  today: string,
): ReadonlyMap<Player, Standing>[] {
  const plans = new Set(steps.map(({ plan }) => plan));
  const byPlayer = Map.groupBy(
    sessions.filter(({ plan }) => plans.has(plan)),
    ({ player }) => player,
  );
  return steps.map(
    (step) => new Map([...byPlayer].map(([player, own]) => [player, standing(step, own, today)] as const)),
  );
}

function standing(step: CurriculumStep, own: readonly Practised<unknown>[], today: string): Standing {
  const practised = own.filter(({ plan }) => plan === step.plan);
  const scored = practised.filter(({ outcome }) => outcome !== null);
  const met = practised.filter((session) => isMet(session, null));
  const metDays = daysOf(met);
  const review = nextReview(step, metDays);
  const waitsFor = met.length > 0 ? [] : waitingGates(step, own);
  return {
    state: stateOf(met.length > 0, review !== null && review <= today, waitsFor.length > 0),
    metOn: metDays[0] ?? null,
    review,
    waitsFor,
    sessions: practised.length,
    unscored: practised.length - scored.length,
    latest: inOrder(scored).at(-1)?.outcome?.verdict ?? null,
  };
}

function stateOf(isMet: boolean, isDue: boolean, isClosed: boolean): StepState {
  if (isMet) return isDue ? "due" : "met";
  return isClosed ? "closed" : "current";
}

function waitingGates(step: CurriculumStep, own: readonly Practised<unknown>[]): WaitingGate[] {
  return gatesOf(step)
    .map((gate) => ({ ...gate, met: timesMet(gate, own) }))
    .filter(({ times, met }) => met < times);
}

type Gate = Omit<WaitingGate, "met">;

/** What the step states; else every goal of the plans before it, once. */
function gatesOf({ gates, after }: CurriculumStep): Gate[] {
  if (gates.length > 0) return gates.map(({ plan, block, times }) => ({ plan, block, times }));
  return after.map((plan) => ({ plan, block: null, times: 1 }));
}

function timesMet({ plan, block }: Gate, own: readonly Practised<unknown>[]): number {
  return own.filter((session) => session.plan === plan && isMet(session, block)).length;
}

/** @param block null for every goal of the plan. What sets no goals is met when it was practised. */
function isMet({ outcome }: Practised<unknown>, block: string | null): boolean {
  if (outcome === null) return false;
  if (block === null) return outcome.verdict === "met" || outcome.verdict === null;
  return outcome.blocks.some(({ name, verdict }) => name === block && verdict === "met");
}

/** The day of the first review on or after which no session met the step again. */
function nextReview({ reviews }: CurriculumStep, metDays: readonly string[]): string | null {
  const [first, last = first] = [metDays[0], metDays.at(-1)];
  if (first === undefined || last === undefined) return null;
  const days = reviews.flatMap((seconds) => dayAfter(first, seconds) ?? []);
  return days.sort().find((day) => last < day) ?? null;
}

/** The days that are stated, in order. */
function daysOf(sessions: readonly Practised<unknown>[]): string[] {
  return sessions.flatMap(({ date }) => date ?? []).sort();
}

/** By their days; those without one first. */
function inOrder(sessions: readonly Practised<unknown>[]): Practised<unknown>[] {
  return sessions.toSorted((one, other) => {
    const [a, b] = [one.date ?? "", other.date ?? ""];
    return a < b ? -1 : a > b ? 1 : 0;
  });
}

/** Undefined beyond the years that are written with four digits: such a review never comes. */
function dayAfter(day: string, seconds: number): string | undefined {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + Math.ceil(seconds / SECONDS_OF_A_DAY));
  const text = Number.isNaN(date.getTime()) ? "" : date.toISOString();
  return /^\d{4}-\d\d-\d\d/.exec(text)?.[0];
}

const SECONDS_OF_A_DAY = 86_400;
