/** How much of the carry within reach a launch used. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestReachable } from "../../server/flight/best-carry.ts";
import { bestLaunch } from "../../server/flight/best-launch.ts";
import { COEFFICIENTS, type CoefficientSet } from "../../server/flight/coefficients.ts";
import { DEGREE } from "../../server/flight/constants.ts";
import { launchEfficiency } from "../../server/flight/launch-efficiency.ts";
import { estimateOf, reasonOf, shot } from "./shots.ts";

const DRIVE = "ball-speed 70 m/s, launch-angle 12°, spin-rate 3200 rpm, spin-axis 0°, attack-angle 0°";

describe("the table", () => {
  test("is near what a search finds", () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const sets = fc.constantFrom(...(Object.keys(COEFFICIENTS) as CoefficientSet[]));
    fc.assert(
      fc.property(between(34, 80), between(-8, 8), sets, (ballSpeed, attack, set) => {
        const known = bestReachable(ballSpeed, attack * DEGREE, set);
        const best = bestLaunch({ ballSpeed }, attack * DEGREE, COEFFICIENTS[set]);
        expect(Math.abs((known?.carry ?? 0) / best.carry - 1)).toBeLessThan(2e-4);
        const off = (known?.launch.launchAngle ?? 0) - best.launch.launchAngle;
        expect(Math.abs(off)).toBeLessThan(0.4 * DEGREE);
        expect(known?.launch.ballSpeed).toBeCloseTo(ballSpeed, 9);
      }),
      { seed: 1, numRuns: 25 },
    );
  });

  test("has an answer up to its edges and none beyond", () => {
    for (const [ballSpeed, attack, isIn] of [
      [24, -12.5, true],
      [96, 10, true],
      [23.9, 0, false],
      [96.1, 0, false],
      [60, 10.1, false],
      [60, Number.NaN, false],
    ] as const) {
      expect(bestReachable(ballSpeed, attack * DEGREE, "ss94") !== undefined).toBe(isIn);
    }
  });
});

describe("launch efficiency", () => {
  test("of the best launch is all of it", () => {
    const best = bestLaunch({ ballSpeed: 70 }, 0, COEFFICIENTS.ss94_flat).launch;
    const values = {
      ...shot(DRIVE).values,
      "launch-angle": best.launchAngle,
      "spin-rate": best.spinRate,
    };
    const { value, uncertainty, status } = estimateOf(launchEfficiency({ values, derived: [] }));
    expect(value).toBeCloseTo(1, 3);
    expect(uncertainty).toBeLessThan(0.01);
    expect(status).toBe("supported");
  });

  test("falls with too little launch, too much spin and a tilted axis, whatever the direction", () => {
    const of = (phrase: string) => estimateOf(launchEfficiency(shot(phrase))).value;
    const good = of(DRIVE);
    expect(of(DRIVE.replace("12°", "6°"))).toBeLessThan(good - 0.02);
    expect(of(DRIVE.replace("3200", "5500"))).toBeLessThan(good - 0.02);
    expect(of(DRIVE.replace("spin-axis 0°", "spin-axis 20°"))).toBeLessThan(good - 0.01);
    expect(of(`${DRIVE}, start-direction 5°`)).toBe(good);
  });

  test("is a whole number of millionths", () => {
    const { value } = estimateOf(launchEfficiency(shot(DRIVE)));
    expect(value).toBe(Number(value.toFixed(6)));
  });

  test("of a wedge is extrapolated", () => {
    const wedge = DRIVE.replace("70 m/s", "40 m/s").replace("3200", "8000").replace("12°", "28°");
    expect(launchEfficiency(shot(wedge))).toMatchObject({ status: "extrapolated" });
  });

  test.each([
    [", attack-angle 0°", "", "The shot has no attack-angle."],
    ["spin-axis 0°", "offline 3 m", "The shot has no spin-axis."],
    [
      "attack-angle 0°",
      "attack-angle 14°",
      "attack angles from 12.5° down to 10° up, and this shot is outside.",
    ],
    ["3200 rpm", "100 rpm", "the ball spins less for its speed than the flight model is made for"],
  ])("is not measured with %s as %s", (from, to, reason) => {
    expect(reasonOf(launchEfficiency(shot(DRIVE.replace(from, to))))).toContain(reason);
  });

  test("is not measured from an attack angle that was computed", () => {
    expect(reasonOf(launchEfficiency(shot(DRIVE, ["attack-angle"])))).toContain("attack-angle was computed");
  });
});
