/**
 * Which readings decide, when every reading may be off by a standard uncertainty u: those inside the limits by a guard
 * band are met, those outside by it are missed, between it is undecided (JCGM 106, acceptance intervals).
 */
import { allowedError } from "./confidence.ts";
import { normalQuantile } from "./distributions.ts";

/** The guard band at one limit: z·u. Against a range it is right as long as u is small beside the width. */
export function guardBand(uncertainty: number, level: number): number {
  return normalQuantile(1 - allowedError(level)) * uncertainty;
}
