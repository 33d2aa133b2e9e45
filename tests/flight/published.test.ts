/**
 * What was published, with all the tolerance it needs: inputs are missing or printed with a digit or two. None of this is
 * precise; it is there to notice a model that has left the ground.
 */
import { describe, expect, test } from "vitest";
import { airOf } from "../../server/flight/air.ts";
import { dragCoefficient, SS94, SS94_FLAT } from "../../server/flight/coefficients.ts";
import { ZERO_CELSIUS } from "../../server/flight/constants.ts";
import { fly } from "../../server/flight/fly.ts";
import { axisOf, startOf } from "../../server/flight/launch.ts";
import { complete, motionOf } from "../../server/flight/motion.ts";
import { REFERENCE, type Surroundings } from "../../server/flight/surroundings.ts";
import { launch, PLAIN_AIR, RPM } from "./balls.ts";
import { YARD } from "./flights.ts";

const DRIVE = launch(73, 12, 0, 2700);
const MPH = 0.44704;

test("spin is lost at 340 rpm/s at 120 mph and 7097 rpm (Dewhurst 2015, one digit)", () => {
  const ball = launch(120 * MPH, 15, 0, 7097);
  const start = startOf(ball);
  complete(start, motionOf(axisOf(ball), PLAIN_AIR, SS94_FLAT));
  expect(Math.abs(-start.spinSlope / RPM / 340 - 1)).toBeLessThan(0.12);
});

test("a drive lands with about three quarters of its spin (Penner 2001, another flight)", () => {
  const { landingSpin } = fly(DRIVE, REFERENCE, SS94_FLAT);
  expect(Math.abs(landingSpin / DRIVE.spinRate - 0.75)).toBeLessThan(0.08);
});

test("the two sets are about as far apart as two balls are: 18 m on a drive (Lyu et al. 2018)", () => {
  const fast = launch(75, 11, 0, 2700);
  const apart = fly(fast, REFERENCE, SS94_FLAT).carry - fly(fast, REFERENCE, SS94).carry;
  expect(apart / YARD).toBeGreaterThan(15);
  expect(apart / YARD).toBeLessThan(25);
});

test("lift lengthens a shot of 58 m/s at 10° by tens of metres", () => {
  const [lifted, bare] = [1, 0].map(
    (lift) => fly(launch(58, 10, 0, 3500), { ...REFERENCE, ball: { drag: 1, lift } }, SS94).carry,
  );
  expect((lifted ?? 0) - (bare ?? 0)).toBeGreaterThan(40);
});

test("drag without spin is among what six balls had in a wind tunnel, 0.24 to 0.7 (Jenkins et al. 2018)", () => {
  for (const reynolds of [80_000, 95_000, 108_000]) {
    expect(dragCoefficient(SS94, 0, reynolds)).toBeGreaterThan(0.22);
    expect(dragCoefficient(SS94_FLAT, 0, reynolds)).toBeGreaterThanOrEqual(0.24);
  }
});

describe("what the two sets say of a drive", () => {
  const air = (celsius: number, humidity: number, pressure = 101_325): Surroundings => ({
    ...REFERENCE,
    air: airOf(ZERO_CELSIUS + celsius, pressure, humidity),
  });
  const wind = (along: number): Surroundings => ({ ...REFERENCE, wind: { along, across: 0, exponent: 0 } });
  const yards = (place: Surroundings) =>
    [SS94, SS94_FLAT].map((set) => fly(DRIVE, place, set).carry / YARD) as [number, number];
  const reference = yards(REFERENCE);

  test.each([
    ["in reference air", REFERENCE, undefined, [245.0, 265.1]],
    ["at 5 °C", air(5, 0), REFERENCE, [-5.9, -4.7]],
    ["at 35 °C and 50 %", air(35, 0.5), REFERENCE, [13.2, 9.9]],
    ["at 1500 m", air(15, 0, 84_560), REFERENCE, [25.6, 22.2]],
    ["from dry to saturated air at 25 °C", air(25, 1), air(25, 0), [1.7, 1.5]],
    ["in a head wind of 4 m/s", wind(-4), REFERENCE, [-20.5, -21.3]],
    ["in a tail wind of 4 m/s", wind(4), REFERENCE, [17.9, 18.0]],
  ] as const)("%s", (_, place, against, expected) => {
    const from = against === undefined ? [0, 0] : yards(against);
    for (const [index, carry] of yards(place).entries()) {
      expect(carry - (from[index] ?? 0)).toBeCloseTo(expected[index] ?? Number.NaN, 1);
    }
    expect(reference[0]).toBeLessThan(reference[1]);
  });
});
