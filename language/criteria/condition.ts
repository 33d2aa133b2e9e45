/** Conditions in words, and what they ask about. Held against shots they are in `shared/condition.ts`. */
import type { Condition, ShotTest, Subject } from "../../shared/plan-model.ts";
import { writeBounds } from "../../shared/quantity.ts";

export {
  type Claim,
  claimOf,
  meets,
  type PlayerTraits,
  questionOf,
  type Readings,
  reading,
  type ShotQuestion,
} from "../../shared/condition.ts";

/** A condition as a plan says it: `club-path within ±2° and carry at least 150 yd or …`. */
export function writeCondition(condition: Condition): string {
  return condition.anyOf.map(({ allOf }) => allOf.map(writeTest).join(" and ")).join(" or ");
}

function writeTest(test: ShotTest): string {
  switch (test.kind) {
    case "number":
      return `${test.metric} ${writeBounds(test.bounds)}`;
    case "category":
      return `${test.metric} is ${test.categories.join(" or ")}`;
    case "window":
      return `${test.inside ? "inside" : "outside"} ${JSON.stringify(test.window)}`;
  }
}

/** The metrics a condition asks about, each once; those of all variants of its windows among them. */
export function metricsIn(condition: Condition): readonly string[] {
  return [...new Set(condition.anyOf.flatMap(({ allOf }) => allOf.flatMap(metricsOfTest)))];
}

function metricsOfTest(test: ShotTest): readonly string[] {
  return test.kind === "window"
    ? test.variants.flatMap(({ condition }) => metricsIn(condition))
    : [test.metric];
}

/** The metrics a subject names itself; those of `on target` are the targets'. */
export function metricsOfSubject(subject: Subject): readonly string[] {
  return subject.kind === "meeting" ? metricsIn(subject.condition) : [];
}
