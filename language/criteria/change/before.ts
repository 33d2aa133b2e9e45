/** What a change is held against. */
import type { ChangeCriterion, Statistic } from "../../../shared/plan-model.ts";
import type { Sample } from "../../../shared/statistics/summary.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { isExtreme, nameOf, titleOf } from "../statistic/names.ts";
import { notMeasured, tooFewKnown } from "../statistic/usable-shots.ts";
import { type Before, type Compared, sideOf, type UsualNumber } from "./sides.ts";

/** The number there was before; or in words what is missing. */
export function beforeOf(criterion: ChangeCriterion, shots: CountedShots): Before | string {
  const { against, metric, statistic } = criterion;
  const comparison = shots.against(against, metric);
  if (typeof comparison === "string") return `something to compare with: ${comparison}`;
  const { name } = comparison;
  if (comparison.kind === "shots") {
    const side = sideOf(criterion, comparison.shots);
    return { kind: "shots", name, side, isSameSession: comparison.isSameSession };
  }
  const usual: UsualNumber = { kind: "usual", name, numbers: comparison };
  if (usualValue(statistic, usual) !== undefined) return usual;
  return statistic.kind === "spread"
    ? `the usual ${titleOf(statistic, metric)}, which is not stated`
    : `something to compare with: usual numbers have no ${nameOf(statistic)}`;
}

/** The number before; undefined where the shots are too few for it. */
export function valueBefore({ criterion, before }: Compared): number | undefined {
  return before.kind === "shots" ? before.side.value : usualValue(criterion.statistic, before);
}

/** The usual number that a statistic is held against: undefined where none is stated of it. */
function usualValue({ kind }: Statistic, { numbers: { value, spread } }: UsualNumber): number | undefined {
  if (kind === "average" || kind === "median") return value;
  return kind === "spread" ? (spread ?? undefined) : undefined;
}

/** The shots that usual numbers were taken from; undefined where only the numbers are known. */
export function usualSample({ numbers: { value, spread, count } }: UsualNumber): Sample | undefined {
  return spread === null || count === null || count < 2 ? undefined : { n: count, mean: value, sd: spread };
}

/** Why nothing can be compared, now or before; null where it can. */
export function openInSides({
  criterion: { statistic, metric },
  now,
  before,
}: Compared): Pick<Outcome, "verdict" | "settles"> | null {
  const sides = [{ ...now, place: "" }];
  if (before.kind === "shots") sides.push({ ...before.side, place: ` in ${before.name}` });
  for (const { usable, shots, place } of sides) {
    const unmeasured = notMeasured([metric], usable, shots);
    if (unmeasured !== null) return { ...unmeasured, settles: `${unmeasured.settles}${place}` };
  }
  // One shot decides what is best or worst: it may be the one that is not known.
  const share = isExtreme(statistic) ? 1 : undefined;
  for (const { usable, shots, place } of sides) {
    const tooFew = tooFewKnown([metric], usable, shots, share);
    if (tooFew !== null) return { verdict: "undecided", settles: `${tooFew}${place}` };
  }
  return null;
}
