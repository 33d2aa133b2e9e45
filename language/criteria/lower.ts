/** Criteria: from the tree to the model. The table does not compile until every kind of the grammar is in it. */
import type { Criterion as Model } from "../../shared/plan-model.ts";
import type { Criterion } from "../generated/tree/ast.ts";
import { lowerCount } from "./count/lower.ts";
import { lowerRun } from "./run/lower.ts";
import { lowerShare } from "./share/lower.ts";
import { lowerStatistic } from "./statistic/lower.ts";

/** What every criterion of the model has. */
export type Common = Pick<Model, "id" | "text" | "location">;

type Lowering = {
  [Type in Criterion["$type"]]: (
    criterion: Extract<Criterion, { $type: Type }>,
    common: Common,
    /** Shots the block asks for. */
    shots: number,
  ) => Model;
};

const LOWERING: Lowering = {
  CountCriterion: lowerCount,
  RunCriterion: lowerRun,
  ShareCriterion: lowerShare,
  StatisticCriterion: lowerStatistic,
};

export function lowerCriterion(criterion: Criterion, common: Common, shots: number): Model {
  return LOWERING[criterion.$type](criterion as never, common, shots);
}
