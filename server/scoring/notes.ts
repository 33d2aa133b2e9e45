/** What a reader of the whole report should know, in sentences. */
import { metricsIn, writeCondition } from "../../language/criteria/condition.ts";
import { metricsReadBy } from "../../language/criteria/criteria.ts";
import { listed, percent, roundedPercent, shots as shotsInWords } from "../../language/criteria/wording.ts";
import type { Plan, ScoringInput } from "../../shared/plan-model.ts";
import type { BlockResult } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";
import type { SortedShots } from "./set-aside.ts";

export function notesOn(
  input: ScoringInput,
  data: SessionData,
  sorted: SortedShots,
  results: readonly BlockResult[],
): string[] {
  return [
    "Readings taken as exact: no instrument is stated.",
    ...handNotes(input),
    ...(data.shots.length === 0 ? ["The data holds no shots."] : metricNotes(input, data)),
    ...goalNotes(input.plan),
    ...doubtNotes(sorted),
    ...abilityNotes(input.plan, results),
  ];
}

function handNotes({ player }: ScoringInput): string[] {
  if (player.hand !== null) return [];
  return [`Player "${player.name}" has no hand stated: direction words are those of a right-hander.`];
}

/** Metrics that nobody declared, that no shot has, or that were computed. */
function metricNotes({ plan, metrics }: ScoringInput, data: SessionData): string[] {
  const known = new Map<string, number>();
  const derived = new Map<string, number>();
  for (const shot of data.shots) {
    for (const metric of Object.keys(shot.values)) known.set(metric, (known.get(metric) ?? 0) + 1);
    for (const metric of shot.derived) derived.set(metric, (derived.get(metric) ?? 0) + 1);
  }
  const notes: string[] = [];
  const needed = new Set(plan.needs);
  for (const metric of new Set([...plan.needs, ...metricsUsed(plan)])) {
    const isDeclared = metrics.has(metric);
    if (!isDeclared) notes.push(`The plan speaks of ${metric}, but no metric of this name is declared.`);
    else if (!known.has(metric))
      notes.push(
        `No shot has a reading of ${metric}, which the plan ${needed.has(metric) ? "needs" : "uses"}.`,
      );
    const computed = derived.get(metric) ?? 0;
    if (computed > 0) notes.push(`${metric} was computed from other readings for ${shotsInWords(computed)}.`);
  }
  return notes;
}

/** The metrics that targets, requirements, shots to leave out and goals of a plan read, in the order of the plan. */
function metricsUsed(plan: Plan): readonly string[] {
  return plan.blocks.flatMap(({ targets, requirements, leaveOut, success }) => [
    ...[...targets, ...requirements, ...leaveOut].flatMap(({ condition }) => metricsIn(condition)),
    ...success.flatMap(metricsReadBy),
  ]);
}

function goalNotes(plan: Plan): string[] {
  return plan.blocks
    .filter(({ targets, success }) => targets.length === 0 && success.some(isAboutTarget))
    .map(({ name }) => `Block "${name}" has no target, so no shot of it can be said to be on target.`);
}

function isAboutTarget(criterion: Plan["blocks"][number]["success"][number]): boolean {
  return "subject" in criterion && criterion.subject.kind === "on-target";
}

function doubtNotes({ blocks }: SortedShots): string[] {
  return blocks.flatMap(({ block, doubts }) =>
    doubts.map(({ statement, shots }) => {
      const kept = `${shotsInWords(shots)} ${shots === 1 ? "was" : "were"} kept`;
      return `Block "${block.name}": ${kept} because readings are missing to tell whether to leave out "${writeCondition(statement.condition)}".`;
    }),
  );
}

/**
 * That several verdicts about ability, each of which may be wrong, are less sure together. Each is right with a
 * probability of at least its confidence, so if they are independent all are with at least the product.
 */
function abilityNotes(plan: Plan, results: readonly BlockResult[]): string[] {
  const decided = new Set(
    results
      .flatMap(({ criteria }) => criteria)
      .filter(({ verdict }) => verdict === "met" || verdict === "missed")
      .map(({ id }) => id),
  );
  const confidences = plan.blocks
    .flatMap(({ success }) => success)
    .filter(({ id }) => decided.has(id))
    .map((criterion) => ("confidence" in criterion ? criterion.confidence : null))
    .filter((confidence) => confidence !== null);
  if (confidences.length < 2) return [];
  const levels = [...new Set(confidences)].sort((one, other) => one - other).map(percent);
  const together = confidences.reduce((product, confidence) => product * confidence, 1);
  const all = confidences.length === 2 ? "both" : `all ${confidences.length}`;
  return [
    `Each of the ${confidences.length} verdicts about ability, at ${listed(levels)} confidence, can be wrong on its own: the chance that ${all} are right may be no more than ${roundedPercent(together)}.`,
  ];
}
