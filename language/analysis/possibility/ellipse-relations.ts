/** How the sizes of an ellipse hang together. */
import type { Criterion, EllipseCriterion, Expression } from "../../../shared/plan-model.ts";
import type { Relation } from "../reasoning/relation.ts";

/** Never below zero. */
export const SIZE = { low: 0, high: Number.POSITIVE_INFINITY };

/**
 * The name of a size as a number. The order of the two metrics does not matter; with a confidence the ellipse is the
 * player's, and not that of the shots.
 */
export function nameOfSize({ measure, share, metrics, confidence }: Measured): string {
  return JSON.stringify([measure, share, metrics.toSorted(), confidence !== null]);
}

type Measured = Pick<EllipseCriterion, "measure" | "share" | "metrics" | "confidence">;

/** Between the sizes of each ellipse that goals are about. */
export function relationsOfEllipses(goals: readonly Criterion[]): Relation[] {
  const ellipses = goals.filter((goal) => goal.kind === "ellipse");
  const each = new Map(ellipses.map((goal) => [nameOfSize({ ...goal, measure: "area" }), goal]));
  return [...each.values()].flatMap(relationsOf);
}

function relationsOf(ellipse: EllipseCriterion): Relation[] {
  const size = (measure: EllipseCriterion["measure"]) => nameOfSize({ ...ellipse, measure });
  const [major, minor, area] = [size("major axis"), size("minor axis"), size("area")];
  return [
    {
      expression: operation("-", number(major), number(minor)),
      range: SIZE,
      slack: 0,
      says: "the major axis is the longer one",
      metrics: [major, minor],
    },
    {
      expression: operation(
        "-",
        operation("*", { kind: "number", value: Math.PI / 4 }, operation("*", number(major), number(minor))),
        number(area),
      ),
      range: { low: 0, high: 0 },
      slack: 0,
      says: "the area is π/4 × major axis × minor axis",
      metrics: [major, minor, area],
    },
  ];
}

function number(name: string): Expression {
  return { kind: "metric", name };
}

function operation(operator: "-" | "*", left: Expression, right: Expression): Expression {
  return { kind: "operation", operator, left, right };
}
