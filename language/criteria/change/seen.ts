/** What was seen of a change: both numbers, and how far they are apart. */
import type { ChangeCriterion } from "../../../shared/plan-model.ts";
import { shift } from "../../../shared/statistics/hodges-lehmann.ts";
import type { Outcome } from "../criterion.ts";
import { nameOf } from "../statistic/names.ts";
import { observed } from "../statistic/observed.ts";
import { type Scale, valueInWords } from "../statistic/value.ts";
import { joined } from "../wording.ts";
import { valueBefore } from "./before.ts";
import type { Baseline, Compared, Side } from "./sides.ts";
import { effectWriter, scaleOf } from "./words.ts";

/** The parts of an outcome that say it. */
type Seen = Pick<Outcome, "observed" | "brief" | "value"> & {
  readonly comparison: NonNullable<Outcome["comparison"]>;
};

export function seenOf(compared: Compared): Seen {
  const { criterion, measure, now, before } = compared;
  const was = valueBefore(compared);
  const effect = effectOf(compared);
  const brief = effect === undefined ? "" : effectWriter(criterion, measure, now.shots).one(effect);
  const scale = scaleOf(criterion, measure, now.shots, effect);
  const beforehand =
    before.kind === "usual"
      ? `usual ${valueInWords(was ?? Number.NaN, told(scale, now.value))}`
      : `${sideInWords(criterion, before.side, told(scale, now.value))} in ${before.name}`;
  const difference = isShift(compared) ? `${brief}, the middle of all differences` : brief;
  return {
    observed: joined(
      sideInWords(criterion, now, told(scale, was)),
      beforehand,
      brief === "" ? null : difference,
    ),
    brief,
    value: effect ?? null,
    comparison: {
      against: before.name,
      before: was ?? null,
      after: now.value ?? null,
      smallestShown: null,
    },
  };
}

/**
 * How the number moved: with a confidence medians by the shift that is judged, which is not quite the difference of the
 * medians. Undefined where a number is missing, or a share is asked for of what is not above zero.
 */
export function effectOf(compared: Compared): number | undefined {
  const { measure, now } = compared;
  const was = valueBefore(compared);
  if (now.value === undefined || was === undefined) return undefined;
  if (measure === "share") return was > 0 ? now.value / was - 1 : undefined;
  return isShift(compared) ? shift(compared.before.side.values, now.values) : now.value - was;
}

function isShift(compared: Compared): compared is Compared<Baseline> {
  const { criterion, before } = compared;
  return criterion.statistic.kind === "median" && criterion.confidence !== null && before.kind === "shots";
}

/** `average 146 yd over 12 shots` */
export function sideInWords(
  { statistic, metric }: ChangeCriterion,
  { value, usable, shots }: Side,
  scale: Scale,
): string {
  const number = value === undefined ? null : `${nameOf(statistic)} ${valueInWords(value, scale)}`;
  return observed(number, [metric], usable, shots);
}

/** So finely that a number can be told from the other one. */
function told(scale: Scale, other: number | undefined): Scale {
  return other === undefined ? scale : { ...scale, limits: [other] };
}
