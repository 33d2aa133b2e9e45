/** Which method judges which change as ability. */
import { sampleOf } from "../../../../shared/statistics/summary.ts";
import { noReadingAsAbility } from "../../statistic/ability.ts";
import { orderOf } from "../../statistic/compute.ts";
import type { Method } from "../../statistic/methods/method.ts";
import { methodFor } from "../../statistic/methods/methods.ts";
import { normalityCautions } from "../../statistic/methods/spread.ts";
import { nameOf } from "../../statistic/names.ts";
import { usualSample, valueBefore } from "../before.ts";
import { type Baseline, type Compared, directionsOf, type UsualNumber } from "../sides.ts";
import { averageChangeMethod } from "./average.ts";
import { againstExact } from "./exact.ts";
import { medianChangeMethod } from "./median.ts";
import { spreadChangeMethod } from "./spread.ts";

/** In words what would settle it where no method can. The shots now have a reading, and so have those before. */
export function changeMethod(compared: Compared): Method | string {
  const { criterion, measure, before } = compared;
  const { kind } = criterion.statistic;
  const hasMethod =
    kind === "average" || kind === "spread" || (kind === "median" && measure === "difference");
  if (!hasMethod) {
    const share = measure === "share" ? " in %" : "";
    return noReadingAsAbility(`change of the ${nameOf(criterion.statistic)}${share}`);
  }
  return before.kind === "usual"
    ? againstUsual({ ...compared, before })
    : againstShots({ ...compared, before });
}

function againstShots({ criterion, measure, now, before }: Compared<Baseline>): Method | string {
  const { side, name, isSameSession } = before;
  if (criterion.statistic.kind === "median") return medianChangeMethod(side.values, now.values);
  const [old, fresh] = [sampleOf(side.values), sampleOf(now.values)];
  if (old === undefined || fresh === undefined || old.n < 2) return `2 shots or more in ${name}`;
  if (criterion.statistic.kind === "average") {
    const errors = { before: side.uncertainty, now: now.uncertainty, areSame: isSameSession };
    return averageChangeMethod(old, fresh, measure, errors);
  }
  const cautions = [side, now].flatMap(({ values }) => normalityCautions(values, undefined));
  return spreadChangeMethod(
    { ...old, random: side.uncertainty.random },
    { ...fresh, random: now.uncertainty.random },
    measure,
    [...new Set(cautions)],
  );
}

/** Usual numbers with their spread and count are like shots; without, they are taken as exact. */
function againstUsual(compared: Compared<UsualNumber>): Method | string {
  const { criterion, measure, now, before } = compared;
  const { statistic, metric, movement } = criterion;
  const [old, fresh] = [usualSample(before), sampleOf(now.values)];
  if (old !== undefined && fresh !== undefined && statistic.kind === "average") {
    // How the usual numbers were read is not known: their readings may be off like these, but not by the same.
    const errors = { before: now.uncertainty, now: now.uncertainty, areSame: false };
    return averageChangeMethod(old, fresh, measure, errors);
  }
  if (old !== undefined && fresh !== undefined && statistic.kind === "spread") {
    const { random } = now.uncertainty;
    const cautions = normalityCautions(now.values, undefined);
    return spreadChangeMethod({ ...old, random: 0 }, { ...fresh, random }, measure, cautions);
  }
  const order = orderOf(now.shots.metric(metric), now.shots.hand, directionsOf(movement));
  const method = methodFor(statistic, now.values, now.uncertainty, order, () => "");
  const value = valueBefore(compared);
  return method === undefined || value === undefined
    ? noReadingAsAbility(nameOf(statistic))
    : againstExact(method, value, measure);
}
