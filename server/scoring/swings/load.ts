/** The swings of a session, its day and its week, and the limits that they are held against. */
import type { Effort } from "../../../language/criteria/criterion.ts";
import { grouped } from "../../../language/criteria/wording.ts";
import type { LoadLimit, Location, ScoringInput } from "../../../shared/plan-model.ts";
import type { Load } from "../../../shared/score-report.ts";
import { daysBetween } from "../earlier/days.ts";
import { isSamePlayer, type KnownSession, type ReadSession } from "../earlier/other-sessions.ts";
import { frameOf } from "../frame.ts";
import { sortShots } from "../set-aside.ts";
import { swingsOfSession } from "./effort.ts";

/** The swings of this session, and those of the sessions of this player that were read, by how many days before. */
export interface SwingHistory {
  readonly session: Effort;
  readonly others: readonly { readonly daysBefore: number; readonly swings: Effort }[];
  /** Sessions of the two weeks whose swings cannot be counted: name, and why. */
  readonly uncounted: readonly { readonly name: string; readonly reason: string }[];
}

export function swingHistory(
  input: ScoringInput,
  session: Effort,
  known: readonly KnownSession[],
): SwingHistory {
  const recent = known.flatMap(({ session: other, read }) => {
    const daysBefore = daysBetween(other.date, input.session.date);
    const isRecent = daysBefore !== undefined && daysBefore >= 0 && daysBefore < 2 * WEEK;
    return isRecent && isSamePlayer(other, input) ? [{ name: other.name, daysBefore, read }] : [];
  });
  return {
    session,
    others: recent.flatMap(({ daysBefore, read }) =>
      typeof read === "string" ? [] : [{ daysBefore, swings: swingsIn(read) }],
    ),
    uncounted: recent.flatMap(({ name, read }) => {
      const reason = whyUncounted(read);
      return reason === undefined ? [] : [{ name, reason }];
    }),
  };
}

/** Why not all swings of a session are known. */
function whyUncounted(read: ReadSession | string): string | undefined {
  if (typeof read === "string") return read;
  return read.data.findings.find(({ severity }) => severity === "error")?.message;
}

function swingsIn({ input, data }: ReadSession): Effort {
  return swingsOfSession(sortShots(input.plan, data, frameOf(input).player), data).session;
}

const WEEK = 7;

/** A week is the seven days that end with the day of the session. */
const DAYS: Readonly<Record<LoadLimit["period"], number>> = { session: 0, day: 1, week: WEEK };

export function loadOf({ plan, player }: ScoringInput, history: SwingHistory): Load {
  const limits = [
    ...plan.limits.map((limit) => ({ ...limit, period: "session" as const })),
    ...player.limits,
  ];
  return {
    swings: history.session.all,
    fullEffort: history.session.fullEffort,
    limits: limits.map((limit) => heldAgainst(limit, swingsWithin(DAYS[limit.period], history))),
  };
}

function heldAgainst(
  {
    count: limit,
    fullEffort,
    period,
    location,
  }: {
    readonly count: number;
    readonly fullEffort: boolean;
    readonly period: LoadLimit["period"];
    readonly location: Location;
  },
  made: Effort,
): Load["limits"][number] {
  const count = fullEffort ? made.fullEffort : made.all;
  const swings = `${fullEffort ? "full-effort " : ""}${limit === 1 ? "swing" : "swings"}`;
  return {
    text: `${grouped(count)} of at most ${grouped(limit)} ${swings} in a ${period}`,
    count,
    limit,
    period,
    isExceeded: count > limit,
    location,
  };
}

/** This session and those of so many days that end with its day; with no day, this session alone. */
function swingsWithin(days: number, { session, others }: SwingHistory, endedDaysBefore = 0): Effort {
  const within = others.filter(
    ({ daysBefore }) => daysBefore >= endedDaysBefore && daysBefore < endedDaysBefore + days,
  );
  const own = endedDaysBefore === 0 ? [session] : [];
  return [...own, ...within.map(({ swings }) => swings)].reduce(
    (sum, { all, fullEffort }) => ({ all: sum.all + all, fullEffort: sum.fullEffort + fullEffort }),
    { all: 0, fullEffort: 0 },
  );
}

/** More than so many times the swings of the week before deserves a word. */
const MUCH_MORE = 1.5;

/** Limits that are exceeded, and a week of many more swings than the one before. */
export function loadCautions(
  { session: { date } }: ScoringInput,
  load: Load,
  history: SwingHistory,
): string[] {
  const cautions = load.limits
    .filter(({ isExceeded }) => isExceeded)
    .map(({ text }) => `More swings than agreed: ${text}. Rest before the next full swing.`);
  const [week, before] = [swingsWithin(WEEK, history).all, swingsWithin(WEEK, history, WEEK).all];
  if (date !== null && before > 0 && week > MUCH_MORE * before) {
    const times = (Math.floor((week / before) * 10) / 10).toFixed(1);
    cautions.push(
      `Many more swings than the week before: ${grouped(week)} in the seven days up to ${date}, ${times} times the ${grouped(before)} of the seven days before that, by the sessions that were read. Build up slowly.`,
    );
  }
  return cautions;
}

/** Why a day or a week may have had more swings than are counted. */
export function loadNotes({ session, player }: ScoringInput, { uncounted }: SwingHistory): string[] {
  const needsDays = player.limits.some(({ period }) => period !== "session");
  return [
    ...(needsDays && session.date === null
      ? ["The session states no date: of its day and its week only its own swings are counted."]
      : []),
    ...uncounted.map(
      ({ name, reason }) => `Not all swings of session "${name}" are counted: ${withoutStop(reason)}.`,
    ),
  ];
}

function withoutStop(sentence: string): string {
  return sentence.replace(/\.$/, "");
}
