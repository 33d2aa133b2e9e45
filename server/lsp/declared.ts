/** Plans and sessions as messages name them, and what a session says of itself. */
import { AstUtils, type LangiumDocument, type Reference } from "langium";
import {
  type Declaration,
  type Document,
  isSessionDate,
  isSessionPlan,
  isSessionPlayer,
  type Plan,
  type Player,
  type Session,
} from "../../language/generated/tree/ast.ts";
import type { Range } from "../../shared/plan-model.ts";
import type { Declared } from "../../shared/protocol/message.ts";
import type { DeclaredAt } from "../../shared/protocol/project.ts";

export type File = LangiumDocument<Document>;

export function fileOf(node: Declaration): File {
  return AstUtils.getDocument(node);
}

export function declared(node: Declaration): Declared {
  return { file: fileOf(node).uri.toString(), name: node.name };
}

/** All of a declaration, from its first word to its closing brace. */
export function rangeOf(node: Declaration): Range {
  const start = { line: 0, character: 0 };
  return node.$cstNode?.range ?? { start, end: start };
}

/** By name; those of the same name by file. */
export function byName<Item extends Declared>(items: Iterable<Item>): Item[] {
  return [...items].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : a.file < b.file ? -1 : 1));
}

/** A declaration, and where it stands. */
export function declaredAt(node: Declaration): DeclaredAt {
  return { ...declared(node), range: rangeOf(node) };
}

export function planOf(session: Session): Plan | undefined {
  return session.statements.find(isSessionPlan)?.plan?.ref;
}

/** The player as the session names them, known or not. */
export function playerOf(session: Session): Reference<Player> | undefined {
  return session.statements.find(isSessionPlayer)?.player;
}

export function dateOf(session: Session): string | undefined {
  return session.statements.find(isSessionDate)?.date;
}

/**
 * Latest first; of one day, the one in the file whose name comes last, and in one file the one declared last; those
 * without a date last. The order in which files happened to be read plays no part.
 */
export function latestFirst(sessions: readonly Session[]): Session[] {
  const place = (session: Session) => `${dateOf(session) ?? ""} ${declared(session).file}`;
  return sessions.toReversed().sort((a, b) => (place(a) < place(b) ? 1 : place(a) > place(b) ? -1 : 0));
}
