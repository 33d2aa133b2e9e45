import type { AstNode, ReferenceInfo } from "langium";
import {
  Block,
  Category,
  Club,
  ClubOrParameter,
  Dimension,
  Direction,
  Drill,
  Finding,
  Instrument,
  Metric,
  Parameter,
  Plan,
  Player,
  reflection,
  Session,
  SideOrCategory,
  Source,
  UnitName,
  Window,
} from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck } from "./check.ts";
import { unknownDirection, unknownUnit } from "./unknown-names/amount.ts";
import { unknownBlock, unknownDeclaration } from "./unknown-names/declaration.ts";
import {
  unknownCategory,
  unknownClubOrParameter,
  unknownMeaning,
  unknownParameter,
} from "./unknown-names/local.ts";
import type { Explanation, UnknownName } from "./unknown-names/unknown-name.ts";

/** By what is looked for. */
const EXPLANATIONS: Readonly<Record<string, (unknown: UnknownName) => Explanation>> = {
  [Block.$type]: unknownBlock,
  [Category.$type]: unknownCategory,
  [Club.$type]: (unknown) => unknownDeclaration(unknown, Club.$type, "club", "plain"),
  [ClubOrParameter.$type]: unknownClubOrParameter,
  [Dimension.$type]: (unknown) => unknownDeclaration(unknown, Dimension.$type, "dimension", "plain"),
  [Direction.$type]: unknownDirection,
  [Drill.$type]: (unknown) => unknownDeclaration(unknown, Drill.$type, "drill", "quoted"),
  [Finding.$type]: (unknown) => unknownDeclaration(unknown, Finding.$type, "finding", "quoted"),
  [Instrument.$type]: (unknown) => unknownDeclaration(unknown, Instrument.$type, "instrument", "quoted"),
  [Metric.$type]: (unknown) => unknownDeclaration(unknown, Metric.$type, "metric", "plain"),
  [Parameter.$type]: unknownParameter,
  [Plan.$type]: (unknown) => unknownDeclaration(unknown, Plan.$type, "plan", "quoted"),
  [Player.$type]: (unknown) => unknownDeclaration(unknown, Player.$type, "player", "quoted"),
  [Session.$type]: (unknown) => unknownDeclaration(unknown, Session.$type, "session", "quoted"),
  [SideOrCategory.$type]: unknownMeaning,
  [Source.$type]: (unknown) => unknownDeclaration(unknown, Source.$type, "source", "quoted"),
  [UnitName.$type]: unknownUnit,
  [Window.$type]: (unknown) => unknownDeclaration(unknown, Window.$type, "window", "quoted"),
};

/** Looking for what was meant takes its time, and nobody reads more. */
const MOST = 100;

/** A name that means nothing where it stands. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Nothing can be measured, planned or scored by a name that is not declared in the file, in one that it uses, or in the built-in vocabulary.",
  run(_, context) {
    let found = 0;
    for (const reference of context.document.references) {
      const { error } = reference;
      if (error === undefined || context.isBroken(error.info.container)) continue;
      if (reportUnknown(error.info, context) && ++found === MOST) return;
    }
  },
  files: {
    "standards.drill": `
metric pace is speed
`,
  },
  reporting: `
plan "Gate" {
  for «pw», «7-irn»
  time 55 «mins»
  block "Start" {
    10 shots
    target «club-paht» within ±2°
    target face-angle at most 2 «open»
    target face-angle at least 1° «opne»
    target carry at least 150 yd «left»
    target total at least 170 «yrd»
    target «aoa» at least 1° down
    target «spin» at most 7000 rpm
  }
}

player "P-1" {
  right-handed
}

session "First" {
  plan "Gate"
  player «"p 01"»
  data "first.csv" from «"Bay"»
  block «"Strat"» from row 1
}

source "Bays" {
  column "Pace" is «pace»
}`,
  fixed: `use "./standards"


plan "Gate" {
  for pitching-wedge, 7-iron
  time 55 min
  block "Start" {
    10 shots
    target club-path within ±2°
    target face-angle at most 2° open
    target face-angle at least 1° open
    target carry at least 150 yd
    target total at least 170 yd
    target attack-angle at least 1° down
    target spin-rate at most 7000 rpm
  }
}

player "P-1" {
  right-handed
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bays"
  block "Start" from row 1
}

source "Bays" {
  column "Pace" is pace
}`,
  silent: `
use "./standards"

plan "Gate" {
  for 7-iron
  time 55 min
  block "Start" {
    10 shots
    target club-path within ±2°
    target pace at least 3 m/s
  }
}`,
});

function reportUnknown(info: ReferenceInfo, { document, names, report }: CheckContext): boolean {
  const { reference, container } = info;
  const cst = reference.$refNode;
  if (cst === undefined) return false;
  const explain = EXPLANATIONS[reflection.getReferenceType(info)];
  const explanation = explain?.({ name: reference.$refText, cst, container, document, names });
  if (explanation === undefined) return false;
  report({ ...explanation, node: container as AstNode, cst });
  return true;
}
