/** One block: how its shots stood to its targets and requirements, and the verdicts on its goals. */
import { metricsIn } from "../../language/criteria/condition.ts";
import { evaluate, metricsReadBy } from "../../language/criteria/criteria.ts";
import type { CountedShots } from "../../language/criteria/criterion.ts";
import { verdictOfAll } from "../../language/criteria/verdict.ts";
import type { Criterion } from "../../shared/plan-model.ts";
import type { BlockResult, ConditionResult, CriterionResult, Tally } from "../../shared/score-report.ts";
import type { Row, Shot } from "../../shared/session-data.ts";
import { type Around, columnsOf, type StatementTruths, type Truths } from "./counted-shots.ts";
import type { BlockShots } from "./set-aside.ts";

/** From this share of a block's shots on, leaving shots out deserves a word beside every verdict. */
const MUCH_LEFT_OUT = 0.2;

export function scoreBlock(blockShots: BlockShots, around: Around): BlockResult {
  const { block, asked, hit, counted } = blockShots;
  const { targets, requirements, onTarget, forCriteria } = columnsOf(block, asked, counted, around);
  const cautions = leftOutCautions(blockShots);
  const criteria = block.success.map((criterion) =>
    scoreCriterion(criterion, forCriteria, counted, cautions),
  );
  return {
    name: block.name,
    kind: block.kind,
    location: block.location,
    verdict: verdictOfAll(criteria.map(({ verdict }) => verdict)),
    shots: { asked, hit, counted: counted.length },
    onTarget: block.targets.length === 0 ? null : tallyOf(onTarget),
    targets: targets.map((target) => conditionResult(target, counted)),
    requirements: requirements.map((requirement) => conditionResult(requirement, counted)),
    criteria,
    findings: [],
  };
}

function scoreCriterion(
  criterion: Criterion,
  forCriteria: CountedShots,
  counted: readonly Shot[],
  cautions: readonly string[],
): CriterionResult {
  const { id, kind, text, location } = criterion;
  const { verdict, deciding, comparison = null, parts: _, ...outcome } = evaluate(criterion, forCriteria);
  const evidence = {
    ...outcome,
    comparison,
    isEstimate: false,
    rows: rowsAt(counted, deciding),
    metrics: decidingMetrics(criterion, forCriteria),
    cautions: [...outcome.cautions, ...cautions],
  };
  return { id, kind, text, location, verdict, evidence, parts: [] };
}

function conditionResult({ statement, truths }: StatementTruths, counted: readonly Shot[]): ConditionResult {
  return {
    text: statement.text,
    location: statement.location,
    tally: tallyOf(truths),
    misses: counted.filter((_, index) => truths[index] === false).map(({ row }) => row),
    metrics: [...new Set(metricsIn(statement.condition))],
  };
}

/** What the criterion reads itself, what its targets read, and what the block requires. */
function decidingMetrics(criterion: Criterion, shots: CountedShots): string[] {
  const ofSubject = "subject" in criterion ? shots.metricsOf(criterion.subject) : [];
  return [...new Set([...metricsReadBy(criterion), ...ofSubject, ...shots.requiredMetrics])];
}

function rowsAt(counted: readonly Shot[], indices: readonly number[]): Row[] {
  return indices.map((index) => counted[index]?.row).filter((row) => row !== undefined);
}

function tallyOf(truths: Truths): Tally {
  const hits = truths.filter((truth) => truth === true).length;
  const misses = truths.filter((truth) => truth === false).length;
  return { hits, misses, unknown: truths.length - hits - misses };
}

function leftOutCautions({ hit, leftOut }: BlockShots): readonly string[] {
  return leftOut > 0 && leftOut / hit >= MUCH_LEFT_OUT
    ? [`${leftOut} of the block's ${hit} shots ${leftOut === 1 ? "was" : "were"} set aside before scoring.`]
    : [];
}
