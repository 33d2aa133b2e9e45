/** What a plan or a source speaks of, wherever that is written: in it, or in the drills, windows and findings that it names. */
import { type AstNode, AstUtils, type Reference } from "langium";
import { once } from "../../shared/once.ts";
import {
  type ChangeCriterion,
  type EllipseCriterion,
  type HandedDirection,
  isChangeCriterion,
  isDrillUse,
  isEllipseCriterion,
  isHandedDirection,
  isLooksFor,
  isMetricColumn,
  isNeeds,
  isNumberTest,
  isQuantity,
  isSpelling,
  isStatisticCriterion,
  isWindowTest,
  type Metric,
  type Needs,
  type NumberTest,
  type StatisticCriterion,
} from "../generated/tree/ast.ts";
import type { CheckContext } from "./check.ts";
import type { Meanings } from "./meanings.ts";

/** A metric where it is held against something, or asked of the data. */
export interface MetricUse {
  readonly node: NumberTest | StatisticCriterion | ChangeCriterion | EllipseCriterion | Needs;
  readonly metric: Reference<Metric>;
}

export interface Reached {
  readonly uses: readonly MetricUse[];
  /** The first word that mirrors with the hand. */
  readonly handedWord: HandedDirection | undefined;
}

/** Found once while a file is looked at: what its names stand for changes with other files. Linear in what is reached. */
export function reachedFrom(part: AstNode, { meanings }: Pick<CheckContext, "meanings">): Reached {
  return reachedWhile(meanings)(part);
}

const reachedWhile = once((_file: Meanings) => once(reached));

function reached(start: AstNode): Reached {
  const uses: MetricUse[] = [];
  let handedWord: HandedDirection | undefined;
  const seen = new Set<AstNode>();
  const look = (part: AstNode | undefined): void => {
    if (part === undefined || seen.has(part)) return;
    seen.add(part);
    for (const node of AstUtils.streamAst(part)) {
      uses.push(...usesIn(node));
      const word = directionIn(node);
      if (isHandedDirection(word)) handedWord ??= word;
      for (const named of namedIn(node)) look(named);
    }
  };
  look(start);
  return { uses, handedWord };
}

function usesIn(node: AstNode): MetricUse[] {
  if (isNumberTest(node) || isStatisticCriterion(node) || isChangeCriterion(node))
    return node.metric === undefined ? [] : [{ node, metric: node.metric }];
  if (isEllipseCriterion(node))
    return [node.first, node.second].flatMap((metric) => (metric === undefined ? [] : [{ node, metric }]));
  return isNeeds(node) ? node.metrics.map((metric) => ({ node, metric })) : [];
}

function directionIn(node: AstNode): AstNode | undefined {
  if (isQuantity(node)) return node.direction?.ref;
  if (isMetricColumn(node)) return node.positive?.ref;
  return isSpelling(node) ? node.meaning?.ref : undefined;
}

function namedIn(node: AstNode): readonly (AstNode | undefined)[] {
  if (isDrillUse(node)) return [node.drill?.ref];
  if (isWindowTest(node)) return [node.window?.ref];
  return isLooksFor(node) ? node.findings.map(({ ref }) => ref) : [];
}
