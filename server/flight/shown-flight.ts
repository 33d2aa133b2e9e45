/** A shot as pictures show it: its way through the air, where it landed, and where it would have in reference air. */
import type { Conditions } from "../../shared/plan-model.ts";
import { SS94_FLAT } from "./coefficients.ts";
import { placeOf } from "./conditions.ts";
import { fly } from "./fly.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "./measured-launch.ts";
import { pathOf } from "./path.ts";
import { standardCarry } from "./standard-carry.ts";
import { REFERENCE } from "./surroundings.ts";
import { validityOf } from "./validity.ts";

/** On the ground, m: along the target line, and to its right. */
export interface Ground {
  readonly x: number;
  readonly z: number;
}

/** In the air, m: `y` is up. */
export interface Place extends Ground {
  readonly y: number;
}

export interface ShownFlight {
  /**
   * The way as the model has it, an estimate: in the session's air, in reference air where the session does not state its own. It is
   * bent to end where the ball landed. Empty where no launch was measured, or it is beyond the model.
   */
  readonly path: readonly Place[];
  /** Why there is no path: a sentence; null where there is one. */
  readonly noPath: string | null;
  /** As measured; null where carry or offline is not known. */
  readonly landing: Ground | null;
  /** By `standardCarry`, and its side by the same correction: an estimate, null where there is none. */
  readonly standard: Ground | null;
}

/** Seconds between two places of a path. */
const EVERY = 0.25;

export function shownFlight(readings: Readings, conditions: Conditions): ShownFlight {
  const { values, derived } = readings;
  const { carry, offline } = values;
  const isCarryKnown = carry !== undefined && !derived.includes("carry") && offline !== undefined;
  const landing = isCarryKnown ? groundAt(carry, offline) : null;
  const shot = measured(readings, LAUNCH);
  if (typeof shot === "string") return { path: [], noPath: shot, landing, standard: null };
  const launch = launchFrom(shot);
  const place = placeOf(conditions);
  const surroundings = typeof place === "string" ? REFERENCE : place.surroundings;
  const { status, reason } = validityOf(launch, surroundings);
  if (status === "unsupported") {
    return { path: [], noPath: `At this launch ${reason}.`, landing, standard: null };
  }
  const path = pathOf(launch, surroundings, SS94_FLAT, EVERY);
  const standard = standardCarry(readings, conditions);
  return {
    path: landing === null ? path : bentTo(landing, path),
    noPath: null,
    landing,
    standard:
      typeof place === "string" || standard.status === "not-measured" || offline === undefined
        ? null
        : groundAt(
            standard.value,
            offline / place.carryFactor +
              fly(launch, REFERENCE, SS94_FLAT).offline -
              fly(launch, surroundings, SS94_FLAT).offline,
          ),
  };
}

/** Null where a ball would be farther to the side than it went. */
export function groundAt(carry: number, offline: number): Ground | null {
  return Math.abs(offline) > carry ? null : { x: Math.sqrt(carry * carry - offline * offline), z: offline };
}

/** The same start and the same shape, ending here: stretched along, and drawn aside the more the farther it went. */
function bentTo(end: Ground, path: readonly Place[]): Place[] {
  const last = path.at(-1);
  if (last === undefined || !(last.x > 0)) return [...path];
  const stretch = end.x / last.x;
  const aside = end.z - last.z * stretch;
  return path.map(({ x, y, z }) => ({
    x: x * stretch,
    y,
    z: z * stretch + aside * (x / last.x) ** 2,
  }));
}
