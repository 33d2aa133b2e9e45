/** Shots and conditions from short phrases. What is not stated is missing. */
import { DEGREE, RPM, ZERO_CELSIUS } from "../../server/flight/constants.ts";
import type { Estimate, Estimated } from "../../server/flight/estimate.ts";
import type { Readings } from "../../server/flight/measured-launch.ts";
import type { Conditions } from "../../shared/plan-model.ts";

const UNITS: Record<string, number> = { "m/s": 1, m: 1, yd: 0.9144, "°": DEGREE, rpm: RPM };

/** `ball-speed 54 m/s, launch-angle 16°, spin-axis -3°`. */
export function shot(phrase: string, derived: string[] = []): Readings {
  const values: Record<string, number> = {};
  for (const part of phrase.split(/,\s*/)) {
    const [, metric, number, unit] = /^(\S+) (-?[\d.]+) ?(\S+)$/.exec(part) ?? [];
    const factor = UNITS[unit ?? ""];
    if (metric === undefined || factor === undefined) throw new Error(`"${part}" is not understood.`);
    values[metric] = Number(number) * factor;
  }
  return { values, derived };
}

export const IRON =
  "carry 165 yd, ball-speed 54 m/s, launch-angle 16°, start-direction 1°, spin-rate 6200 rpm, spin-axis 4°";

/** 18 °C, at 1013.25 Pa, still, 50 %, a new ball; other conditions as given. */
export function conditions(other: Partial<Conditions> = {}): Conditions {
  return {
    temperature: ZERO_CELSIUS + 18,
    pressure: 101_325,
    altitude: null,
    humidity: 0.5,
    wind: { along: 0, across: 0 },
    ball: { name: "new", carryFactor: 1 },
    ...other,
  };
}

export function estimateOf(estimate: Estimate): Estimated {
  if (estimate.status === "not-measured") throw new Error(estimate.reason);
  return estimate;
}

export function reasonOf(estimate: Estimate): string {
  if (estimate.status !== "not-measured") throw new Error(`There is a value: ${estimate.value}.`);
  return estimate.reason;
}
