/** Statements and goals as parts to compare: what they are about, and how wide they are. */
import { intervalOf } from "../../../shared/interval.ts";
import type { Bounds, Condition, Criterion, Statement, Subject } from "../../../shared/plan-model.ts";
import { onlyNumber } from "../one-number.ts";
import type { Part } from "./pair.ts";
import { meaningOf } from "./same.ts";

/** A condition on one number is about its metric, a goal about what it counts or sums up. */
export function partOf(part: Statement | Criterion): Part {
  const width = widthOf(part);
  return {
    text: part.text,
    location: part.location,
    meaning: meaningOf(part),
    about: "condition" in part ? aboutCondition(part.condition) : aboutGoal(part),
    width,
    effectFrom: (old) => {
      const before = old.width ?? null;
      if (before === null || width === null || Math.abs(width - before) < 1e-12) return null;
      return width > before ? "wider" : "narrower";
    },
  };
}

function aboutCondition({ anyOf }: Condition): string {
  const names = anyOf.flatMap(({ allOf }) =>
    allOf.map((test) => (test.kind === "window" ? test.window : test.metric)),
  );
  return [...new Set(names)].sort().join(" ");
}

function aboutSubject(subject: Subject): string {
  return subject.kind === "on-target" ? "on target" : aboutCondition(subject.condition);
}

function aboutGoal(goal: Criterion): string {
  switch (goal.kind) {
    case "count":
    case "share":
    case "run":
      return `${goal.kind} ${aboutSubject(goal.subject)}`;
    case "statistic":
      return `${goal.statistic.kind} ${goal.metric}`;
    case "change":
      return `change of ${goal.metric}`;
    case "ellipse":
      return `ellipse ${goal.metrics.join(" ")}`;
    case "load":
      return `load ${goal.over} ${goal.fullEffort}`;
    case "group":
      return "group";
  }
}

/** Of a tolerance with two ends, how far they are apart, SI; null for others. */
function widthOf(part: Statement | Criterion): number | null {
  const bounds = "condition" in part ? (onlyNumber(part.condition)?.bounds ?? null) : boundsOf(part);
  if (bounds === null) return null;
  const { low, high } = intervalOf(bounds, "right"); // the other hand mirrors it, and has the same width
  return Number.isFinite(high - low) ? high - low : null;
}

function boundsOf(goal: Criterion): Bounds | null {
  if (goal.kind === "statistic" || goal.kind === "ellipse") return goal.bounds;
  if (!("subject" in goal) || goal.subject.kind !== "meeting") return null;
  return onlyNumber(goal.subject.condition)?.bounds ?? null;
}
