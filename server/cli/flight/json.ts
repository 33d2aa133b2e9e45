/** Flights for other programs: SI, target frame, radians. */

import { CAUTION } from "../../../shared/care.ts";
import type { Hand } from "../../../shared/plan-model.ts";
import { LABEL, LIMITS, UNCERTAINTY } from "../../flight/limits.ts";
import type { FlightEstimates } from "../../report/flight-estimates.ts";
import type { StatedAir } from "./conditions.ts";
import type { Bounds, LaunchEstimates, Worth } from "./estimates.ts";

export function documentOf(
  all: readonly LaunchEstimates[],
  { conditions, windExponent }: StatedAir,
  bounds: Bounds | null,
  worth: readonly Worth[],
  hand: Hand,
  tool: string,
): FlightEstimates {
  return {
    format: "drillwright/flight-estimates",
    version: 1,
    tool,
    label: LABEL,
    uncertainty: UNCERTAINTY,
    limits: LIMITS,
    caution: CAUTION,
    units: "SI: m, m/s, s, rad, rad/s, K, Pa. Right, up and towards the target are positive.",
    conditions: { ...conditions, windExponent },
    hand,
    flights: all.map(({ stated: { line, values, problems }, ...estimates }) => ({
      line,
      launch: values,
      problems,
      ...estimates,
    })),
    bounds,
    worth,
  };
}
