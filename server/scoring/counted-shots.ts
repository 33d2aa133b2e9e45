/** The shots of one block as columns, so that every criterion reads a metric or a condition once for all shots. */
import { metricsIn, type PlayerTraits, questionOf, reading } from "../../language/criteria/condition.ts";
import type { Comparison, CountedShots, Swings } from "../../language/criteria/criterion.ts";
import { allOf, type Truth } from "../../language/criteria/verdict.ts";
import type { Against, Block, Condition, Metric, Statement } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";

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

/** What is known around a block. */
export interface Around {
  readonly player: PlayerTraits;
  readonly vocabulary: ReadonlyMap<string, Metric>;
  readonly swings: (block: Block) => { readonly block: Swings; readonly session: Swings };
  readonly against: (block: Block) => (against: Against, metric: string) => Comparison | string;
}

export function columnsOf(block: Block, asked: number, shots: readonly Shot[], around: Around): BlockColumns {
  const { player, vocabulary } = around;
  const truthsOf = (condition: Condition): Truths => {
    const isTrue = questionOf(condition, player);
    return shots.map((shot) => isTrue(shot));
  };
  const answered = (statements: readonly Statement[]): StatementTruths[] =>
    statements.map((statement) => ({ statement, truths: truthsOf(statement.condition) }));
  const together = (columns: readonly Truths[]): Truths =>
    shots.map((_, index) => allOf(columns.map((truths) => truths[index])));

  const targets = answered(block.targets);
  const requirements = answered(block.requirements);
  const onTarget =
    targets.length === 0 ? shots.map(() => undefined) : together(targets.map(({ truths }) => truths));
  const admitted = together(requirements.map(({ truths }) => truths));
  const columns = new Map<string, readonly (number | undefined)[]>();

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
    uncertainty: () => null,
    decisionLevel: 0.95,
    swings: around.swings(block),
    against: around.against(block),
  };
  return { targets, requirements, onTarget, forCriteria };
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
