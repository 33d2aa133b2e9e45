/** Plans: from the tree to the model. */
import type { AstNode } from "langium";
import type { Against, NextStep as NextStepModel, Plan as PlanModel } from "../../shared/plan-model.ts";
import {
  type Block,
  isBlock,
  isCaution,
  isDecisionLevel,
  isForClubs,
  isIntent,
  isLoadLimit,
  isLooksFor,
  isNeeds,
  isNext,
  isPlanTime,
  isRepeat,
  type NextStep,
  type NextTest,
  type Plan,
} from "../generated/tree/ast.ts";
import { isBaseline } from "../types/kinds.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { lowerQuantity } from "./amounts.ts";
import { lowerBlock } from "./block.ts";
import { lowerFinding } from "./finding.ts";
import { type FileName, placeOf, textOf } from "./place.ts";
import { resolved } from "./unresolved.ts";

/** How sure a verdict must be where the instrument leaves a doubt, if the plan does not say. */
const DECISION_LEVEL = 0.95;

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
  const blocks = statements.filter(isBlock);
  const baselines = baselinesIn(blocks);
  return {
    name: plan.name,
    documentation: documentation(plan) ?? null,
    intent: statements.find(isIntent)?.text ?? null,
    clubs,
    time: time ? lowerQuantity(time.quantity, NO_BINDINGS).value : null,
    needs: statements.filter(isNeeds).flatMap((line) => line.metrics.map((metric) => resolved(metric).name)),
    cautions: statements.filter(isCaution).map(({ text }) => text),
    decisionLevel: decisionLevelOf(plan),
    limits: statements.filter(isLoadLimit).map((limit) => ({
      count: limit.count,
      fullEffort: limit.fullEffort,
      location: placeOf(limit, fileName),
    })),
    findings: statements
      .filter(isLooksFor)
      .flatMap((line) => line.findings)
      .map((finding) => lowerFinding(resolved(finding), fileName, documentation)),
    blocks: blocks.map((block) =>
      lowerBlock(block, { firstClub: clubs[0] ?? null, baseline: baselines.get(block), fileName }),
    ),
    next: statements
      .filter(isNext)
      .flatMap(({ steps }) => steps)
      .map((step) => lowerNextStep(step, fileName)),
    location: placeOf(plan, fileName),
  };
}

/** From 0 to 1. */
export function decisionLevelOf({ statements }: Plan): number {
  return (statements.find(isDecisionLevel)?.level ?? DECISION_LEVEL * 100) / 100;
}

/** For each block, the first baseline before it; none where there is none. One walk for all. */
export function baselinesIn(blocks: readonly Block[]): ReadonlyMap<Block, Against> {
  const at = blocks.findIndex(isBaseline);
  const first = blocks[at];
  if (first === undefined) return new Map();
  return new Map(blocks.slice(at + 1).map((block) => [block, { kind: "block", block: first.name }]));
}

const MOVES = { Advance: "advance", Repeat: "repeat", StepBack: "step-back" } as const;

function lowerNextStep(step: NextStep, fileName: FileName): NextStepModel {
  return {
    move: MOVES[step.$type],
    plan: isRepeat(step) ? null : resolved(step.plan).name,
    when: (step.when?.tests ?? []).map(lowerNextTest),
    text: textOf(step),
    location: placeOf(step, fileName),
  };
}

function lowerNextTest({ every, block, verdicts }: NextTest): NextStepModel["when"][number] {
  return {
    goals:
      block === undefined
        ? { kind: every ? "every" : "any" }
        : { kind: "block", block: resolved(block).name },
    verdicts: [...verdicts],
  };
}
