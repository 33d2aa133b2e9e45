/** Sentences about ability that are seldom shown even when they are comfortably true. */

import { once, onceFor } from "../../../shared/once.ts";
import type { Player } from "../../../shared/plan-model.ts";
import { fewestShotsFor } from "../../../shared/statistics/chances.ts";
import { MOST_SHOTS } from "../../../shared/statistics/shots-to-decide.ts";
import { shots as shotsInWords } from "../../criteria/wording.ts";
import { everyGoalAsJudged, isOpen, shotsAsked } from "../possibility/goals.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { placeInWords } from "../words.ts";
import { type AssumedSpread, spreadInPlan, usualSpread } from "./assumed-spread.ts";
import { type Comfortable, comfortable } from "./chances.ts";
import { baselineOf } from "./out-of-reach.ts";
import { type AbilityGoal, type Counts, decisionsInReach } from "./reach.ts";

export interface SeldomDecided {
  readonly goal: AbilityGoal;
  readonly remark: Remark;
  /** About how many shots of the block would do; undefined where more than anybody hits, or more do not help. */
  readonly shots: number | undefined;
  /** Whether the baseline is so short that no number of shots now would do. */
  readonly baselineIsTooShort: boolean;
}

/** One practice in four. */
const SELDOM = 0.25;

/** With a baseline so short, it stays open more often than not, whatever is hit. */
const HALF = 0.5;

/** What shots are asked for that would do. */
const MOSTLY = 0.8;

/** More than anybody hits for one goal. */
const MOST_FOR_A_GOAL = 200;

/** Some twenty chances for each goal that is seldom decided, one for each other. */
export const seldomDecided = once((subject: BlockInPlan): SeldomDecided[] => {
  return decide(subject, (metric) => spreadInPlan(metric, subject));
});

/** Of a player: only those goals on which the plan itself says too little. */
export function seldomDecidedFor(player: Player, subject: BlockInPlan): SeldomDecided[] {
  const usual = (metric: string) =>
    spreadInPlan(metric, subject) === undefined ? usualSpread(metric, subject.block, player) : undefined;
  return decide(subject, usual, player);
}

function decide(
  subject: BlockInPlan,
  spreadOf: (metric: string) => AssumedSpread | undefined,
  player?: Player,
): SeldomDecided[] {
  const asked = shotsAsked(subject);
  if (asked === 0 || asked > MOST_SHOTS || isOpen(subject)) return [];
  const { metrics } = subject.vocabulary;
  return everyGoalAsJudged(subject.block.success).flatMap((goal) => {
    if (!("confidence" in goal) || goal.confidence === null) return [];
    const baseline = baselineOf(goal, subject) ?? (player && usualShots(goal, subject, player));
    const stated = comfortable(goal, spreadOf, (name) => metrics.get(name));
    if (baseline === undefined || stated === undefined) return [];
    const assumption = withMemory(goal, goal.confidence, stated);
    if (player !== undefined && assumption.assumed === undefined) return []; // said of the plan
    const counts = { shots: asked, baseline };
    const canBeMet = decisionsInReach(goal, counts, goal.confidence, subject.vocabulary)?.has("met");
    if (!canBeMet) return [];
    const baselineIsTooShort =
      goal.kind === "change" && assumption.chance({ shots: ENDLESS, baseline }) < HALF;
    if (!baselineIsTooShort && assumption.chance(counts) >= SELDOM) return [];
    return [found(goal, assumption, counts, baselineIsTooShort, subject, player)];
  });
}

/** How many shots usual numbers stand for; without their number they are taken as exact. */
function usualShots(goal: AbilityGoal, { block }: BlockInPlan, player: Player): number | undefined {
  if (goal.kind !== "change" || goal.against.kind !== "usual") return undefined;
  const usual = usualSpread(goal.metric, block, player);
  return usual && (usual.shots ?? ENDLESS);
}

const chances = onceFor<number>();

/** The chances of goals that differ in their words only are worked out once. */
function withMemory(goal: AbilityGoal, confidence: number, assumption: Comfortable): Comfortable {
  const { id, text, location, ...claim } = goal;
  const key = JSON.stringify([claim, confidence, assumption.assumed?.spread]);
  return {
    ...assumption,
    chance: (counts) => chances(`${key} ${counts.shots} ${counts.baseline}`, () => assumption.chance(counts)),
  };
}

function found(
  goal: AbilityGoal,
  assumption: Comfortable,
  counts: Counts,
  baselineIsTooShort: boolean,
  subject: BlockInPlan,
  player: Player | undefined,
): SeldomDecided {
  const { isSteady } = assumption;
  const chance = assumption.chance(counts);
  const chanceWith = (some: Partial<Counts>) => assumption.chance({ ...counts, ...some });
  const fewest = (chanceOf: (shots: number) => number) =>
    fewestShotsFor(MOSTLY, chanceOf, isSteady, counts.shots + 1, MOST_FOR_A_GOAL);
  const shots = fewest((number) => chanceWith({ shots: number }));
  const both = baselineIsTooShort
    ? fewest((number) => chanceWith({ shots: number, baseline: number }))
    : undefined;
  const { assumed } = assumption;
  const where = assumed === undefined ? "" : ` (${placeInWords(assumed.location, subject.block.location)})`;
  const whose = player === undefined ? "" : `, as is usual of ${player.name}${where}`;
  const here = player === undefined ? where : whose;
  const seldom = `A player ${assumption.who}${here} would show this in ${outOfTen(chance)} of 10 practices with ${shotsInWords(counts.shots)} (an estimate)`;
  return {
    goal,
    shots: baselineIsTooShort ? undefined : shots,
    baselineIsTooShort,
    remark: {
      message: `${seldom}${whatWouldDo(counts, shots, both, baselineIsTooShort)}`,
      location: goal.location,
      related:
        assumed === undefined ? [] : [{ message: "the spread that is assumed", location: assumed.location }],
    },
  };
}

/** So many shots that one more changes nothing. */
const ENDLESS = 1e9;

function outOfTen(chance: number): string {
  const number = Math.round(10 * chance);
  return number === 0 ? "hardly one" : `about ${number}`;
}

function whatWouldDo(
  { baseline }: Counts,
  shots: number | undefined,
  both: number | undefined,
  baselineIsTooShort: boolean,
): string {
  if (baselineIsTooShort) {
    const enough =
      both === undefined
        ? " Ask at a lower confidence, or for a change that is easier to see."
        : ` About ${shotsInWords(both)} before and as many now would do.`;
    return `: against ${shotsInWords(baseline)} before, no number of shots now would do.${enough}`;
  }
  return shots === undefined
    ? `, and not even ${MOST_FOR_A_GOAL} would do. Ask for less, or at a lower confidence.`
    : `. About ${shotsInWords(shots)} would do for 8 of 10; or ask for less, or at a lower confidence.`;
}
