/** Whether a shot counts for a criterion, to be asked with other readings than the shot has. */
import { type PlayerTraits, questionOf, type ShotQuestion } from "../../../language/criteria/condition.ts";
import type { Counted } from "../../../language/criteria/required.ts";
import { allOf, anyOf, not } from "../../../language/criteria/verdict.ts";
import type { Block, Condition, Statement } from "../../../shared/plan-model.ts";

/** What is asked of every shot. */
export interface Asked {
  readonly question: ShotQuestion;
  /** The conditions that the question is made of. */
  readonly conditions: readonly Condition[];
}

/** The same answers as those of `countedTruths`. */
export function countedQuestion(
  { subject, bound }: Counted,
  { targets, requirements }: Block,
  player: PlayerTraits,
): Asked {
  const conditionsOf = (statements: readonly Statement[]) => statements.map(({ condition }) => condition);
  const wanted = subject.kind === "on-target" ? conditionsOf(targets) : [subject.condition];
  const required = conditionsOf(requirements);
  const areMet = (conditions: readonly Condition[]): ShotQuestion => {
    const questions = conditions.map((condition) => questionOf(condition, player));
    return (shot) => allOf(questions.map((question) => question(shot)));
  };
  const isWanted: ShotQuestion = wanted.length === 0 ? () => undefined : areMet(wanted);
  const isAdmitted = areMet(required);
  return {
    conditions: [...wanted, ...required],
    question:
      bound === "least"
        ? (shot) => allOf([isWanted(shot), isAdmitted(shot)])
        : (shot) => anyOf([isWanted(shot), not(isAdmitted(shot))]),
  };
}
