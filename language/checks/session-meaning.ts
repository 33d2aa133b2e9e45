/** What a session brings to its plan: who practised, and what the readings were taken with. */
import type { Instrument, Player } from "../../shared/plan-model.ts";
import { isSessionInstrument, isSessionPlayer, type Session } from "../generated/tree/ast.ts";
import { lowerInstrument } from "../lowering/instrument.ts";
import { decisionLevelOf } from "../lowering/plan.ts";
import { instrumentOf, lowerPlayer, planOf, playerOf } from "../lowering/session.ts";
import type { CheckContext } from "./check.ts";
import { fileName, type Meaning } from "./meanings.ts";

export interface SessionMeaning {
  readonly blocks: readonly Meaning[];
  readonly decisionLevel: number;
  readonly player: Player;
  readonly instrument: Instrument | undefined;
}

/** Undefined where the session, its plan, its player or its instrument is not all known, or has an error in it. */
export function meaningOf(session: Session, { meanings }: CheckContext): SessionMeaning | undefined {
  return meanings.attempt(session, () => {
    const plan = planOf(session);
    const player = playerOf(session);
    const instrument = instrumentOf(session);
    if (![session, player, instrument ?? plan].every((node) => meanings.isSound(node))) return undefined;
    return {
      blocks: meanings.of(plan),
      decisionLevel: decisionLevelOf(plan),
      player: lowerPlayer(player, fileName),
      instrument: instrument && lowerInstrument(instrument, fileName),
    };
  });
}

/** The lines of a session that say these. */
export function linesOf({ statements }: Session) {
  return { instrument: statements.find(isSessionInstrument), player: statements.find(isSessionPlayer) };
}
