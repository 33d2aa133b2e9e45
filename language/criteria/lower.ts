/** Criteria: from the tree to the model. The table does not compile until every kind of the grammar is in it. */
import type { Criterion as Model } from "../../shared/plan-model.ts";
import type { Criterion } from "../generated/tree/ast.ts";
import type { CriterionContext } from "../lowering/context.ts";
import { placeOf, textOf } from "../lowering/place.ts";
import { lowerChange } from "./change/lower.ts";
import { lowerCountCriterion } from "./count/lower.ts";
import { lowerEllipse } from "./ellipse/lower.ts";
import { lowerGroup } from "./group/lower.ts";
import { lowerLoad } from "./load/lower.ts";
import { lowerRun } from "./run/lower.ts";
import { lowerShare } from "./share/lower.ts";
import { lowerStatistic } from "./statistic/lower.ts";

/** What every criterion of the model has. */
export type Common = Pick<Model, "id" | "text" | "location">;

type Lowering = {
  [Type in Criterion["$type"]]: (
    criterion: Extract<Criterion, { $type: Type }>,
    common: Common,
    context: CriterionContext,
  ) => Model;
};

const LOWERING: Lowering = {
  ChangeCriterion: lowerChange,
  CountCriterion: lowerCountCriterion,
  EllipseCriterion: lowerEllipse,
  GroupCriterion: lowerGroup,
  LoadCriterion: lowerLoad,
  RunCriterion: lowerRun,
  ShareCriterion: lowerShare,
  StatisticCriterion: lowerStatistic,
};

/** @throws IncompleteError */
export function lowerCriterion(criterion: Criterion, id: string, context: CriterionContext): Model {
  const common = {
    id,
    text: textOf(criterion, context.bindings),
    location: placeOf(criterion, context.fileName),
  };
  return LOWERING[criterion.$type](criterion as never, common, context);
}
