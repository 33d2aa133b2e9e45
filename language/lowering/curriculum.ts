/** Curricula: from the tree to the model. */
import type { AstNode } from "langium";
import type {
  Curriculum as CurriculumModel,
  CurriculumStep as CurriculumStepModel,
} from "../../shared/plan-model.ts";
import {
  type Curriculum,
  type CurriculumStep,
  isCurriculumStep,
  isGate,
  isIntent,
  isReview,
} from "../generated/tree/ast.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { lowerQuantity } from "./amounts.ts";
import { type FileName, placeOf } from "./place.ts";
import { resolved } from "./unresolved.ts";

export function lowerCurriculum(
  curriculum: Curriculum,
  fileName: FileName,
  documentation: (node: AstNode) => string | undefined,
): CurriculumModel {
  const { statements } = curriculum;
  return {
    name: curriculum.name,
    documentation: documentation(curriculum) ?? null,
    intent: statements.find(isIntent)?.text ?? null,
    steps: statements.filter(isCurriculumStep).map((step) => lowerStep(step, fileName)),
    location: placeOf(curriculum, fileName),
  };
}

function lowerStep(
  { plan, after, statements, ...step }: CurriculumStep,
  fileName: FileName,
): CurriculumStepModel {
  return {
    plan: resolved(plan).name,
    after: after.map((before) => resolved(before).name),
    gates: statements.filter(isGate).map((gate) => ({
      plan: resolved(gate.plan).name,
      block: gate.block === undefined ? null : resolved(gate.block).name,
      times: gate.times ?? 1,
      location: placeOf(gate, fileName),
    })),
    reviews: statements
      .filter(isReview)
      .flatMap(({ intervals }) => intervals)
      .map((interval) => lowerQuantity(interval, NO_BINDINGS).value),
    location: placeOf(step as CurriculumStep, fileName),
  };
}
