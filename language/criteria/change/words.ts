/** Changes in words. */
import type { Against, ChangeCriterion, Movement } from "../../../shared/plan-model.ts";
import { formatAmount, wordFor, writeAmount } from "../../../shared/quantity.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import type { CountedShots } from "../criterion.ts";
import { isWidth, titleOf } from "../statistic/names.ts";
import { explanation } from "../statistic/sentence.ts";
import { fineEnough, inTheWordsOf, type Scale } from "../statistic/value.ts";
import { percent, roundedPercent } from "../wording.ts";
import { claimOfMovement, type Measure } from "./movement.ts";
import { directionsOf } from "./sides.ts";

/** `"Where we are"`, `session "Monday"`, `the last session`, `usual`. */
export function againstInWords(against: Against): string {
  switch (against.kind) {
    case "block":
      return JSON.stringify(against.block);
    case "session":
      return `session ${JSON.stringify(against.session)}`;
    case "last session":
      return "the last session";
    case "usual":
      return "usual";
  }
}

/** `average carry falls by at most 4 yd against "Where we are"`; with a share `… by at least 20 % of what it was against …`. */
export function required(criterion: ChangeCriterion, measure: Measure): string {
  const { statistic, metric, movement, against, confidence } = criterion;
  const share = measure === "share" ? " of what it was" : "";
  const claim = `${titleOf(statistic, metric)} ${moves(movement)}${share} against ${againstInWords(against)}`;
  return confidence === null ? claim : `in the long run, ${claim}, at ${percent(confidence)} confidence`;
}

function moves(movement: Movement): string {
  const amount = writeAmount(movement.amount);
  if (movement.kind === "stays") return `stays within ${amount}`;
  return `${movement.kind}${movement.kind === "moves" ? "" : " by"} at ${movement.bound} ${amount}`;
}

/** The criterion in a sentence. */
export function sentenceOf(criterion: ChangeCriterion, isRequiring: boolean): string {
  const { statistic, metric, movement, confidence } = criterion;
  // What rises or falls has no sides, what moves has.
  const hasSides = movement.kind === "stays" ? undefined : movement.kind === "moves";
  const number = `${titleOf(statistic, metric)}${explanation(statistic, directionsOf(movement), hasSides)}`;
  const compared = comparedInWords(criterion);
  if (confidence === null) {
    return `Over the block's shots${isRequiring ? " that are as required" : ""}, the ${number} is ${compared}.`;
  }
  const over = isRequiring ? " over shots that are as required" : "";
  return `In the long run, the player's ${number}${over} is ${compared}, shown at ${percent(confidence)} confidence.`;
}

/** `at most 4 yd less than in "Where we are"`, `within 5 yd of usual`. */
function comparedInWords({ movement, against }: ChangeCriterion): string {
  const amount = writeAmount(movement.amount);
  const place = against.kind === "usual" ? "usual" : `in ${againstInWords(against)}`;
  if (movement.kind === "stays") {
    return `within ${amount} of ${against.kind === "usual" ? "the usual one" : `what it was ${place}`}`;
  }
  const further = { rises: "more", falls: "less", moves: "farther" }[movement.kind];
  const distance = movement.kind === "moves" ? amountAndWay(movement) : `${amount} ${further}`;
  return `at ${movement.bound} ${distance} than ${place}`;
}

/** `2° farther in-to-out` */
function amountAndWay({ amount }: Movement): string {
  const way = amount.direction === null ? "" : ` ${amount.direction.word}`;
  return `${writeAmount({ ...amount, direction: null })} farther${way}`;
}

/**
 * How the numbers before and now are written: in the unit of the criterion, or that of readings where it has a share; as
 * finely as the difference between them.
 */
export function scaleOf(
  { statistic, metric, movement }: ChangeCriterion,
  measure: Measure,
  { metric: metricCalled, hand }: CountedShots,
  effect?: number,
): Scale {
  const declared = metricCalled(metric);
  const shown = isWidth(statistic)
    ? { ...declared, directions: [] }
    : inTheWordsOf(directionsOf(movement), declared);
  if (measure === "share") return { metric: shown, unit: declared.unit, hand, limits: [] };
  const scale = { metric: shown, unit: movement.amount.unit, hand, limits: [movement.amount.value, 0] };
  const metricShown = effect === undefined ? shown : fineEnough([Math.abs(effect)], scale);
  return { ...scale, metric: metricShown, limits: [] };
}

/** Effects in words: `4 yd less`, `2.1° farther in-to-out`, `3 % to 5 % more`. */
export interface EffectWriter {
  readonly one: (effect: number) => string;
  readonly range: (limits: Interval) => string;
}

export function effectWriter(
  criterion: ChangeCriterion,
  measure: Measure,
  shots: CountedShots,
): EffectWriter {
  const { interval } = claimOfMovement(criterion.movement, measure, shots.hand);
  const limits = [interval.low, interval.high].filter(Number.isFinite);
  const scale = { ...scaleOf(criterion, measure, shots), limits };
  // A change between two numbers that are told from each other is told from none.
  const single = { ...scale, limits: [...limits, 0] };
  const partsOf = (effect: number, ends?: readonly number[]) =>
    measure === "share"
      ? shareParts(effect, limits)
      : differenceParts(effect, ends ?? [effect], ends === undefined ? single : scale);
  const range = ({ low, high }: Interval) => {
    const ends = [low, high].filter(Number.isFinite);
    const [one, other] = ends.map((end) => partsOf(end, ends));
    if (one === undefined) return "no limit on either side";
    if (other === undefined) return `${inWords(one)} on one side, no limit on the other`;
    if (one.way === "" && other.way === "") return inWords(one);
    // On one side its word is said once and the smaller amount comes first.
    const isOneSided = one.way === other.way || one.way === "" || other.way === "";
    const [from, to] = isOneSided && other.distance < one.distance ? [other, one] : [one, other];
    return from.way === to.way ? `${from.size} to ${inWords(to)}` : `${inWords(from)} to ${inWords(to)}`;
  };
  return { one: (effect) => inWords(partsOf(effect)), range };
}

/** `4 yd`, and which way: `less`, empty where it is shown as no change. */
interface Parts {
  readonly distance: number;
  readonly size: string;
  readonly way: string;
}

function inWords({ size, way }: Parts): string {
  return way === "" ? "no change" : `${size} ${way}`;
}

function shareParts(effect: number, [limit = Number.NaN]: readonly number[]): Parts {
  const distance = Math.abs(effect);
  const size = roundedPercent(distance, Math.abs(limit));
  return { distance, size, way: distance < 1e-9 ? "" : moreOrLess(effect) };
}

function differenceParts(effect: number, others: readonly number[], scale: Scale): Parts {
  const distance = Math.abs(effect);
  const shown = fineEnough(others.map(Math.abs), { ...scale, limits: scale.limits.map(Math.abs) });
  const size = formatAmount(distance, shown, scale.unit);
  if (!/[1-9]/.test(size)) return { distance, size, way: "" };
  const word = wordFor(effect < 0 ? -1 : 1, shown.directions, scale.hand);
  return { distance, size, way: word === undefined ? moreOrLess(effect) : `farther ${word}` };
}

function moreOrLess(effect: number): string {
  return effect < 0 ? "less" : "more";
}
