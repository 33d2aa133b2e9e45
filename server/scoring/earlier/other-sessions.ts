/** Other sessions that the score of one may need: what a change is held against, and the swings of the days before. */
import type { Against, Criterion, ScoringInput } from "../../../shared/plan-model.ts";
import type { SessionData } from "../../../shared/session-data.ts";
import { daysBetween } from "./days.ts";

/** A declaration, by the file it stands in and its name. */
export interface Declared {
  readonly file: string;
  readonly name: string;
}

/** A session as it was read from its tables. */
export interface ReadSession {
  readonly input: ScoringInput;
  readonly data: SessionData;
}

/** What a session says of itself, and the way to its shots. */
export interface OtherSession extends Declared {
  /** Year-month-day, or null where it is not stated. */
  readonly date: string | null;
  readonly plan: Declared;
  readonly player: Declared;
  /** Reads its tables; in a sentence why it cannot be. */
  read(): Promise<ReadSession | string>;
}

/** An other session that was wanted, and what became of it. */
export interface KnownSession {
  readonly session: OtherSession;
  readonly read: ReadSession | string;
}

/** How many days the swings of a week, and of the week before it, go back. */
const TWO_WEEKS = 14;

/**
 * The sessions whose shots the score of this one needs: those that its goals are held against, and those of the player in
 * the two weeks that end with its day. No other is read. Linear in the sessions.
 */
export function sessionsWanted(input: ScoringInput, others: readonly OtherSession[]): OtherSession[] {
  const wanted = new Set<OtherSession>();
  for (const against of comparisonsIn(input)) {
    const found = sessionMeant(against, input, others);
    if (found !== undefined && typeof found !== "string") wanted.add(found);
  }
  for (const other of others) {
    if (!isSamePlayer(other, input)) continue;
    const days = daysBetween(other.date, input.session.date);
    if (days !== undefined && days >= 0 && days < TWO_WEEKS) wanted.add(other);
  }
  return [...wanted];
}

/** What the changes among the goals and findings of the plan are held against. */
function comparisonsIn({ plan }: ScoringInput): Against[] {
  const within = (criterion: Criterion): Against[] => {
    if (criterion.kind === "group") return criterion.criteria.flatMap(within);
    return criterion.kind === "change" ? [criterion.against] : [];
  };
  return [
    ...plan.blocks.flatMap(({ success }) => success),
    ...plan.findings.flatMap(({ when }) => when),
  ].flatMap(within);
}

/** The session that is meant, or in a sentence why there is none; undefined where no other session is. */
export function sessionMeant(
  against: Against,
  input: ScoringInput,
  others: readonly OtherSession[],
): OtherSession | string | undefined {
  if (against.kind === "session") return sessionNamed(against.session, input, others);
  return against.kind === "last session" ? lastSession(input, others) : undefined;
}

function sessionNamed(
  name: string,
  input: ScoringInput,
  others: readonly OtherSession[],
): OtherSession | string {
  const named = others.filter((other) => other.name === name);
  if (named.length === 0) {
    return name === input.session.name
      ? `session "${name}" is this session itself`
      : `session "${name}" is not among the files that were read`;
  }
  const [latest] = named.filter((other) => isSamePlayer(other, input)).sort(latestFirst);
  return latest ?? `session "${name}" is not one of ${input.player.name}`;
}

/** The latest session of this plan by this player on a day before this one. */
function lastSession(input: ScoringInput, others: readonly OtherSession[]): OtherSession | string {
  const { session, plan, player } = input;
  if (session.date === null) return "the session states no date, so none can be said to be before it";
  const [latest] = others
    .filter((other) => isSame(other.plan, { file: plan.location.file, name: plan.name }))
    .filter((other) => isSamePlayer(other, input))
    .filter((other) => (daysBetween(other.date, session.date) ?? 0) > 0)
    .sort(latestFirst);
  return latest ?? `no earlier session of this plan by ${player.name} is among the files that were read`;
}

export function isSamePlayer(other: OtherSession, { player }: ScoringInput): boolean {
  return isSame(other.player, { file: player.location.file, name: player.name });
}

function isSame(one: Declared, other: Declared): boolean {
  return one.file === other.file && one.name === other.name;
}

/** Of one day, the one whose file and name come last: the order in which files happened to be read plays no part. */
function latestFirst(one: OtherSession, other: OtherSession): number {
  const place = ({ date, file, name }: OtherSession) => `${date ?? ""} ${file} ${name}`;
  return place(one) < place(other) ? 1 : place(one) > place(other) ? -1 : 0;
}
