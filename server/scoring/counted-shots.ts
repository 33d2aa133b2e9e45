/** The shots of one block as columns, so that every criterion reads a metric or a condition once for all shots. */

import type { Chances } from "../../language/criteria/chances.ts";
import { metricsIn, type PlayerTraits, questionOf, reading } from "../../language/criteria/condition.ts";
import type { CountedShots, StandardUncertainty } from "../../language/criteria/criterion.ts";
import type { Counted } from "../../language/criteria/required.ts";
import { both, type Truth } from "../../language/criteria/verdict.ts";
import type { Block, Condition, Metric, Statement } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";
import { chancesOf } from "./uncertainty/chances.ts";
import { countedQuestion } from "./uncertainty/counted-question.ts";
import {
  type ErrorsOf,
  EXACT,
  type ReadingErrors,
  systematicUncertainty,
} from "./uncertainty/reading-errors.ts";

/** One truth a shot. */
export type Truths = readonly Truth[];

/** A target or requirement, and how each shot stood to it. */
export interface StatementTruths {
  readonly statement: Statement;
  readonly truths: Truths;
}

/** What the report shows of a block, and what its criteria are given. */
export interface BlockColumns {
  readonly targets: readonly StatementTruths[];
  readonly requirements: readonly StatementTruths[];
  /**
   * For each shot whether it meets all targets; unknown throughout where the block has none. Requirements play no part
   * in it: see `required.ts` for what they do to criteria.
   */
  readonly onTarget: Truths;
  readonly forCriteria: CountedShots;
}

/** What holds for all shots of a session. */
export interface Frame {
  readonly player: PlayerTraits;
  readonly vocabulary: ReadonlyMap<string, Metric>;
  readonly errorsOf: ErrorsOf;
  readonly decisionLevel: number;
}

/** What is known around the shots. */
export type Surroundings = Pick<CountedShots, "swings" | "against">;

const NO_EFFORT = { all: 0, fullEffort: 0 };
const NO_SWINGS = { ...NO_EFFORT, unknownEffort: 0, toCome: NO_EFFORT };

/** Of shots that others are held against: nothing is asked around them. */
export const NO_SURROUNDINGS: Surroundings = {
  swings: { block: NO_SWINGS, session: NO_SWINGS },
  against: () => "there is nothing to hold it against",
};

export function columnsOf(
  block: Block,
  asked: number,
  shots: readonly Shot[],
  frame: Frame,
  surroundings: Surroundings,
): BlockColumns {
  const { player, vocabulary, errorsOf, decisionLevel } = frame;
  const truthsOf = (condition: Condition): Truths => {
    const isTrue = questionOf(condition, player);
    return shots.map((shot) => isTrue(shot));
  };
  const answered = (statements: readonly Statement[]): StatementTruths[] =>
    statements.map((statement) => ({ statement, truths: truthsOf(statement.condition) }));
  const together = (columns: readonly Truths[]): Truths => {
    const all: Truth[] = shots.map(() => true);
    for (const truths of columns)
      for (const [index, truth] of truths.entries()) all[index] = both(all[index], truth);
    return all;
  };

  const targets = answered(block.targets);
  const requirements = answered(block.requirements);
  const onTarget =
    targets.length === 0 ? shots.map(() => undefined) : together(targets.map(({ truths }) => truths));
  const admitted = together(requirements.map(({ truths }) => truths));
  const columns = new Map<string, readonly (number | undefined)[]>();
  const ofTarget = new Map<Counted["bound"], Chances | null>();

  const forCriteria: CountedShots = {
    asked,
    size: shots.length,
    hand: player.hand,
    clubs: shots.map(({ club }) => club),
    metric: (name) => vocabulary.get(name) ?? undeclared(name),
    values: (metric) => {
      const known = columns.get(metric) ?? shots.map(({ values }) => reading(values, metric));
      columns.set(metric, known);
      return known;
    },
    meeting: (subject) => (subject.kind === "on-target" ? onTarget : truthsOf(subject.condition)),
    metricsOf: (subject) =>
      subject.kind === "on-target" ? metricsOf(block.targets) : metricsIn(subject.condition),
    admitted,
    requiredMetrics: metricsOf(block.requirements),
    uncertainty: (metric) => {
      const errors = shots.map((shot) => errorsOf(metric, shot));
      return errors.every((each) => each === null) ? null : errors.map(standardUncertainty);
    },
    chances: (counted) => {
      if (errorsOf === EXACT) return null;
      const find = () => chancesOf(countedQuestion(counted, block, player), shots, frame);
      if (counted.subject.kind !== "on-target") return find();
      const known = ofTarget.get(counted.bound);
      const chances = known === undefined ? find() : known;
      ofTarget.set(counted.bound, chances);
      return chances;
    },
    decisionLevel,
    ...surroundings,
  };
  return { targets, requirements, onTarget, forCriteria };
}

function standardUncertainty(errors: ReadingErrors | null): StandardUncertainty {
  if (errors === null) return { random: 0, systematic: 0 };
  return { random: errors.random, systematic: systematicUncertainty(errors) };
}

function metricsOf(statements: readonly Statement[]): readonly string[] {
  return [...new Set(statements.flatMap(({ condition }) => metricsIn(condition)))];
}

/** A metric that nobody declared is shown as a plain number. */
function undeclared(name: string): Metric {
  return {
    name,
    dimension: "",
    unit: { symbol: "", factor: 1 },
    step: 0.01,
    directions: [],
    plausible: null,
    formula: null,
    categories: [],
    model: null,
  };
}
