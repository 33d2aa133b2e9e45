/** What the tree of curricula is made of: curricula, their steps, and the players at those. */
import type { PlayerAtStep, StepPlayers } from "../../../shared/protocol/curriculum-players.ts";
import type { DeclaredAt } from "../../../shared/protocol/project.ts";

export type Element = CurriculumElement | StepElement | PlayerElement | NoteElement;

export interface CurriculumElement {
  readonly kind: "curriculum";
  readonly curriculum: DeclaredAt;
  /** Whether another curriculum has the same name: in another folder, where several are open. */
  readonly isNameShared: boolean;
  /** Whether its steps are shown before anybody asks. */
  readonly isOpen: boolean;
}

export interface StepElement {
  readonly kind: "step";
  readonly curriculum: DeclaredAt;
  readonly step: StepPlayers;
  /** From 1, and how many there are. */
  readonly place: number;
  readonly of: number;
}

export interface PlayerElement {
  readonly kind: "player";
  readonly step: StepElement;
  readonly player: PlayerAtStep;
  /** That of the player at the step, where commands look for the session of a row. */
  readonly session: DeclaredAt | null;
}

/** Why there is less to show than somebody may expect, and what to do about it. */
export interface NoteElement {
  readonly kind: "note";
  readonly curriculum: DeclaredAt;
  readonly text: string;
  readonly isProblem: boolean;
}
