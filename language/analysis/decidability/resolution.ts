/** What a block asks for more narrowly than an instrument can tell (JCGM 106). */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type {
  Bounds,
  Condition,
  Criterion,
  Instrument,
  Location,
  ShotTest,
  StatisticCriterion,
} from "../../../shared/plan-model.ts";
import { writeAmount } from "../../../shared/quantity.ts";
import { allowedError } from "../../../shared/statistics/confidence.ts";
import { bestConformance } from "../../../shared/statistics/conformance.ts";
import { normalQuantile } from "../../../shared/statistics/distributions.ts";
import {
  type ReadingUncertainty,
  uncertaintyOfMean,
} from "../../../shared/statistics/reading-uncertainty.ts";
import { meanLimits } from "../../../shared/statistics/student.ts";
import { verdictByLimits } from "../../../shared/statistics/verdict.ts";
import type { Circumstances } from "../possibility/circumstances.ts";
import { everyGoal, shotsAsked } from "../possibility/goals.ts";
import { variantsFor } from "../possibility/propose.ts";
import type { BlockInPlan } from "../subject.ts";
import { uncertaintyOf } from "./uncertainty.ts";

/** Who hits, what the readings are taken with, and how sure a verdict must be. */
export interface Setting {
  readonly player: Pick<Circumstances, "hand" | "level">;
  readonly instrument: Instrument;
  readonly decisionLevel: number;
}

export interface TooNarrow {
  readonly text: string;
  readonly location: Location;
  /** What may be off: `carry`, `the average carry`. */
  readonly of: string;
  /** How far a reading, or an average, may be off: one standard deviation, as it is written. */
  readonly uncertainty: string;
  /** The narrowest range that can be told, as it is written: `±0.8°`. */
  readonly needed: string;
  /** How sure it must be that something is inside. */
  readonly level: number;
}

/** Each line once. Linear in the tests of the block, its clubs and what is stated of the instrument. */
export function tooNarrowFor(setting: Setting, subject: BlockInPlan): TooNarrow[] {
  const { block } = subject;
  const lines = [...block.targets, ...block.requirements];
  const found = lines.flatMap(({ text, location, condition }) =>
    narrowTest(condition, { text, location }, setting, subject),
  );
  for (const goal of everyGoal(block.success)) {
    if ("subject" in goal && goal.subject.kind === "meeting") {
      found.push(...narrowTest(goal.subject.condition, goal, setting, subject));
    }
    if (goal.kind === "statistic" && goal.statistic.kind === "average") {
      found.push(...narrowAverage(goal, setting, subject));
    }
  }
  return found;
}

type Line = Pick<Criterion, "text" | "location">;

/** The first test of a condition that no reading surely passes, with some club. */
function narrowTest(condition: Condition, line: Line, setting: Setting, subject: BlockInPlan): TooNarrow[] {
  for (const club of new Set(subject.block.shots.map(({ club }) => club))) {
    for (const { metric, bounds } of numberTests(condition, { ...setting.player, club })) {
      const uncertainty = readingOf(metric, club, setting, subject);
      if (uncertainty === null) continue;
      const combined = uncertaintyOfMean(1, uncertainty);
      const { interval } = claimOf(bounds, setting.player.hand);
      if (bestConformance(combined, interval) >= setting.decisionLevel) continue;
      return [tooNarrow(line, asRead(metric, combined, setting.decisionLevel), bounds)];
    }
  }
  return [];
}

/** An average over the shots hit, or of the player: what all readings share does not average out. */
function narrowAverage(goal: StatisticCriterion, setting: Setting, subject: BlockInPlan): TooNarrow[] {
  const { metric, bounds, confidence } = goal;
  const { interval: claim, slack } = claimOf(bounds, setting.player.hand);
  const shots = shotsAsked(subject);
  if (!Number.isFinite(claim.low) || !Number.isFinite(claim.high) || shots < 2) return [];
  for (const club of new Set(subject.block.shots.map((line) => line.club))) {
    const uncertainty = readingOf(metric, club, setting, subject);
    if (uncertainty === null) continue;
    if (confidence === null) {
      const combined = uncertaintyOfMean(shots, uncertainty);
      if (bestConformance(combined, claim) >= setting.decisionLevel) continue;
      return [tooNarrow(goal, asRead(`the average ${metric}`, combined, setting.decisionLevel), bounds)];
    }
    const { systematic } = uncertainty;
    const best = { n: shots, mean: (claim.low + claim.high) / 2, sd: 0 };
    const limitsAt = (level: number) => meanLimits(best, level, systematic);
    if (systematic === 0 || verdictByLimits(limitsAt, claim, confidence, slack) !== "undecided") continue;
    const margin = normalQuantile(1 - allowedError(confidence)) * systematic;
    const doubt = { of: `the average ${metric}`, uncertainty: systematic, margin, level: confidence };
    return [tooNarrow(goal, doubt, bounds)];
  }
  return [];
}

function readingOf(
  metric: string,
  club: string | null,
  { instrument }: Setting,
  { vocabulary }: BlockInPlan,
): ReadingUncertainty | null {
  return uncertaintyOf(metric, club, instrument, vocabulary.metrics);
}

/** The number of standard deviations to either side that hold a share of all values. */
function twoSided(share: number): number {
  return normalQuantile((1 + share) / 2);
}

/** How far a number may be off, SI: one standard deviation, and what it takes to either side to be sure at this level. */
interface Doubt {
  readonly of: string;
  readonly uncertainty: number;
  readonly margin: number;
  readonly level: number;
}

function asRead(of: string, uncertainty: number, level: number): Doubt {
  return { of, uncertainty, margin: twoSided(level) * uncertainty, level };
}

function tooNarrow(
  { text, location }: Line,
  { of, uncertainty, margin, level }: Doubt,
  bounds: Bounds,
): TooNarrow {
  const { factor } = unitOf(bounds);
  const amount = (value: number) => writeAmount({ value, unit: unitOf(bounds), direction: null });
  const digits = 10 ** Math.max(0, 1 - Math.floor(Math.log10(margin / factor)));
  const needed = (Math.ceil((margin / factor) * digits - 1e-9) / digits) * factor;
  return {
    text,
    location,
    of,
    level,
    uncertainty: amount(Number((uncertainty / factor).toPrecision(2)) * factor),
    needed: `±${amount(needed)}`,
  };
}

function numberTests(condition: Condition, at: Circumstances): Extract<ShotTest, { kind: "number" }>[] {
  return condition.anyOf.flatMap(({ allOf }) =>
    allOf.flatMap((test) => {
      if (test.kind === "number") return [test];
      if (test.kind === "category") return [];
      return variantsFor(test.variants, at).flatMap((variant) => numberTests(variant.condition, at));
    }),
  );
}
