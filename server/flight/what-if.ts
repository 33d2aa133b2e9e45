/** What a change of one thing is worth, everything else the same. */
import { COEFFICIENTS, type Coefficients } from "./coefficients.ts";
import { DEGREE } from "./constants.ts";
import { type Estimate, estimated, LENGTH_STEP } from "./estimate.ts";
import { fly } from "./fly.ts";
import { type ClubDelivery, strikeOf } from "./impact.ts";
import type { Launch } from "./launch.ts";
import { REFERENCE, type Surroundings } from "./surroundings.ts";
import { validityOf, worse } from "./validity.ts";

/** The metrics that can be thought other than they are: of the ball, and of the club that sent it. */
const OF_LAUNCH = {
  "ball-speed": "ballSpeed",
  "launch-angle": "launchAngle",
  "start-direction": "startDirection",
  "spin-rate": "spinRate",
  "spin-axis": "spinAxis",
} as const satisfies Record<string, keyof Launch>;

const OF_CLUB = {
  "face-angle": "faceAngle",
  "club-path": "clubPath",
  "attack-angle": "attackAngle",
  "dynamic-loft": "dynamicLoft",
} as const satisfies Record<string, keyof ClubDelivery>;

export type LaunchMetric = keyof typeof OF_LAUNCH;
export type ClubMetric = keyof typeof OF_CLUB;

/** How much more, SI, in the target frame: one degree more face to the right is `{ metric: "face-angle", by: DEGREE }`. */
export interface Change<Metric = LaunchMetric | ClubMetric> {
  readonly metric: Metric;
  readonly by: number;
}

/** How much more carry, offline and curve, m. All labelled estimates. */
export interface Effect {
  readonly carry: Estimate;
  readonly offline: Estimate;
  readonly curve: Estimate;
}

/** A change of the ball's own launch. */
export function whatIfLaunch(
  launch: Launch,
  { metric, by }: Change<LaunchMetric>,
  surroundings: Surroundings = REFERENCE,
): Effect {
  const name = OF_LAUNCH[metric];
  return effectOf(launch, { ...launch, [name]: launch[name] + by }, surroundings);
}

/**
 * A change at the club. What the strike of a rigid ball (impact.ts) makes of it is laid on the launch that was measured: angles are
 * added, speeds and spins multiplied, so that an error of that model's level cancels to first order. The club keeps its speed.
 */
export function whatIfClub(
  launch: Launch,
  delivery: ClubDelivery,
  { metric, by }: Change<ClubMetric>,
  surroundings: Surroundings = REFERENCE,
): Effect {
  const name = OF_CLUB[metric];
  const before = strikeOf(delivery);
  const now = strikeOf({ ...delivery, [name]: delivery[name] + by });
  const changed: Launch = {
    ballSpeed: launch.ballSpeed * (now.ballSpeed / before.ballSpeed),
    launchAngle: launch.launchAngle + (now.launchAngle - before.launchAngle),
    startDirection: launch.startDirection + (now.startDirection - before.startDirection),
    spinRate:
      before.surfaceSpeed > 0 ? launch.spinRate * (now.surfaceSpeed / before.surfaceSpeed) : launch.spinRate,
    spinAxis: launch.spinAxis + (now.spinAxis - before.spinAxis),
  };
  return effectOf(launch, changed, surroundings);
}

/** The changes that are worth showing where none is asked for: a degree of what the club does. */
export const USUAL_CHANGES: readonly Change<ClubMetric>[] = [
  { metric: "face-angle", by: DEGREE },
  { metric: "club-path", by: DEGREE },
  { metric: "attack-angle", by: DEGREE },
];

function effectOf(before: Launch, now: Launch, surroundings: Surroundings): Effect {
  const validity = worse(validityOf(before, surroundings), validityOf(now, surroundings));
  const isShown = validity.status !== "unsupported";
  const [value, other] = isShown
    ? [COEFFICIENTS.ss94_flat, COEFFICIENTS.ss94].map((set) => difference(before, now, surroundings, set))
    : [];
  const effect = (name: "carry" | "offline" | "curve") => {
    const [one, two] = [value?.[name] ?? 0, other?.[name] ?? 0];
    return estimated(one, one - two, LENGTH_STEP, validity, []);
  };
  return { carry: effect("carry"), offline: effect("offline"), curve: effect("curve") };
}

function difference(before: Launch, now: Launch, surroundings: Surroundings, coefficients: Coefficients) {
  const one = fly(before, surroundings, coefficients);
  const other = fly(now, surroundings, coefficients);
  return {
    carry: other.carry - one.carry,
    offline: other.offline - one.offline,
    curve: other.curve - one.curve,
  };
}
