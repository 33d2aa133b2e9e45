import { AstUtils } from "langium";
import { once } from "../../shared/once.ts";
import {
  type Finding,
  isEstimated,
  isFinding,
  isFormula,
  isLeaveOut,
  isMetricOperand,
  isNeeds,
  isSession,
  isSessionInstrument,
  isSessionPlan,
  isUncertainty,
  type LeaveOut,
  type Metric,
  type Plan,
} from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck } from "./check.ts";
import { reachedFrom } from "./reached.ts";
import { code, listed, quoted } from "./wording.ts";

/** More names in a message are a list to read. */
const MOST_NAMED = 4;

/** An instrument that does not say how exact the readings are that the plan judges. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Readings of which nobody says how far they may be off are taken as exact, and their verdicts as certain.",
  run(root, context) {
    const { isBroken, report } = context;
    const judgedBy = once((plan: Plan) => judgedMetrics(plan, context));
    for (const session of root.declarations.filter(isSession)) {
      const statement = session.statements.find(isSessionInstrument);
      const instrument = statement?.instrument?.ref;
      const plan = session.statements.find(isSessionPlan)?.plan?.ref;
      if (statement === undefined || instrument === undefined || plan === undefined || isBroken(session))
        continue;
      const told = instrument.statements.filter(isUncertainty).map(({ metric }) => metric?.ref);
      const covered = new Map(told.map((metric) => [metric, true]));
      const open = [...judgedBy(plan)].filter((metric) => !isCovered(metric, covered));
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

/** The metrics that a plan's blocks hold against amounts. Of shots that are left out nothing is judged, nor of findings. */
function judgedMetrics(plan: Plan, context: CheckContext): ReadonlySet<Metric> {
  const metrics = reachedFrom(plan, context).uses.flatMap(({ node, metric: { ref } }) => {
    const isJudged = !isNeeds(node) && AstUtils.getContainerOfType(node, isLeftOutOrFound) === undefined;
    return isJudged && ref !== undefined && !ref.statements.some(isEstimated) ? [ref] : [];
  });
  return new Set(metrics);
}

function isLeftOutOrFound(node: unknown): node is LeaveOut | Finding {
  return isLeaveOut(node) || isFinding(node);
}

/**
 * Whether its readings are told to be exact or not, or those are that it is computed from.
 * @param known what is known already; a metric that is computed from itself counts as not told. Linear in the formulas.
 */
function isCovered(metric: Metric, known: Map<Metric | undefined, boolean>): boolean {
  const answer = known.get(metric);
  if (answer !== undefined) return answer;
  known.set(metric, false);
  const formula = metric.statements.find(isFormula);
  const isTold =
    formula?.expression !== undefined &&
    AstUtils.streamAst(formula.expression)
      .filter(isMetricOperand)
      .every(({ metric: { ref } }) => ref === undefined || isCovered(ref, known));
  known.set(metric, isTold);
  return isTold;
}
