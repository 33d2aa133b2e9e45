/** What conditions ask about. In words, and held against shots, they are in `shared/condition.ts`. */
import type { Condition, ShotTest, Subject } from "../../shared/plan-model.ts";

export {
  type Claim,
  claimOf,
  meets,
  type PlayerTraits,
  questionOf,
  type Readings,
  reading,
  type ShotQuestion,
  writeCondition,
} from "../../shared/condition.ts";

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
