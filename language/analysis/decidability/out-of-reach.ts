/** Sentences about ability that the shots asked for cannot show, or cannot refute, whatever the result. */

import { once } from "../../../shared/once.ts";
import type { Criterion } from "../../../shared/plan-model.ts";
import {
  firstThatDecides,
  firstThatDecidesEvenOrOdd,
  MOST_SHOTS,
} from "../../../shared/statistics/shots-to-decide.ts";
import { percent, shots as shotsInWords } from "../../criteria/wording.ts";
import { everyGoal, everyGoalAsJudged, isOpen, shotsAsked } from "../possibility/goals.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { placeInWords } from "../words.ts";
import { type AbilityGoal, type Counts, decisionsInReach } from "./reach.ts";

export interface OutOfReach {
  readonly goal: AbilityGoal;
  /** The verdict that cannot be. */
  readonly verdict: "met" | "missed";
  readonly remark: Remark;
  /** The fewest shots of the block with which it can; undefined where none do, or where they are not the reason. */
  readonly shots: number | undefined;
  /** The highest round confidence below the stated one at which it can. */
  readonly confidence: number | undefined;
}

/** Confidences that people state. */
const ROUND = [0.99, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.6, 0.5];

/** Some twenty questions for each goal that is out of reach, one for each other. */
export const outOfReach = once((subject: BlockInPlan): OutOfReach[] => {
  const asked = shotsAsked(subject);
  if (asked === 0 || asked > MOST_SHOTS || isOpen(subject)) return [];
  const judged = everyGoalAsJudged(subject.block.success).map(confidenceOf);
  return everyGoal(subject.block.success).flatMap((goal, place) => {
    if (!("confidence" in goal) || goal.confidence === null) return [];
    const baseline = baselineOf(goal, subject);
    if (baseline === undefined) return [];
    const confidence = { stated: goal.confidence, judged: judged[place] ?? goal.confidence };
    const found = whatIsMissing(goal, confidence, { shots: asked, baseline }, subject);
    return found === undefined ? [] : [found];
  });
});

function confidenceOf(goal: Criterion): number | undefined {
  return "confidence" in goal ? (goal.confidence ?? undefined) : undefined;
}

/** The confidence of a goal as it is written, and as it is judged in a group that shares the error of its goals. */
interface Confidence {
  readonly stated: number;
  readonly judged: number;
}

/** How many shots of the same plan a change is held against; undefined where that is not known. */
export function baselineOf(goal: AbilityGoal, { others, block }: BlockInPlan): number | undefined {
  if (goal.kind !== "change") return 0;
  const { against } = goal;
  if (against.kind === "usual") return undefined;
  // Earlier sessions are of the same block.
  const baseline = against.kind === "block" ? others().get(against.block) : block;
  if (baseline === undefined || baseline.shots.length === 0 || baseline.shots.some(({ open }) => open))
    return undefined;
  return baseline.shots.reduce((sum, { count }) => sum + count, 0);
}

function whatIsMissing(
  goal: AbilityGoal,
  confidence: Confidence,
  counts: Counts,
  subject: BlockInPlan,
): OutOfReach | undefined {
  const { vocabulary } = subject;
  const { stated, judged } = confidence;
  if (!isConfidence(stated)) return undefined;
  const shareOfError = (1 - judged) / (1 - stated);
  const inReach = (verdict: "met" | "missed", at: Counts, level: number) =>
    decisionsInReach(goal, at, level, vocabulary)?.has(verdict) ?? true;
  const verdict = (["met", "missed"] as const).find((decision) => !inReach(decision, counts, judged));
  if (verdict === undefined) return undefined;
  const shots = firstThat(goal)(counts.shots + 1, MOST_SHOTS, (number) =>
    inReach(verdict, { ...counts, shots: number }, judged),
  );
  const lower = ROUND.find(
    (level) => level < stated && inReach(verdict, counts, 1 - (1 - level) * shareOfError),
  );
  const remark = {
    message: message(goal, verdict, counts, { confidence, shots, lower }, subject),
    location: goal.location,
    related: [],
  };
  return { goal, verdict, remark, shots, confidence: lower };
}

/** How the fewest shots that decide are found: of spans, which look at the middle of the shots, among even and odd numbers. */
function firstThat(goal: AbilityGoal): typeof firstThatDecides {
  return goal.kind === "statistic" && goal.statistic.kind === "span"
    ? firstThatDecidesEvenOrOdd
    : firstThatDecides;
}

function isConfidence(confidence: number): boolean {
  return confidence >= 0.5 && confidence < 1;
}

interface Ways {
  readonly confidence: Confidence;
  readonly shots: number | undefined;
  readonly lower: number | undefined;
}

function message(
  goal: AbilityGoal,
  verdict: "met" | "missed",
  counts: Counts,
  { confidence, shots, lower }: Ways,
  subject: BlockInPlan,
): string {
  const line = subject.isOwn(goal.location)
    ? "this"
    : `the goal in ${placeInWords(goal.location, subject.block.location)}`;
  const { stated, judged } = confidence;
  const group =
    judged === stated ? "" : ` (judged at ${percent(judged)}, since not all goals of its group are needed)`;
  const at = `At ${percent(stated)} confidence${group}, no result of ${shotsInWords(counts.shots)}`;
  const against = goal.kind === "change" ? ` against ${shotsInWords(counts.baseline)} before` : "";
  const claim =
    verdict === "met"
      ? `${at}${against} can show ${line}`
      : `${at}${against} can show that ${line} is missed`;
  const ways = [
    shots === undefined ? null : `it takes at least ${shotsInWords(shots)}`,
    lower === undefined ? null : `${percent(lower)} confidence can be reached with ${counts.shots}`,
  ].filter((way) => way !== null);
  if (ways.length > 0) return `${claim}: ${ways.join("; ")}.`;
  return goal.kind === "change"
    ? `${claim}. The block before needs more shots too.`
    : `${claim}, and no number of shots can. ${isAtMost(goal) ? "Allow a little more" : "Ask for a little less"}.`;
}

function isAtMost(goal: AbilityGoal): boolean {
  return goal.kind === "share" && goal.bound === "most";
}
