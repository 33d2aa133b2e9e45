/**
 * The best or the worst shot held against its limits. A single shot decides, so an unknown one may be it: nothing is
 * judged on most shots alone, and much is settled before the last.
 */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { type Interval, isInside, liesOutside, liesWithin } from "../../../shared/statistics/interval.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { plannedShots } from "../hits.ts";
import { notJudged, openShots } from "../open-shots.ts";
import { extremes, type Order, orderOf } from "./compute.ts";
import type { Extreme } from "./names.ts";
import { readingsWanted, type UsableShots, valuesAt } from "./usable-shots.ts";
import { directionsIn } from "./value.ts";

/** Judges the extreme of the usable shots, at least one. */
export function judgeExtreme(
  { statistic: { kind }, metric, bounds }: StatisticCriterion & { readonly statistic: Extreme },
  usable: UsableShots,
  shots: CountedShots,
): Pick<Outcome, "verdict" | "settles" | "deciding"> & { readonly value: number | undefined } {
  const { interval: claim, slack } = claimOf(bounds, shots.hand);
  const order = orderOf(shots.metric(metric), shots.hand, directionsIn(bounds));
  const candidates = extremes(kind, valuesAt(metric, usable, shots), order);
  // Of two as far to either side it is the one that makes the best better, and the worst worse.
  const decisive = candidates.find((value) => isInside(value, claim, slack) === (kind === "best"));
  const value = decisive ?? candidates[0] ?? Number.NaN;
  const toCome = plannedShots(shots) - shots.size;
  const isOpen = toCome + usable.unknown.length > 0;
  const reach = isOpen ? stillPossible(kind, value, order) : [{ low: value, high: value }];
  const isMet = reach.every((part) => liesWithin(part, claim, slack));
  if (isMet || reach.every((part) => liesOutside(part, claim, slack))) {
    const values = shots.values(metric);
    const deciding = usable.indices.filter((index) => values[index] === value);
    return { verdict: isMet ? "met" : "missed", settles: null, deciding, value };
  }
  return {
    verdict: "undecided",
    settles: settles(metric, toCome, usable, shots),
    deciding: usable.unknown,
    value,
  };
}

/** Where the extreme may yet be, when open shots are known. */
function stillPossible(kind: Extreme["kind"], value: number, { hasSides }: Order): readonly Interval[] {
  const { NEGATIVE_INFINITY: left, POSITIVE_INFINITY: right } = Number;
  const distance = Math.abs(value);
  if (kind === "best") {
    return [hasSides ? { low: -distance, high: distance } : { low: value, high: right }];
  }
  if (!hasSides) return [{ low: left, high: value }];
  return [
    { low: left, high: -distance },
    { low: distance, high: right },
  ];
}

function settles(metric: string, toCome: number, { unknown }: UsableShots, shots: CountedShots): string {
  if (toCome > 0) return openShots({ hits: 0, misses: 0, unknown: unknown.length, toCome });
  return `${readingsWanted([metric], shots)} for ${notJudged(unknown.length)}`;
}
