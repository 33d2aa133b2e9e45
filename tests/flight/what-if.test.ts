/** What a change is worth. */
import { describe, expect, test } from "vitest";
import { COEFFICIENTS } from "../../server/flight/coefficients.ts";
import { DEGREE, RPM } from "../../server/flight/constants.ts";
import { type Flight, fly } from "../../server/flight/fly.ts";
import { type ClubDelivery, launchOf, strikeOf } from "../../server/flight/impact.ts";
import type { Launch } from "../../server/flight/launch.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import { type Effect, USUAL_CHANGES, whatIfClub, whatIfLaunch } from "../../server/flight/what-if.ts";
import { launch } from "./balls.ts";
import { YARD } from "./flights.ts";
import { estimateOf } from "./shots.ts";

const IRON = launch(54, 16, 0, 6200, 0);
const SQUARE: ClubDelivery = {
  dynamicLoft: 24 * DEGREE,
  faceAngle: 0,
  attackAngle: -4 * DEGREE,
  clubPath: 0,
};

const yards = (effect: Effect) =>
  Object.fromEntries(
    Object.entries(effect).map(([name, estimate]) => [name, estimateOf(estimate).value / YARD]),
  );

describe("at the club", () => {
  test("a degree more face to the right starts the ball right and bends it right", () => {
    const { carry, offline, curve } = yards(whatIfClub(IRON, SQUARE, { metric: "face-angle", by: DEGREE }));
    expect(Math.abs(carry ?? 9)).toBeLessThan(0.5);
    expect(curve).toBeGreaterThan(1);
    // Most of a degree of start on top of the curve.
    expect((offline ?? 0) - (curve ?? 0)).toBeGreaterThan(0.6 * 165 * DEGREE);
  });

  test("a degree more path to the right bends it left", () => {
    const { offline, curve } = yards(whatIfClub(IRON, SQUARE, { metric: "club-path", by: DEGREE }));
    expect(curve).toBeLessThan(-1);
    expect(offline).toBeGreaterThan(curve ?? 0);
  });

  test("a degree of both turns the shot", () => {
    const turned = { ...SQUARE, clubPath: DEGREE };
    const start = { ...IRON, startDirection: 0 };
    const path = yards(whatIfClub(start, SQUARE, { metric: "club-path", by: DEGREE }));
    const face = yards(whatIfClub(start, turned, { metric: "face-angle", by: DEGREE }));
    expect((path.curve ?? 9) + (face.curve ?? 9)).toBeCloseTo(0, 0);
    expect((path.offline ?? 9) + (face.offline ?? 9)).toBeCloseTo(yards165(), 0);
  });

  test.each([
    ["face-angle", "faceAngle"],
    ["club-path", "clubPath"],
    ["attack-angle", "attackAngle"],
    ["dynamic-loft", "dynamicLoft"],
  ] as const)(
    "two degrees of %s are worth the flight of the other strike, laid on the strike's own",
    (metric, name) => {
      const delivery = { ...SQUARE, faceAngle: DEGREE, clubPath: -2 * DEGREE };
      const [before, now] = [delivery, { ...delivery, [name]: delivery[name] + 2 * DEGREE }].map((each) =>
        launchOf(strikeOf(each), 38),
      ) as [Launch, Launch];
      const [one, other] = [before, now].map((each) => fly(each, REFERENCE, COEFFICIENTS.ss94_flat)) as [
        Flight,
        Flight,
      ];
      const effect = whatIfClub(before, delivery, { metric, by: 2 * DEGREE });
      for (const of of ["carry", "offline", "curve"] as const) {
        expect(estimateOf(effect[of]).value).toBeCloseTo(other[of] - one[of], 2);
      }
    },
  );

  test("steeper with the same loft spins more and carries less", () => {
    const { carry } = yards(whatIfClub(IRON, SQUARE, { metric: "attack-angle", by: -2 * DEGREE }));
    expect(carry).toBeLessThan(0);
  });

  test("the other hand is the mirror image, to the last digit shown", () => {
    const pull = { ...SQUARE, faceAngle: -3 * DEGREE, clubPath: -5 * DEGREE };
    const push = { ...SQUARE, faceAngle: 3 * DEGREE, clubPath: 5 * DEGREE };
    const one = whatIfClub(launch(54, 16, -3, 6200, 6), pull, { metric: "face-angle", by: DEGREE });
    const other = whatIfClub(launch(54, 16, 3, 6200, -6), push, { metric: "face-angle", by: -DEGREE });
    expect(estimateOf(other.offline).value).toBe(-estimateOf(one.offline).value);
    expect(estimateOf(other.curve).value).toBe(-estimateOf(one.curve).value);
    expect(other.carry).toEqual(one.carry);
  });

  test("usual changes are a degree each", () => {
    for (const change of USUAL_CHANGES) {
      expect(change.by).toBe(DEGREE);
      expect(yards(whatIfClub(IRON, SQUARE, change))).toHaveProperty("offline");
    }
  });
});

describe("of the launch", () => {
  test.each([
    { metric: "ball-speed", by: 1, least: 3, most: 5 },
    { metric: "launch-angle", by: DEGREE, least: -2, most: 2 },
    { metric: "spin-rate", by: 500 * RPM, least: -4, most: -0.5 },
    { metric: "start-direction", by: DEGREE, least: -0.001, most: 0.001 },
    { metric: "spin-axis", by: 5 * DEGREE, least: -1, most: 0 },
  ] as const)("$metric changes the carry by $least to $most yd", ({ metric, by, least, most }) => {
    const effect = whatIfLaunch(IRON, { metric, by });
    const { carry = Number.NaN } = yards(effect);
    expect(carry).toBeGreaterThan(least);
    expect(carry).toBeLessThan(most);
    expect(estimateOf(effect.carry).uncertainty).toBeLessThan(Math.abs(carry) * YARD + 0.2);
  });

  test("nothing changed changes nothing", () => {
    const effect = whatIfLaunch(IRON, { metric: "launch-angle", by: 0 }, REFERENCE);
    expect(yards(effect)).toEqual({ carry: 0, offline: 0, curve: 0 });
  });

  test("beyond the model there is no effect, but a reason", () => {
    const effect = whatIfLaunch(launch(20, 16, 0, 3000), { metric: "ball-speed", by: 1 });
    expect(effect.carry).toMatchObject({ status: "not-measured", reason: expect.stringContaining("slower") });
  });

  test("a change to where the model only reaches by stretching is marked", () => {
    const effect = whatIfLaunch(IRON, { metric: "spin-rate", by: 1500 * RPM });
    expect(effect.curve.status).toBe("extrapolated");
  });
});

/** How far a degree turns the landing point of this iron. */
function yards165(): number {
  const { offline } = yards(whatIfLaunch(IRON, { metric: "start-direction", by: DEGREE }));
  return offline ?? Number.NaN;
}
