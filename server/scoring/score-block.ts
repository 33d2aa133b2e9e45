/** One block: how its shots stood to its targets and requirements, and the verdicts on its goals. */
import { metricsIn } from "../../language/criteria/condition.ts";
import { evaluate } from "../../language/criteria/criteria.ts";
import { verdictOfAll } from "../../language/criteria/verdict.ts";
import type { BlockResult, ConditionResult, FindingResult, Tally } from "../../shared/score-report.ts";
import type { Shot } from "../../shared/session-data.ts";
import type { BlockColumns, Frame, StatementTruths, Truths } from "./counted-shots.ts";
import { criterionResult } from "./criterion-result.ts";
import { estimatesAmong } from "./estimates.ts";
import type { BlockShots } from "./set-aside.ts";

/** From this share of a block's shots on, leaving shots out deserves a word beside every verdict. */
const MUCH_LEFT_OUT = 0.2;

export function scoreBlock(
  blockShots: BlockShots,
  { targets, requirements, onTarget, forCriteria }: BlockColumns,
  { vocabulary }: Frame,
  findings: readonly FindingResult[],
): BlockResult {
  const { block, asked, given, counted } = blockShots;
  const estimates = estimatesAmong(vocabulary, counted);
  const on = { counted, forCriteria, estimates, cautions: leftOutCautions(blockShots) };
  const criteria = block.success.map((criterion) =>
    criterionResult(criterion, evaluate(criterion, forCriteria), on),
  );
  return {
    name: block.name,
    kind: block.kind,
    location: block.location,
    verdict: verdictOfAll(criteria.map(({ verdict }) => verdict)),
    shots: { asked, hit: given.length, counted: counted.length },
    onTarget: block.targets.length === 0 ? null : tallyOf(onTarget),
    targets: targets.map((target) => conditionResult(target, counted)),
    requirements: requirements.map((requirement) => conditionResult(requirement, counted)),
    criteria,
    findings: [...findings],
  };
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

function tallyOf(truths: Truths): Tally {
  const hits = truths.filter((truth) => truth === true).length;
  const misses = truths.filter((truth) => truth === false).length;
  return { hits, misses, unknown: truths.length - hits - misses };
}

function leftOutCautions({ given, leftOut }: BlockShots): readonly string[] {
  return leftOut > 0 && leftOut / given.length >= MUCH_LEFT_OUT
    ? [
        `${leftOut} of the block's ${given.length} shots ${leftOut === 1 ? "was" : "were"} set aside before scoring.`,
      ]
    : [];
}
