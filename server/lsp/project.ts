/** What the files of the workspace declare, for people to choose from. */
import { DocumentState, type LangiumDocuments } from "langium";
import {
  isCurriculum,
  isPlan,
  isPlayer,
  isSession,
  isSource,
  type Player,
  type Session,
} from "../../language/generated/tree/ast.ts";
import { LIBRARY_SCHEME } from "../../language/library/library.ts";
import { handOf } from "../../language/lowering/session.ts";
import type { Project, ProjectPlayer, ProjectSession } from "../../shared/protocol/project.ts";
import {
  byName,
  dateOf,
  declared,
  declaredAt,
  type File,
  latestFirst,
  planOf,
  playerOf,
} from "./declared.ts";

/** Linear in the declarations of the workspace. */
export function projectOf(documents: LangiumDocuments): Project {
  const files = (documents.all.toArray() as File[]).filter(
    ({ state, uri }) => state >= DocumentState.ComputedScopes && uri.scheme !== LIBRARY_SCHEME,
  );
  return { files: files.length, ...declaredIn(files) };
}

/** What a file adds to its project, as a text that changes when that does. */
export function outlineOf(file: File): string {
  return JSON.stringify(declaredIn([file]));
}

function declaredIn(files: readonly File[]): Omit<Project, "files"> {
  const declarations = files.flatMap(({ parseResult }) => parseResult.value.declarations ?? []);
  return {
    plans: byName(declarations.filter(isPlan).map(declaredAt)),
    players: byName(declarations.filter(isPlayer).map(player)),
    curricula: byName(declarations.filter(isCurriculum).map(declaredAt)),
    sources: byName(declarations.filter(isSource).map(declaredAt)),
    sessions: latestFirst(declarations.filter(isSession)).map(session),
  };
}

function player(node: Player): ProjectPlayer {
  return { ...declaredAt(node), hand: handOf(node) };
}

function session(node: Session): ProjectSession {
  const plan = planOf(node);
  const player = playerOf(node)?.ref;
  return {
    ...declaredAt(node),
    date: dateOf(node) ?? null,
    player: player === undefined ? null : declared(player),
    plan: plan === undefined ? null : declared(plan),
  };
}
