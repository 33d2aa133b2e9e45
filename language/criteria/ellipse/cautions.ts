/** What to bear in mind about an ellipse. */
import type { EllipseCriterion } from "../../../shared/plan-model.ts";
import { factorForNextShot, factorForShots } from "../../../shared/statistics/ellipse.ts";
import type { CountedShots } from "../criterion.ts";
import { notInTheNumber, uncertaintyOf } from "../statistic/uncertainty.ts";
import { leftOutCautions, type UsableShots } from "../statistic/usable-shots.ts";
import { listed, percent, shots as shotsInWords } from "../wording.ts";
import { measureShots } from "./measures.ts";

/** From so many times the area on it is worth saying that the next shot needs more room: below about 20 shots. */
const MUCH_LARGER = 1.25;

export function cautionsOn(
  criterion: EllipseCriterion,
  [x, y]: readonly [readonly number[], readonly number[]],
  usable: UsableShots,
  shots: CountedShots,
): string[] {
  const { metrics, share } = criterion;
  const doubtful = metrics.filter((metric) => uncertaintyOf(metric, usable.indices, shots) !== null);
  const area = measureShots({ measure: "area", share }, x, y);
  if (usable.indices.length === 0) return [];
  return [
    ...leftOutCautions("ellipse", metrics, usable),
    ...(doubtful.length === 0 ? [] : [notInTheNumber("ellipse", listed(doubtful))]),
    ...(area === undefined ? [] : [area === 0 ? ON_A_LINE : nextShotCaution(x.length, criterion)]),
  ].filter((caution) => caution !== null);
}

const ON_A_LINE =
  "All shots lie on a line, so that the ellipse has no area: the readings are probably coarser than the shots differ.";

/** Of few shots their own ellipse is too small. */
function nextShotCaution(n: number, { share, confidence }: EllipseCriterion): string | null {
  const times = (factorForNextShot(n, share) ?? Number.NaN) / factorForShots(share);
  if (confidence !== null || !(times >= MUCH_LARGER)) return null;
  return `This is the ellipse of these ${shotsInWords(n)}, and of few shots it is too small: one that holds the next shot with a probability of ${percent(share)} has ${Number(times.toPrecision(2))} times the area.`;
}
