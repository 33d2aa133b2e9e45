/**
 * Metrics of a shot that follow from its others by geometry or by the strike, where the data lacks them. SI, target frame.
 * Formulas of plain arithmetic are no part of this: the vocabulary states them.
 */
import { type ClubDelivery, strikeOf } from "./impact.ts";

export type Values = Readonly<Record<string, number>>;

export interface Derived {
  readonly metric: string;
  readonly value: number;
  /** Exact geometry; or the model of a strike through the middle of the face, an estimate. */
  readonly by: "geometry" | "strike";
}

/** What follows from the readings without the air: spin loft, curve, offline, launch angle, start direction and spin axis. */
export function derivedMetrics(values: Values): Derived[] {
  const delivery = deliveryFrom(values);
  const strike = delivery && strikeOf(delivery);
  const derived: readonly [metric: string, value: number | undefined, by: Derived["by"]][] = [
    ["spin-loft", strike?.spinLoft, "geometry"],
    ["curve", curveFrom(values), "geometry"],
    ["offline", offlineFrom(values), "geometry"],
    ["launch-angle", strike?.launchAngle, "strike"],
    ["start-direction", strike?.startDirection, "strike"],
    ["spin-axis", strike?.spinAxis, "strike"],
  ];
  return derived.flatMap(([metric, value, by]) =>
    value === undefined || Object.hasOwn(values, metric) ? [] : [{ metric, value, by }],
  );
}

/** What the club did, where all four of its angles are known. */
export function deliveryFrom(values: Values): ClubDelivery | undefined {
  const {
    "dynamic-loft": dynamicLoft,
    "face-angle": faceAngle,
    "attack-angle": attackAngle,
    "club-path": clubPath,
  } = values;
  if (dynamicLoft === undefined || faceAngle === undefined) return undefined;
  if (attackAngle === undefined || clubPath === undefined) return undefined;
  return { dynamicLoft, faceAngle, attackAngle, clubPath };
}

/** How far from the line on which it started a ball lands. */
export function curveFrom({ carry, offline, "start-direction": start }: Values): number | undefined {
  if (carry === undefined || offline === undefined || start === undefined) return undefined;
  if (Math.abs(offline) > carry) return undefined;
  const downrange = Math.sqrt(carry * carry - offline * offline);
  return offline * Math.cos(start) - downrange * Math.sin(start);
}

function offlineFrom({ carry, curve, "start-direction": start }: Values): number | undefined {
  if (carry === undefined || curve === undefined || start === undefined) return undefined;
  if (Math.abs(curve) > carry) return undefined;
  const along = Math.sqrt(carry * carry - curve * curve);
  return curve * Math.cos(start) + along * Math.sin(start);
}
