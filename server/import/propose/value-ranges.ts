/** Of which size readings are: what is plausible, what people see, and in which units they write it. */

import { METRIC_WORDS } from "../../../shared/metric-words.ts";
import type { Metric, Unit } from "../../../shared/plan-model.ts";
import type { Profile } from "./profile.ts";

/** The share of the values that are plausible, whichever way they are signed; 1 where there are none. */
export function shareInside(metric: Metric, unit: Unit, { numbers }: Profile): number {
  const { plausible } = metric;
  const read = numbers.filter((number) => number !== undefined);
  if (plausible === null || read.length === 0) return 1;
  const isSided = metric.directions.length > 0;
  const inside = read.filter((number) => {
    const value = number * unit.factor + (unit.offset ?? 0);
    const isIn = (value: number) => value >= plausible.low - 1e-9 && value <= plausible.high + 1e-9;
    return isIn(value) || (isSided && isIn(-value));
  });
  return inside.length / read.length;
}

/** The units in which people give lengths and speeds without saying so: those of the ground, of heights, of the club. */
const USUAL_UNITS = {
  ground: ["yd", "m"],
  height: ["ft", "m", "yd"],
  club: ["in", "cm", "mm"],
  speed: ["mph", "m/s", "km/h"],
  time: ["s"],
} as const;

export function isUsual(symbol: string, { name, dimension }: Metric): boolean {
  const realm = METRIC_WORDS[name]?.realm;
  if (dimension === "speed") return USUAL_UNITS.speed.some((unit) => unit === symbol);
  if (dimension === "duration") return USUAL_UNITS.time.some((unit) => unit === symbol);
  if (dimension !== "length" || realm === undefined) return true;
  const usual =
    realm === "club" ? USUAL_UNITS.club : name === "apex" ? USUAL_UNITS.height : USUAL_UNITS.ground;
  return usual.some((unit) => unit === symbol);
}

/** A size below which a column of readings is plausible only by being small in the wrong unit. SI. */
const TYPICAL: Readonly<Record<string, readonly [low: number, high: number]>> = {
  "club-speed": [14, 65],
  "ball-speed": [14, 95],
  carry: [25, 320],
  total: [25, 380],
  apex: [4, 60],
};

/** Whether the middle value is of a size that people see. */
export function isTypical(metric: Metric, unit: Unit, { numbers }: Profile): boolean {
  const range = TYPICAL[metric.name];
  const sizes = numbers
    .filter((number) => number !== undefined)
    .map((number) => Math.abs(number) * unit.factor);
  if (sizes.length === 0) return true;
  const middle = sizes.sort((one, other) => one - other)[Math.floor(sizes.length / 2)] ?? 0;
  // A share is a small number, percent a large one; so are radians and degrees.
  const largest = (sizes.at(-1) ?? 0) / unit.factor;
  if (unit.symbol === "%") return largest > 1.5;
  if (metric.dimension === "angle") return unit.symbol === "rad" ? largest < 0.5 : largest >= 0.5;
  return range === undefined || (middle >= range[0] && middle <= range[1]);
}
