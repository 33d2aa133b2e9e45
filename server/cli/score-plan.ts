/** Scores the sessions of one plan, for commands that look at several together. */
import type { Palette } from "../report/palette.ts";
import { chooseSessions } from "./choose-sessions.ts";
import { UsageError } from "./command.ts";
import type { Io } from "./io.ts";
import { reportNotScored } from "./not-scored.ts";
import { openProject } from "./open-project.ts";
import { thereAre } from "./parse-arguments.ts";
import { reportErrors } from "./plan-errors.ts";
import { type Scored, scoreSessions } from "./score-sessions.ts";

export interface PlanChoice {
  /** Undefined where the sessions practised one plan only. */
  readonly plan: string | undefined;
}

/**
 * What cannot be scored is told of on standard error, and left out.
 * @param areShotsWanted whether the shots of this player are looked at; the reports of all are
 * @throws UsageError where it is not one plan, PathError
 */
export async function scorePlan(
  operands: readonly string[],
  { plan }: PlanChoice,
  io: Io,
  { version, errorPalette }: { readonly version: string; readonly errorPalette: Palette },
  areShotsWanted: (player: string) => boolean,
): Promise<Scored> {
  const project = await openProject(operands, io);
  const chosen = chooseSessions(project, { session: undefined, plan });
  const scored = await scoreSessions(project, chosen, io, { version }, (session) =>
    areShotsWanted(session.report.player.name)
      ? session
      : { ...session, data: { ...session.data, shots: [] } },
  );
  only(
    scored.sessions.map(({ report }) => report.plan.name),
    "plan",
  );
  reportErrors(scored.broken, errorPalette, io);
  reportNotScored(scored.notScored, io);
  return scored;
}

/** @throws UsageError where there are several names, with the option to choose one of them. */
export function only(names: readonly string[], option: "plan" | "player"): void {
  const different = [...new Set(names)].sort();
  if (different.length < 2) return;
  const list = different.map((name) => JSON.stringify(name)).join(", ");
  throw new UsageError(
    `These are sessions of ${different.length} ${option}s, and one is looked at. Choose with --${option} among ${list}.`,
  );
}

/** The sessions of one player. @throws UsageError where there are none, or several players to choose from */
export function ofPlayer({ sessions }: Scored, player: string | undefined): Scored["sessions"] {
  const names = sessions.map(({ report }) => report.player.name);
  const chosen = sessions.filter(({ report }) => player === undefined || report.player.name === player);
  if (player !== undefined && chosen.length === 0 && sessions.length > 0) {
    throw new UsageError(`No session is one of a player "${player}".${thereAre(names)}`);
  }
  if (player === undefined) only(names, "player");
  return chosen;
}
