/** The picture that answers the question of a goal; null where words say it all. */
import { type PlayerTraits, questionOf } from "../../shared/condition.ts";
import { intervalOf } from "../../shared/interval.ts";
import type {
  ChangeCriterion,
  Condition,
  CountCriterion,
  Criterion,
  EllipseCriterion,
  StatisticCriterion,
  Subject,
} from "../../shared/plan-model.ts";
import { writeBounds } from "../../shared/quantity.ts";
import type { CriterionResult } from "../../shared/score-report.ts";
import type { Shot } from "../../shared/session-data.ts";
import { meanLimits, meanLimitsTwoSided } from "../../shared/statistics/student.ts";
import { sampleOf } from "../../shared/statistics/summary.ts";
import { allOf, anyOf, not } from "../../shared/truth.ts";
import { valuesOf } from "./counted.ts";
import type { Markup } from "./html/markup.ts";
import { onlyNumber } from "./one-number.ts";
import type { Shown } from "./pictures/axis.ts";
import { cloudPicture } from "./pictures/cloud.ts";
import { type IntervalRow, intervals } from "./pictures/intervals.ts";
import { runningCount } from "./pictures/running-count.ts";
import { toleranceStrip } from "./pictures/tolerance-strip.ts";
import type { ReportedSession } from "./reported-session.ts";

/** A block as pictures need it. */
export interface PicturedBlock {
  readonly name: string;
  readonly session: ReportedSession;
  /** The shots that counted, by block. */
  readonly counted: ReadonlyMap<string, readonly Shot[]>;
}

export function goalPicture(goal: Criterion, result: CriterionResult, block: PicturedBlock): Markup | null {
  const shots = shotsIn(block);
  switch (goal.kind) {
    case "count":
      return countPicture(goal, block);
    case "share":
    case "run":
      return goal.subject.kind === "meeting" ? stripOf(goal.subject.condition, shots, block) : null;
    case "statistic":
      return statisticPicture(goal, result, block);
    case "ellipse":
      return landingPicture(goal, block);
    case "change":
      return changePicture(goal, result, block);
    case "load":
    case "group":
      return null;
  }
}

/** Every shot against a condition that is about one number; null for others. */
export function stripOf(condition: Condition, shots: readonly Shot[], block: PicturedBlock): Markup | null {
  const test = onlyNumber(condition);
  const shown = test === null ? null : shownAs(test.metric, block);
  if (test === null || shown === null) return null;
  const isHit = questionOf(condition, traitsOf(block));
  return toleranceStrip(
    shots.flatMap((shot) => {
      const value = shot.values[test.metric];
      return value === undefined ? [] : { value, isHit: isHit(shot) === true };
    }),
    intervalOf(test.bounds, shown.hand),
    shown,
    `${test.metric} ${writeBounds(test.bounds)}`,
  );
}

/** Counts as the goal does: a shot that fails a requirement is no hit for "at least" and counts for "at most". */
function countPicture({ bound, count, outOf, subject }: CountCriterion, block: PicturedBlock): Markup | null {
  const areMet = (conditions: readonly Condition[]) => {
    const questions = conditions.map((condition) => questionOf(condition, traitsOf(block)));
    return (shot: Shot) => allOf(questions.map((question) => question(shot)));
  };
  const isWanted = areMet(conditionsOf(subject, block));
  const isAdmitted = areMet((planOf(block)?.requirements ?? []).map(({ condition }) => condition));
  const counts = shotsIn(block).map((shot) =>
    bound === "least"
      ? allOf([isWanted(shot), isAdmitted(shot)])
      : anyOf([isWanted(shot), not(isAdmitted(shot))]),
  );
  const asked = planOf(block)?.shots.reduce((sum, shots) => sum + shots.count, 0) ?? 0;
  return runningCount({ counts, bound, needed: count, outOf: outOf ?? Math.max(asked, counts.length) });
}

function conditionsOf(subject: Subject, block: PicturedBlock): Condition[] {
  if (subject.kind === "meeting") return [subject.condition];
  return (planOf(block)?.targets ?? []).map(({ condition }) => condition);
}

/** Averages only have limits that can be drawn over shots; other numbers are shown with their shots. */
function statisticPicture(
  { statistic, metric, bounds, confidence }: StatisticCriterion,
  { evidence }: CriterionResult,
  block: PicturedBlock,
): Markup | null {
  const shown = shownAs(metric, block);
  const isPlace = statistic.kind !== "spread" && statistic.kind !== "span";
  if (shown === null || evidence.value === null || !isPlace) return null;
  const shots = valuesOf(shotsIn(block), metric);
  const { interval } = evidence;
  const limits =
    interval === null
      ? null
      : { low: interval.low ?? Number.NEGATIVE_INFINITY, high: interval.high ?? Number.POSITIVE_INFINITY };
  const range = confidence === null ? "" : ` with its interval at ${percent(confidence)} confidence`;
  return intervals({
    rows: [{ label: "", value: evidence.value, limits, shots }],
    band: intervalOf(bounds, shown.hand),
    shown,
    caption: `The ${statistic.kind}${range}, over the shots.`,
  });
}

const PICTURED_CONFIDENCE = 0.9;

function changePicture(
  { metric, against, confidence, statistic }: ChangeCriterion,
  { evidence }: CriterionResult,
  block: PicturedBlock,
): Markup | null {
  const shown = shownAs(metric, block);
  const { comparison } = evidence;
  if (shown === null || comparison?.before == null || comparison.after === null) return null;
  if (statistic.kind === "spread" || statistic.kind === "span") return null;
  const before = against.kind === "block" ? (block.counted.get(against.block) ?? []) : [];
  const row = (label: string, value: number, shots: readonly Shot[]): IntervalRow => {
    const values = valuesOf(shots, metric);
    const sample = statistic.kind === "average" ? sampleOf(values) : undefined;
    const limits =
      sample === undefined
        ? null
        : confidence === null
          ? meanLimitsTwoSided(sample, PICTURED_CONFIDENCE)
          : meanLimits(sample, confidence);
    return { label, value, limits: limits ?? null, shots: values };
  };
  const level = confidence === null ? `${percent(PICTURED_CONFIDENCE)}` : percent(confidence);
  return intervals({
    rows: [row("before", comparison.before, before), row("after", comparison.after, shotsIn(block))],
    band: null,
    shown,
    caption: `The ${statistic.kind}s with their intervals at ${level} confidence, over the shots.`,
  });
}

function landingPicture(
  { metrics: [one, other], share }: EllipseCriterion,
  block: PicturedBlock,
): Markup | null {
  const [x, y] = [shownAs(one, block), shownAs(other, block)];
  if (x === null || y === null) return null;
  const points = pointsOf(shotsIn(block), one, other);
  return cloudPicture({
    title: block.name,
    points,
    x,
    y,
    share,
    with: [],
    alternative: `${points.length} shots over ${one} and ${other}, with their own ${percent(share)} ellipse.`,
  });
}

/** Shots that have both readings. */
export function pointsOf(shots: readonly Shot[], one: string, other: string): { x: number; y: number }[] {
  return shots.flatMap(({ values }) => {
    const [x, y] = [values[one], values[other]];
    return x === undefined || y === undefined ? [] : { x, y };
  });
}

export function shownAs(metric: string, { session: { input } }: PicturedBlock): Shown | null {
  const known = input.metrics.get(metric);
  return known === undefined ? null : { metric: known, hand: input.player.hand ?? "right" };
}

function shotsIn({ counted, name }: PicturedBlock): readonly Shot[] {
  return counted.get(name) ?? [];
}

function planOf({ name, session }: PicturedBlock) {
  return session.input.plan.blocks.find((block) => block.name === name);
}

function traitsOf({ session: { input } }: PicturedBlock): PlayerTraits {
  return { hand: input.player.hand ?? "right", level: input.player.level };
}

function percent(share: number): string {
  return `${Number((100 * share).toPrecision(3))} %`;
}
