/**
 * How likely a sentence about ability is to be shown when it is comfortably true. All of it is an estimate: of a player
 * whose shots are normally distributed and independent.
 */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type {
  ChangeCriterion,
  Metric,
  Movement,
  StatisticCriterion,
  Unit,
} from "../../../shared/plan-model.ts";
import { writeAmount } from "../../../shared/quantity.ts";
import { meanChances, meanChangeChances } from "../../../shared/statistics/mean-chances.ts";
import { shareChances } from "../../../shared/statistics/share-chances.ts";
import { spreadChances, spreadRatioChances } from "../../../shared/statistics/spread-chances.ts";
import type { Bound } from "../../../shared/statistics/verdict.ts";
import { claimOfMovement, measureOf } from "../../criteria/change/movement.ts";
import { percent } from "../../criteria/wording.ts";
import type { AssumedSpread } from "./assumed-spread.ts";
import type { AbilityGoal, Counts } from "./reach.ts";

export interface Comfortable {
  /** Of whom it is comfortably true: `who truly hits 90 % of them`. */
  readonly who: string;
  /** The chance that it is shown. */
  readonly chance: (counts: Counts) => number;
  /** Whether more shots always make it more likely. */
  readonly isSteady: boolean;
  /** The spread that was assumed, where one was. */
  readonly assumed: AssumedSpread | undefined;
}

/** Undefined where it cannot be said: without a confidence, and where a spread is needed that nobody has stated. */
export function comfortable(
  goal: AbilityGoal,
  spreadOf: (metric: string) => AssumedSpread | undefined,
  metricCalled: (name: string) => Metric | undefined,
): Comfortable | undefined {
  if (goal.confidence === null) return undefined;
  switch (goal.kind) {
    case "share":
      return ofShare(goal.share, `at ${goal.bound}`, goal.confidence, (rate) => `who truly hits ${rate}`);
    case "statistic":
      return ofStatistic(goal, goal.confidence, spreadOf, metricCalled);
    case "change":
      return ofChange(goal, goal.confidence, spreadOf, metricCalled);
    case "ellipse":
      return undefined;
  }
}

/** Half way from the share to all of the shots, or to none. */
function ofShare(
  share: number,
  bound: Bound,
  confidence: number,
  who: (rate: string) => string,
): Comfortable {
  const rate = bound === "at least" ? (1 + share) / 2 : share / 2;
  return {
    who: who(percent(Number(rate.toPrecision(2)))),
    chance: ({ shots }) => shareChances(shots, rate, share, confidence, bound).met,
    isSteady: false,
    assumed: undefined,
  };
}

/** A spread that is well within its limit. */
const COMFORTABLE_SPREAD = 0.7;

function ofStatistic(
  { statistic, metric: name, bounds }: StatisticCriterion,
  confidence: number,
  spreadOf: (metric: string) => AssumedSpread | undefined,
  metricCalled: (name: string) => Metric | undefined,
): Comfortable | undefined {
  const { interval: claim } = claimOf(bounds, "right");
  const isRange = Number.isFinite(claim.low) && Number.isFinite(claim.high);
  const assumed = undefined;
  switch (statistic.kind) {
    case "median":
    case "percentile": {
      const share = "share" in statistic ? statistic.share : 0.5;
      const within = Number.isFinite(claim.high) ? share : 1 - share;
      if (isRange) return undefined;
      return ofShare(
        within,
        "at least",
        confidence,
        (rate) => `of whose shots ${rate} are truly within the limit`,
      );
    }
    case "spread":
      if (isRange || !Number.isFinite(claim.high)) return undefined;
      return {
        who: `whose true spread is ${percent(COMFORTABLE_SPREAD)} of the limit`,
        chance: ({ shots }) => spreadChances(shots, COMFORTABLE_SPREAD, 1, confidence).met,
        isSteady: true,
        assumed,
      };
    case "average": {
      if (!isRange) {
        const limit = { low: 0, high: Number.POSITIVE_INFINITY };
        return {
          who: "whose true average is a whole spread within the limit",
          chance: ({ shots }) => meanChances({ n: shots, mean: 1, sd: 1 }, limit, confidence).met,
          isSteady: true,
          assumed,
        };
      }
      const spread = spreadOf(name);
      if (spread === undefined) return undefined;
      const mean = (claim.low + claim.high) / 2;
      return {
        who: `whose true average is in the middle of the range and whose spread is ${written(spread.spread, unitOf(bounds), metricCalled(name))}`,
        chance: ({ shots }) => meanChances({ n: shots, mean, sd: spread.spread }, claim, confidence).met,
        isSteady: true,
        assumed: spread,
      };
    }
    default:
      return undefined;
  }
}

/** Twice the change that is asked for; none, where none is allowed for. */
function ofChange(
  { statistic, metric: name, movement }: ChangeCriterion,
  confidence: number,
  spreadOf: (metric: string) => AssumedSpread | undefined,
  metricCalled: (name: string) => Metric | undefined,
): Comfortable | undefined {
  if (statistic.kind === "spread") return ofSpreadChange(movement, metricCalled(name), confidence);
  const spread = spreadOf(name);
  const { unit } = movement.amount;
  if (statistic.kind !== "average" || spread === undefined || unit.symbol === "%") return undefined;
  const claim = claimOfMovement(movement, "difference", "right").interval;
  const change = claim.low > 0 ? 2 * claim.low : claim.high < 0 ? 2 * claim.high : 0;
  const sd = spread.spread;
  const amount = written(Math.abs(change), unit, metricCalled(name));
  return {
    who: `${change === 0 ? "who has not changed" : `who has truly changed by ${amount}`} and whose spread is ${written(sd, unit, metricCalled(name))}`,
    chance: ({ shots, baseline }) =>
      meanChangeChances({ n: baseline, mean: 0, sd }, { n: shots, mean: change, sd }, claim, confidence).met,
    isSteady: true,
    assumed: spread,
  };
}

/** A spread as a share of what it was, so that its size makes no difference: changed by the share asked for, and by it again. */
function ofSpreadChange(
  movement: Movement,
  metric: Metric | undefined,
  confidence: number,
): Comfortable | undefined {
  if (metric === undefined || measureOf(movement, metric) !== "share") return undefined;
  const { low, high } = claimOfMovement(movement, "share", "right").interval;
  const isFall = high !== Number.POSITIVE_INFINITY;
  if (isFall && low !== Number.NEGATIVE_INFINITY) return undefined;
  const limit = 1 + (isFall ? high : low);
  const isAsked = isFall ? limit < 1 : limit > 1;
  const ratio = isAsked ? limit * limit : 1;
  if (limit <= 0) return undefined;
  return {
    who: isAsked
      ? `whose true spread is ${percent(Number(ratio.toPrecision(2)))} of what it was`
      : "whose true spread has not changed",
    chance: ({ shots, baseline }) => {
      const { met, missed } = spreadRatioChances({ baseline, now: shots }, ratio, limit, confidence);
      return isFall ? met : missed;
    },
    isSteady: true,
    assumed: undefined,
  };
}

function written(value: number, unit: Unit, metric: Metric | undefined): string {
  const shown = unit.symbol === "" && metric !== undefined ? metric.unit : unit;
  const rounded = Number((value / shown.factor).toPrecision(3)) * shown.factor;
  return writeAmount({ value: rounded, unit: shown, direction: null });
}
