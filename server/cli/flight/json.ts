/** Flights for other programs: SI, target frame, radians. */
import type { Hand } from "../../../shared/plan-model.ts";
import { LABEL, LIMITS, UNCERTAINTY } from "../../flight/limits.ts";
import { CAUTION } from "../../report/caution.ts";
import type { StatedAir } from "./conditions.ts";
import type { Bounds, LaunchEstimates, Worth } from "./estimates.ts";

export interface FlightDocument {
  readonly format: "drillwright/flight-estimates";
  readonly version: 1;
  readonly tool: string;
  /** What the numbers are, what `uncertainty` is, and when not to trust them. */
  readonly label: string;
  readonly uncertainty: string;
  readonly limits: readonly string[];
  /** Words of care for whoever swings because of a number. */
  readonly caution: string;
  readonly units: string;
  readonly conditions: StatedAir["conditions"] & { readonly windExponent: number };
  readonly hand: Hand;
  readonly flights: readonly (Omit<LaunchEstimates, "stated"> & {
    readonly line: number | null;
    readonly launch: Readonly<Record<string, number>>;
    readonly problems: readonly string[];
  })[];
  /** For one launch: what its ball speed could do, and what changes are worth. */
  readonly bounds: Bounds | null;
  readonly worth: readonly Worth[];
}

export function documentOf(
  all: readonly LaunchEstimates[],
  { conditions, windExponent }: StatedAir,
  bounds: Bounds | null,
  worth: readonly Worth[],
  hand: Hand,
  tool: string,
): FlightDocument {
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
