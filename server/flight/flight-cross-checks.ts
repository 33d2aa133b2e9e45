/** A measured flight against what the model makes of its launch. */
import type { Conditions } from "../../shared/plan-model.ts";
import { COEFFICIENTS } from "./coefficients.ts";
import { placeOf } from "./conditions.ts";
import type { Disagreement } from "./cross-checks.ts";
import type { Values } from "./derived-metrics.ts";
import { type Flight, fly } from "./fly.ts";
import type { Launch } from "./launch.ts";
import { LAUNCH } from "./measured-launch.ts";
import { validityOf } from "./validity.ts";

/** How far from the model a flight may be before it is worth a look: balls differ, and so do coefficients. */
const CARRY_SHARE = { supported: 0.15, extrapolated: 0.25 } as const;

/** Carry and curve against the flight model, of a ball that carries as stated: what is far off, and may be outside. */
export function disagreementsWithFlight(
  values: Values,
  launch: Launch,
  conditions: Conditions,
): Disagreement[] {
  if (values.carry === undefined && values.curve === undefined) return [];
  const place = placeOf(conditions);
  if (typeof place === "string") return [];
  const { status } = validityOf(launch, place.surroundings);
  if (status === "unsupported") return [];
  const flight = fly(launch, place.surroundings, COEFFICIENTS.ss94_flat);
  /** How far the other coefficient set is from this one: looked at only where it matters. */
  let other: Flight | undefined;
  const uncertainty = (metric: "carry" | "curve") => {
    other ??= fly(launch, place.surroundings, COEFFICIENTS.ss94);
    return Math.abs(flight[metric] - other[metric]);
  };
  return (["carry", "curve"] as const).flatMap((metric) => {
    const reading = values[metric];
    const made = flight[metric] * place.carryFactor;
    const slack = metric === "carry" ? CARRY_SHARE[status] * made : 8 + 0.5 * Math.abs(made);
    if (reading === undefined || Math.abs(reading - made) <= slack) return [];
    const most = slack + uncertainty(metric);
    const [low, high] = [made - most, made + most];
    return [{ metric, measured: reading, low, high, from: LAUNCH, by: "model", reason: OTHER_BALL }];
  });
}

const OTHER_BALL =
  "A ball that flies unlike a new one does that, wind that was not as stated, and a spin that was not measured.";
