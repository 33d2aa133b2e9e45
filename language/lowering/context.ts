/** What is known around a part of the text while it is lowered. */
import type { Against } from "../../shared/plan-model.ts";
import type { Bindings } from "../types/parameters.ts";
import type { FileName } from "./place.ts";

export interface Context {
  readonly fileName: FileName;
  /** What the parameters of the drill around stand for. */
  readonly bindings: Bindings;
}

/** What is known around a criterion. */
export interface CriterionContext extends Context {
  /** Shots that count: those the block asks for; null where all do that are hit, however many. */
  readonly counted: number | null;
  /** The plan's baseline that comes before the criterion. */
  readonly baseline: Against | undefined;
}
