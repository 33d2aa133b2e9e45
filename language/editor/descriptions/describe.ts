/** What a declaration is, in Markdown. A type of declaration that is missing here does not compile. */
import type { AstNode } from "langium";
import type { Block, Declaration, Direction, Parameter, UnitName } from "../../generated/tree/ast.ts";
import { documented } from "./markdown.ts";
import {
  describeCurriculum,
  describeDrill,
  describeFinding,
  describeInstrument,
  describeParameter,
  describeWindow,
} from "./planning.ts";
import { describeBlock, describePlan, describePlayer, describeSession, describeSource } from "./practice.ts";
import {
  describeClub,
  describeDimension,
  describeDirection,
  describeMetric,
  describeUnit,
} from "./vocabulary.ts";

type Described = Declaration | Block | Parameter | UnitName | Direction;

const DESCRIPTIONS: {
  readonly [Type in Described["$type"]]: (
    node: Extract<Described, { $type: Type }>,
    documentation: string | undefined,
  ) => string;
} = {
  Dimension: describeDimension,
  UnitName: describeUnit,
  Metric: describeMetric,
  FrameDirection: describeDirection,
  HandedDirection: describeDirection,
  Club: describeClub,
  Plan: describePlan,
  Block: describeBlock,
  Player: describePlayer,
  Source: describeSource,
  Session: describeSession,
  Window: describeWindow,
  Drill: describeDrill,
  Parameter: describeParameter,
  Finding: describeFinding,
  Curriculum: describeCurriculum,
  Instrument: describeInstrument,
};

/** @param documentation the text of the declaration's doc comment, if it has one. */
export function describe(node: AstNode, documentation: string | undefined): string | undefined {
  const description = DESCRIPTIONS[node.$type as Described["$type"]];
  return description?.(node as never, documentation && documented(documentation));
}
