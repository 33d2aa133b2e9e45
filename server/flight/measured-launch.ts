/** What of a shot's launch was measured. */
import type { Shot } from "../../shared/session-data.ts";
import type { Launch } from "./launch.ts";

/** The readings of a shot (SI, target frame) by metric, and which of them were computed from others. */
export type Readings = Pick<Shot, "values" | "derived">;

/** What is asked of a shot, and what of it can be believed: sizes up to these, SI. */
const MOST = {
  "ball-speed": 110,
  "launch-angle": Math.PI / 2,
  "start-direction": Math.PI / 2,
  "spin-rate": 2000,
  "spin-axis": Math.PI / 2,
  "attack-angle": Math.PI / 2,
  carry: 500,
} as const;

export type Input = keyof typeof MOST;

/** The readings that a launch is made of. */
export const LAUNCH = [
  "ball-speed",
  "launch-angle",
  "start-direction",
  "spin-rate",
  "spin-axis",
] as const satisfies readonly Input[];

/**
 * The readings, or a sentence that says which is missing. A reading that was computed from others is as good as missing: what a
 * formula filled in would come back as if it had been measured.
 */
export function measured<const Name extends Input>(
  { values, derived }: Readings,
  names: readonly Name[],
): Readonly<Record<Name, number>> | string {
  const missing = names.filter((name) => !Number.isFinite(values[name]));
  if (missing.length > 0) return `The shot has no ${missing.join(" and no ")}.`;
  const computed = names.filter((name) => derived.includes(name));
  if (computed.length > 0) {
    return `Of the shot, ${computed.join(" and ")} ${computed.length === 1 ? "was" : "were"} computed from other readings, not measured.`;
  }
  const beyond = names.filter((name) => Math.abs(values[name] ?? 0) > MOST[name]);
  if (beyond.length > 0) return `The shot's ${beyond.join(" and ")} cannot be right: check the unit.`;
  return Object.fromEntries(names.map((name) => [name, values[name] as number])) as Record<Name, number>;
}

/** The launch of readings that have one. Without a direction the ball starts along the target line. */
export function launchFrom(
  readings: Readonly<
    Record<"ball-speed" | "launch-angle" | "spin-rate" | "spin-axis", number> & { "start-direction"?: number }
  >,
): Launch {
  return {
    ballSpeed: readings["ball-speed"],
    launchAngle: readings["launch-angle"],
    startDirection: readings["start-direction"] ?? 0,
    spinRate: readings["spin-rate"],
    spinAxis: readings["spin-axis"],
  };
}
