/** What the tree of players is made of: players, their sessions, and the blocks of those. */
import { keyOf } from "../../../shared/protocol/message.ts";
import type { Project, ProjectPlayer, ProjectSession } from "../../../shared/protocol/project.ts";
import type { BlockScore } from "../../../shared/protocol/session-score.ts";
import { sharedNames } from "../shared-names.ts";

export type Element = PlayerElement | SessionElement | BlockElement | ProblemElement;

export interface PlayerElement {
  readonly kind: "player";
  /** Null for the sessions whose player nobody knows. */
  readonly player: ProjectPlayer | null;
  /** Whether another player has the same code: in another folder, where several are open. */
  readonly isNameShared: boolean;
  /** Latest first. */
  readonly sessions: readonly SessionElement[];
}

export interface SessionElement {
  readonly kind: "session";
  readonly session: ProjectSession;
}

export interface BlockElement {
  readonly kind: "block";
  readonly block: BlockScore;
  readonly session: ProjectSession;
}

/** Why a session has no blocks to show. */
export interface ProblemElement {
  readonly kind: "problem";
  readonly text: string;
  readonly session: ProjectSession;
}

/** Every player with their sessions, and at the end the sessions without a known player. */
export function playersOf({ players, sessions }: Project): PlayerElement[] {
  const byPlayer = Map.groupBy(sessions, ({ player }) => (player === null ? null : keyOf(player)));
  const elements = (key: string | null): SessionElement[] =>
    (byPlayer.get(key) ?? []).map((session) => ({ kind: "session", session }));
  const isShared = sharedNames(players);
  const known = players.map((player): PlayerElement => {
    return { kind: "player", player, isNameShared: isShared(player), sessions: elements(keyOf(player)) };
  });
  const unknown = elements(null);
  if (unknown.length === 0) return known;
  return [...known, { kind: "player", player: null, isNameShared: false, sessions: unknown }];
}
