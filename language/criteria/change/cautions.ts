/** What to bear in mind about a change. */
import { isUnusuallyBad } from "../../../shared/statistics/regression-to-the-mean.ts";
import { sampleOf } from "../../../shared/statistics/summary.ts";
import { plannedShots } from "../hits.ts";
import { spreadCautions } from "../statistic/cautions.ts";
import { nameOf, titleOf } from "../statistic/names.ts";
import { notInTheNumber } from "../statistic/uncertainty.ts";
import { leftOutCautions } from "../statistic/usable-shots.ts";
import { valueInWords } from "../statistic/value.ts";
import { listed, shots as shotsInWords } from "../wording.ts";
import { usualSample } from "./before.ts";
import { signOfMovement } from "./movement.ts";
import type { Baseline, Compared, Side, UsualNumber } from "./sides.ts";
import { scaleOf } from "./words.ts";

export function cautionsOn(compared: Compared): string[] {
  const { criterion, now, before } = compared;
  const { statistic, metric } = criterion;
  if (now.usable.indices.length === 0) return [];
  const name = nameOf(statistic);
  const isWithUncertainty = statistic.kind === "average" || statistic.kind === "spread";
  const sides = before.kind === "shots" ? [now, before.side] : [now];
  const isDoubtful = sides.some(({ uncertainty }) => uncertainty.random > 0 || uncertainty.systematic > 0);
  return [
    ...leftOutCautions(name, [metric], now.usable),
    ...(before.kind === "shots"
      ? baselineCautions({ ...compared, before })
      : usualCautions({ ...compared, before })),
    ...pickedBaselineCautions(compared),
    ...(statistic.kind === "spread" && criterion.confidence === null
      ? [...new Set(sides.flatMap(({ values }) => spreadCautions(values, false)))]
      : []),
    ...(isDoubtful && !isWithUncertainty ? [notInTheNumber(`change of the ${name}`, metric)] : []),
    ...(isDoubtful && statistic.kind === "spread" ? [TAKEN_OFF] : []),
  ];
}

const TAKEN_OFF = "What the instrument scatters by itself, from shot to shot, is taken off the spreads.";

function baselineCautions({ criterion, now, before }: Compared<Baseline>): string[] {
  const { statistic, metric } = criterion;
  const { name, side } = before;
  const asked = plannedShots(side.shots);
  const { size } = side.shots;
  const [clubsNow, clubsBefore] = [clubsOf(now), clubsOf(side)];
  const areOthers = clubsNow !== "" && clubsBefore !== "" && clubsNow !== clubsBefore;
  return [
    ...leftOutCautions(`${nameOf(statistic)} of ${name}`, [metric], side.usable),
    size < asked
      ? `Of ${shotsInWords(asked)} in ${name} only ${size} ${size === 1 ? "is" : "are"} there.`
      : null,
    areOthers
      ? `These shots were hit with ${clubsNow}, those in ${name} with ${clubsBefore}: the clubs have a part in the change.`
      : null,
  ].filter((caution) => caution !== null);
}

/** The clubs that the shots of a number were hit with, in words; empty where none is known. */
function clubsOf({ usable, shots }: Side): string {
  const clubs = usable.indices
    .map((index) => shots.clubs[index])
    .filter((club) => club !== null && club !== undefined);
  return listed([...new Set(clubs)].sort());
}

function usualCautions({ criterion, before }: Compared<UsualNumber>): string[] {
  const { statistic, metric, confidence } = criterion;
  const { numbers } = before;
  if (confidence === null || (usualSample(before) !== undefined && statistic.kind !== "median")) return [];
  const because =
    numbers.spread === null
      ? ": how far it varies is not stated"
      : numbers.count === null
        ? ": of how many shots it is, is not stated"
        : "";
  return [`The usual ${titleOf(statistic, metric)} is taken as exact${because}.`];
}

/** A baseline that was unusually bad overstates what is gained after it. */
function pickedBaselineCautions({ criterion, measure, now, before }: Compared): string[] {
  const { statistic, metric, movement } = criterion;
  const { shots } = now;
  if (statistic.kind !== "average" || before.kind === "usual") return [];
  if (movement.kind === "stays" || movement.bound === "most") return [];
  const usual = shots.against({ kind: "usual" }, metric);
  const sample = sampleOf(before.side.values);
  const better = signOfMovement(movement, shots.hand);
  if (typeof usual === "string" || usual.kind !== "usual" || sample === undefined) return [];
  if (!isUnusuallyBad(sample, usual.value, better)) return [];
  const scale = { ...scaleOf(criterion, measure, shots), limits: [usual.value] };
  return [
    `The average of ${valueInWords(sample.mean, scale)} in ${before.name} is unusually bad, the usual is ${valueInWords(usual.value, scale)}: after such a baseline some gain comes without any change.`,
  ];
}
