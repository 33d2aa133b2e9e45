import {
  type Expression,
  isBinaryExpression,
  isColumn,
  isEstimated,
  isFormula,
  isMetricColumn,
  isMetricOperand,
  isNeeds,
  isSessionData,
  isSessionPlan,
  type Metric,
} from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, listed, quoted } from "./wording.ts";

/** Metrics that geometry gives where these are read. */
const GEOMETRY: Readonly<Record<string, readonly string[]>> = {
  curve: ["carry", "offline", "start-direction"],
  offline: ["carry", "curve", "start-direction"],
  "spin-loft": ["dynamic-loft", "face-angle", "attack-angle", "club-path"],
};

/** A metric that the plan needs and no table holds. */
export const check = defineCheck({
  on: ["Session"],
  reason:
    "What a table does not hold cannot be judged, and is better missed before the practice than after it.",
  run(session, { report }) {
    const reference = session.statements.find(isSessionPlan);
    const plan = reference?.plan?.ref;
    const data = session.statements.filter(isSessionData);
    const sources = data.map(({ source }) => source?.ref);
    if (plan === undefined || data.length === 0 || sources.includes(undefined)) return;
    const read = new Set(
      sources.flatMap((source) =>
        (source?.statements ?? [])
          .filter(isColumn)
          .flatMap(({ content }) => (isMetricColumn(content) ? [content.metric?.ref?.name] : [])),
      ),
    );
    const needed = plan.statements
      .filter(isNeeds)
      .flatMap(({ metrics }) => metrics.flatMap(({ ref }) => ref ?? []));
    const missing = needed.filter((metric) => !isKnown(metric, read, new Set()));
    if (missing.length === 0) return;
    const names = [...new Set(missing.map(({ name }) => code(name)))];
    report({
      message: `The plan needs ${listed(names, "and")}, and no column of ${listed([...new Set(sources.map((source) => quoted(source?.name ?? "")))], "or")} is read as ${names.length === 1 ? "that" : "these"}. Add the column to the source, or measure with a device that tells it.`,
      node: reference ?? session,
    });
  },
  reporting: `
plan "Gate" {
  needs carry, club-path, roll
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
  column "Total" is total in m
}

session "First" {
  «plan "Gate"»
  player "P-1"
  data "first.csv" from "Bay"
}`,
  silent: `
plan "Gate" {
  needs carry, roll
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
  column "Total" is total in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
}`,
});

/** Whether a metric is read, or follows from what is. Names and estimates may follow from more than can be seen here. */
function isKnown(metric: Metric, read: ReadonlySet<string | undefined>, above: Set<Metric>): boolean {
  if (read.has(metric.name) || metric.categories.length > 0 || metric.statements.some(isEstimated))
    return true;
  if (above.has(metric)) return false;
  above.add(metric);
  if (GEOMETRY[metric.name]?.every((name) => read.has(name))) return true;
  const formula = metric.statements.find(isFormula);
  return formula !== undefined && follows(formula.expression, read, above);
}

function follows(expression: Expression, read: ReadonlySet<string | undefined>, above: Set<Metric>): boolean {
  if (isBinaryExpression(expression)) {
    return follows(expression.left, read, above) && follows(expression.right, read, above);
  }
  if (!isMetricOperand(expression)) return true;
  const metric = expression.metric?.ref;
  return metric === undefined || isKnown(metric, read, new Set(above));
}
