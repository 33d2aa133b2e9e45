/** What a session brings to its plan: who practised, and what the readings were taken with. */

import { once } from "../../shared/once.ts";
import type { Instrument as InstrumentModel, Player as PlayerModel } from "../../shared/plan-model.ts";
import {
  type Instrument,
  isInstrument,
  isSessionInstrument,
  isSessionPlayer,
  type Plan,
  type Player,
  type Session,
} from "../generated/tree/ast.ts";
import { lowerInstrument } from "../lowering/instrument.ts";
import { decisionLevelOf } from "../lowering/plan.ts";
import { instrumentOf, lowerPlayer, planOf, playerOf } from "../lowering/session.ts";
import type { CheckContext } from "./check.ts";
import { fileName, type Meaning, type Meanings } from "./meanings.ts";

export interface SessionMeaning {
  readonly blocks: readonly Meaning[];
  readonly decisionLevel: number;
  readonly player: PlayerModel;
  readonly instrument: InstrumentModel | undefined;
}

/**
 * One and the same for sessions of one plan by one player with one instrument, so that what follows is found out once.
 * Undefined where the session, its plan, its player or its instrument is not all known, or has an error in it.
 */
export function meaningOf(session: Session, { meanings }: CheckContext): SessionMeaning | undefined {
  return meanings.attempt(session, () => {
    const plan = planOf(session);
    const player = playerOf(session);
    const instrument = instrumentOf(session);
    if (![session, player, instrument ?? plan].every((node) => meanings.isSound(node))) return undefined;
    return meaningsWhile(meanings)(plan)(player)(instrument ?? NO_INSTRUMENT);
  });
}

const NO_INSTRUMENT = {};

const meaningsWhile = once((meanings: Meanings) =>
  once((plan: Plan) => {
    const stated = { blocks: meanings.of(plan), decisionLevel: decisionLevelOf(plan) };
    return once((node: Player) => {
      const player = lowerPlayer(node, fileName);
      return once((instrument: Instrument | typeof NO_INSTRUMENT) => ({
        ...stated,
        player,
        instrument: isInstrument(instrument) ? lowerInstrument(instrument, fileName) : undefined,
      }));
    });
  }),
);

/** The lines of a session that say these. */
export function linesOf({ statements }: Session) {
  return { instrument: statements.find(isSessionInstrument), player: statements.find(isSessionPlayer) };
}
