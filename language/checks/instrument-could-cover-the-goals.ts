import { type AstNode, AstUtils } from "langium";
import {
  isBlock,
  isChangeCriterion,
  isDrillUse,
  isEllipseCriterion,
  isEstimated,
  isFormula,
  isLeaveOut,
  isMetricOperand,
  isNumberTest,
  isSession,
  isSessionInstrument,
  isSessionPlan,
  isStatisticCriterion,
  isUncertainty,
  isWindowTest,
  type Metric,
  type Plan,
} from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, listed, quoted } from "./wording.ts";

/** More names in a message are a list to read. */
const MOST_NAMED = 4;

/** An instrument that does not say how exact the readings are that the plan judges. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Readings of which nobody says how far they may be off are taken as exact, and their verdicts as certain.",
  run(root, { isBroken, report }) {
    const known = new Map<Plan, ReadonlySet<Metric>>();
    for (const session of root.declarations.filter(isSession)) {
      const statement = session.statements.find(isSessionInstrument);
      const instrument = statement?.instrument?.ref;
      const plan = session.statements.find(isSessionPlan)?.plan?.ref;
      if (statement === undefined || instrument === undefined || plan === undefined || isBroken(session))
        continue;
      const judged = known.get(plan) ?? judgedBy(plan);
      known.set(plan, judged);
      const covered = new Set(instrument.statements.filter(isUncertainty).map(({ metric }) => metric?.ref));
      const open = [...judged].filter((metric) => !isCovered(metric, covered, new Set()));
      if (open.length === 0) continue;
      const more = open.length > MOST_NAMED ? [`${open.length - MOST_NAMED} more`] : [];
      const names = [...open.slice(0, MOST_NAMED).map(({ name }) => code(name)), ...more];
      report({
        message: `${quoted(instrument.name)} does not say how exact ${listed(names, "and")} ${open.length === 1 ? "is" : "are"}, which the plan judges. If its maker tells, write it there: ${code("reads carry within 2 m random")}.`,
        node: statement,
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target start-direction within ±3°
    success average smash-factor at least 1.3
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

instrument "Bay unit" {
  coverage 95 %
  reads club-speed within 1 mph random
  reads ball-speed within 1 mph random
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  «instrument "Bay unit"»
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target smash-factor at least 1.3
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

instrument "Bay unit" {
  coverage 95 %
  reads club-speed within 1 mph random
  reads ball-speed within 1 mph random
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  instrument "Bay unit"
}`,
});

function judgedBy(plan: Plan): ReadonlySet<Metric> {
  const judged = new Set<Metric>();
  const seen = new Set<AstNode>();
  for (const block of plan.statements.filter(isBlock)) collect(block, judged, seen);
  return judged;
}

/** The metrics that are held against amounts, here and in the drills and windows that are named. */
function collect(part: AstNode, into: Set<Metric>, seen: Set<AstNode>): void {
  if (seen.has(part)) return;
  seen.add(part);
  for (const node of AstUtils.streamAst(part)) {
    if (AstUtils.getContainerOfType(node, isLeaveOut) !== undefined) continue;
    const metrics =
      isNumberTest(node) || isStatisticCriterion(node) || isChangeCriterion(node)
        ? [node.metric?.ref]
        : isEllipseCriterion(node)
          ? [node.first?.ref, node.second?.ref]
          : [];
    for (const metric of metrics)
      if (metric !== undefined && !metric.statements.some(isEstimated)) into.add(metric);
    const named = isDrillUse(node) ? node.drill?.ref : isWindowTest(node) ? node.window?.ref : undefined;
    if (named !== undefined) collect(named, into, seen);
  }
}

/** Whether its readings are told to be exact or not, or those are that it is computed from. */
function isCovered(metric: Metric, covered: ReadonlySet<Metric | undefined>, above: Set<Metric>): boolean {
  if (covered.has(metric)) return true;
  const formula = metric.statements.find(isFormula);
  if (formula?.expression === undefined || above.has(metric)) return false;
  above.add(metric);
  return AstUtils.streamAst(formula.expression)
    .filter(isMetricOperand)
    .every(({ metric: { ref } }) => ref === undefined || isCovered(ref, covered, above));
}
