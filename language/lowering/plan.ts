/** Plans and blocks: from the tree to the model. */
import type { AstNode } from "langium";
import type {
  Block as BlockModel,
  Plan as PlanModel,
  Shots as ShotsModel,
  Statement,
} from "../../shared/plan-model.ts";
import { lowerCriterion } from "../criteria/lower.ts";
import {
  type Block,
  type BlockStatement,
  isBlock,
  isCaution,
  isChange,
  isCue,
  isForClubs,
  isIntent,
  isLeaveOut,
  isNeeds,
  isPlanTime,
  isRequirement,
  isShots,
  isSuccess,
  isTarget,
  type LeaveOut,
  type Plan,
  type Requirement,
  type Target,
} from "../generated/tree/ast.ts";
import { lowerCondition, lowerQuantity } from "./amounts.ts";
import { type FileName, placeOf, textOf } from "./place.ts";
import { resolved } from "./unresolved.ts";

/** @param documentation the text of the doc comment of a node, if it has one. */
export function lowerPlan(
  plan: Plan,
  fileName: FileName,
  documentation: (node: AstNode) => string | undefined,
): PlanModel {
  const { statements } = plan;
  const clubs = statements
    .filter(isForClubs)
    .flatMap((line) => line.clubs.map((club) => resolved(club).name));
  const time = statements.find(isPlanTime);
  return {
    name: plan.name,
    documentation: documentation(plan) ?? null,
    intent: statements.find(isIntent)?.text ?? null,
    clubs,
    time: time ? lowerQuantity(time.quantity).value : null,
    needs: statements.filter(isNeeds).flatMap((line) => line.metrics.map((metric) => resolved(metric).name)),
    cautions: statements.filter(isCaution).map(({ text }) => text),
    blocks: statements.filter(isBlock).map((block) => lowerBlock(block, clubs[0] ?? null, fileName)),
    location: placeOf(plan, fileName),
  };
}

function lowerBlock(block: Block, firstClub: string | null, fileName: FileName): BlockModel {
  const { statements } = block;
  const shots = statements.filter(isShots).map(
    (line): ShotsModel => ({
      count: line.count,
      open: line.open,
      club: line.club === undefined ? firstClub : resolved(line.club).name,
      effort: line.effort === undefined ? null : line.effort / 100,
    }),
  );
  const asked = shots.reduce((sum, { count }) => sum + count, 0);
  const criteria = statements.filter(isSuccess).flatMap((success) => success.criteria);
  return {
    name: block.name,
    kind: block.kind ?? "blocked",
    shots,
    changes: statements.filter(isChange).map(({ kind, text }) => ({ kind, text })),
    cues: statements.filter(isCue).map(({ text }) => text),
    targets: conditions(statements, isTarget, fileName),
    requirements: conditions(statements, isRequirement, fileName),
    leaveOut: conditions(statements, isLeaveOut, fileName),
    success: criteria.map((criterion, index) =>
      lowerCriterion(
        criterion,
        { id: `${block.name}/${index + 1}`, text: textOf(criterion), location: placeOf(criterion, fileName) },
        asked,
      ),
    ),
    location: placeOf(block, fileName),
  };
}

function conditions<T extends Target | Requirement | LeaveOut>(
  statements: readonly BlockStatement[],
  is: (statement: unknown) => statement is T,
  fileName: FileName,
): Statement[] {
  return statements
    .filter((statement): statement is BlockStatement & T => is(statement))
    .map((line) => ({
      text: textOf(line),
      condition: lowerCondition(line.condition),
      location: placeOf(line, fileName),
    }));
}
