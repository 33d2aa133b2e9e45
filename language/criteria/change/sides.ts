/** The two numbers of a change: what there is now, and what there was before. */
import type { ChangeCriterion, Direction } from "../../../shared/plan-model.ts";
import type { ReadingUncertainty } from "../../../shared/statistics/reading-uncertainty.ts";
import type { Comparison, CountedShots } from "../criterion.ts";
import { compute, orderOf } from "../statistic/compute.ts";
import { EXACT, uncertaintyOf } from "../statistic/uncertainty.ts";
import { type UsableShots, usableShots, valuesAt } from "../statistic/usable-shots.ts";
import type { Measure } from "./movement.ts";

/** The number of a block. */
export interface Side {
  readonly shots: CountedShots;
  readonly usable: UsableShots;
  readonly values: readonly number[];
  readonly uncertainty: ReadingUncertainty;
  /** Undefined where the shots are too few for it. */
  readonly value: number | undefined;
}

/** The number of other shots. `name` as in `against …`. */
export interface Baseline {
  readonly kind: "shots";
  readonly name: string;
  readonly side: Side;
  readonly isSameSession: boolean;
}

/** What is known of the player's usual number. */
export interface UsualNumber {
  readonly kind: "usual";
  readonly name: string;
  readonly numbers: Extract<Comparison, { kind: "usual" }>;
}

export type Before = Baseline | UsualNumber;

/** A change with both of its numbers. */
export interface Compared<Was extends Before = Before> {
  readonly criterion: ChangeCriterion;
  readonly measure: Measure;
  readonly now: Side;
  readonly before: Was;
}

export function sideOf({ statistic, metric, movement }: ChangeCriterion, shots: CountedShots): Side {
  const usable = usableShots([metric], shots);
  const values = valuesAt(metric, usable, shots);
  const uncertainty = uncertaintyOf(metric, usable.indices, shots) ?? EXACT;
  const order = orderOf(shots.metric(metric), shots.hand, directionsOf(movement));
  return { shots, usable, values, uncertainty, value: compute(statistic, values, order, uncertainty.random) };
}

/** The direction words that a movement is written with. */
export function directionsOf({ amount: { direction } }: ChangeCriterion["movement"]): readonly Direction[] {
  return direction === null ? [] : [direction];
}
