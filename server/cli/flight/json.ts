/** Flights for other programs: SI, target frame, radians. */
import type { Hand } from "../../../shared/plan-model.ts";
import { LABEL, LIMITS, UNCERTAINTY } from "../../flight/limits.ts";
import type { StatedAir } from "./conditions.ts";
import type { LaunchEstimates, Worth } from "./estimates.ts";

export interface FlightDocument {
  readonly format: "drillwright/flight-estimates";
  readonly version: 1;
  readonly tool: string;
  /** What the numbers are, what `uncertainty` is, and when not to trust them. */
  readonly label: string;
  readonly uncertainty: string;
  readonly limits: readonly string[];
  readonly units: string;
  readonly conditions: StatedAir["conditions"] & { readonly windExponent: number };
  readonly hand: Hand;
  readonly flights: readonly (Omit<LaunchEstimates, "stated"> & {
    readonly line: number | null;
    readonly launch: Readonly<Record<string, number>>;
    readonly problems: readonly string[];
  })[];
  /** For one launch: what changes are worth. */
  readonly worth: readonly Worth[];
}

export function documentOf(
  all: readonly LaunchEstimates[],
  { conditions, windExponent }: StatedAir,
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
    units: "SI: m, m/s, s, rad, rad/s, K, Pa. Right, up and towards the target are positive.",
    conditions: { ...conditions, windExponent },
    hand,
    flights: all.map(({ stated: { line, values, problems }, ...estimates }) => ({
      line,
      launch: values,
      problems,
      ...estimates,
    })),
    worth,
  };
}
