import type { Hand, Range } from "../plan-model.ts";
import type { Declared, RequestMessage } from "./message.ts";

/** What the files of the workspace declare, read or not yet scored. Sorted by name; sessions latest first. */
export const project: RequestMessage<null, Project> = { method: "drillwright/project" };

export interface Project {
  /** How many files with plans, sessions or vocabulary were read. */
  readonly files: number;
  readonly plans: readonly DeclaredAt[];
  readonly players: readonly ProjectPlayer[];
  readonly curricula: readonly DeclaredAt[];
  readonly sources: readonly DeclaredAt[];
  readonly sessions: readonly ProjectSession[];
}

/** A declaration, and where it stands in its file. */
export interface DeclaredAt extends Declared {
  readonly range: Range;
}

export interface ProjectPlayer extends DeclaredAt {
  /** Null where it is not stated. */
  readonly hand: Hand | null;
}

export interface ProjectSession extends DeclaredAt {
  /** As `2026-10-12`; null where the session states none. */
  readonly date: string | null;
  /** Null where the session names none, or one that is not known. */
  readonly player: Declared | null;
  readonly plan: Declared | null;
}
