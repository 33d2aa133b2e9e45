/** What a proposal may propose: the words of the language that a table can be put into. */
import type { Club, Metric, Unit } from "../../../shared/plan-model.ts";

export interface Vocabulary {
  readonly metrics: readonly Metric[];
  readonly clubs: readonly Club[];
  /** The units of each dimension, by its name: the unit, and every spelling the language knows it by. */
  readonly units: ReadonlyMap<string, readonly { readonly unit: Unit; readonly names: readonly string[] }[]>;
}
