/** How far readings of a metric may be off, before there is a shot: what scoring will find of every shot. */
import type { Expression, Instrument, Metric } from "../../../shared/plan-model.ts";
import { statedFor } from "../../../shared/stated-uncertainty.ts";
import type { ReadingUncertainty } from "../../../shared/statistics/reading-uncertainty.ts";

/**
 * What is stated of a metric counts, with this club first, then with any. Of a metric of which nothing is stated and that is
 * a sum or a difference of others, the errors of those do. Null where nothing is known, or where it hangs on the readings.
 */
export function uncertaintyOf(
  metric: string,
  club: string | null,
  { uncertainties }: Instrument,
  vocabulary: ReadonlyMap<string, Metric>,
): ReadingUncertainty | null {
  const statedOf = (name: string) =>
    statedFor(
      club,
      uncertainties.filter((line) => line.metric === name),
    );
  const slopes = new Map<string, number>();
  const follow = (expression: Expression, slope: number, above: readonly string[]): boolean => {
    if (expression.kind === "number") return true;
    if (expression.kind === "operation") {
      const { operator, left, right } = expression;
      if (operator !== "+" && operator !== "-") return false;
      return follow(left, slope, above) && follow(right, operator === "+" ? slope : -slope, above);
    }
    const { name } = expression;
    if (statedOf(name) !== undefined) {
      slopes.set(name, (slopes.get(name) ?? 0) + slope);
      return true;
    }
    const formula = vocabulary.get(name)?.formula ?? null;
    return formula === null || above.includes(name) || follow(formula, slope, [...above, name]);
  };
  if (!follow({ kind: "metric", name: metric }, 1, [])) return null;
  let random = 0;
  let systematic = 0;
  for (const [name, slope] of slopes) {
    const line = statedOf(name);
    random += slope * slope * (line?.random ?? 0) ** 2;
    systematic += slope * slope * (line?.systematic ?? 0) ** 2;
  }
  return random + systematic === 0 ? null : { random: Math.sqrt(random), systematic: Math.sqrt(systematic) };
}
