/** Changes of the best or the worst shot. */
import { isInside } from "../../../shared/statistics/interval.ts";
import { extremes, orderOf } from "../statistic/compute.ts";
import { isExtreme } from "../statistic/names.ts";
import { claimOfMovement } from "./movement.ts";
import { effectOf } from "./seen.ts";
import { type Compared, directionsOf, type Side } from "./sides.ts";

/**
 * Of two shots as far to either side, now or before, the one that makes the change of the best better, and of the worst
 * worse: neither side comes before the other, so that mirror images are judged alike.
 */
export function withDecisiveExtremes(compared: Compared): Compared {
  const {
    criterion: { statistic, metric, movement },
    measure,
    now,
    before,
  } = compared;
  if (!isExtreme(statistic) || before.kind === "usual") return compared;
  const valuesOf = ({ shots, values }: Side) =>
    extremes(statistic.kind, values, orderOf(shots.metric(metric), shots.hand, directionsOf(movement)));
  const pairs = valuesOf(now).flatMap((value) =>
    valuesOf(before.side).map((was) => ({
      ...compared,
      now: { ...now, value },
      before: { ...before, side: { ...before.side, value: was } },
    })),
  );
  const { interval, slack } = claimOfMovement(movement, measure, now.shots.hand);
  const isMet = (pair: Compared) => isInside(effectOf(pair) ?? Number.NaN, interval, slack);
  return pairs.find((pair) => isMet(pair) === (statistic.kind === "best")) ?? compared;
}
