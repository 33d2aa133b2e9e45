/** Shots as pictures show them: what was measured stays where it was measured, and estimates follow from it. */
import { describe, expect, test } from "vitest";
import { DEGREE } from "../../server/flight/constants.ts";
import { shownFlight } from "../../server/flight/shown-flight.ts";
import { standardCarry } from "../../server/flight/standard-carry.ts";
import { conditions, estimateOf, IRON, shot } from "./shots.ts";

const WINDY = conditions({ wind: { along: -4, across: 2 } });
const YARD = 0.9144;

describe("a shot in a wind that is stated", () => {
  const readings = shot(`${IRON}, offline 7 yd`);
  const { path, landing, standard } = shownFlight(readings, WINDY);

  test("landed where carry and offline say", () => {
    expect(landing?.z).toBeCloseTo(7 * YARD, 9);
    expect(Math.hypot(landing?.x ?? 0, landing?.z ?? 0)).toBeCloseTo(165 * YARD, 9);
  });

  test("its way starts where it was measured to start, and ends where it landed", () => {
    const [first, second] = path;
    expect(first).toEqual({ x: 0, y: 0, z: 0 });
    // In a quarter of a second it has bent by little.
    expect(Math.atan2(second?.z ?? 9, second?.x ?? 1) / DEGREE).toBeCloseTo(1, 0);
    const last = path.at(-1);
    expect(last?.x).toBeCloseTo(landing?.x ?? 0, 9);
    expect(last?.z).toBeCloseTo(landing?.z ?? 0, 9);
    expect(last?.y).toBeCloseTo(0, 6);
  });

  test("in reference air it carries what its standard carry says, and is not blown aside", () => {
    const carry = estimateOf(standardCarry(readings, WINDY)).value;
    expect(Math.hypot(standard?.x ?? 0, standard?.z ?? 0)).toBeCloseTo(carry, 9);
    expect(standard?.z).toBeLessThan((landing?.z ?? 0) - 4);
  });

  test("the other way round it is the mirror image", () => {
    const turned = shot(
      "carry 165 yd, ball-speed 54 m/s, launch-angle 16°, start-direction -1°, spin-rate 6200 rpm, spin-axis -4°, offline -7 yd",
    );
    const mirrored = shownFlight(turned, conditions({ wind: { along: -4, across: -2 } }));
    expect(mirrored.standard?.z).toBeCloseTo(-(standard?.z ?? 0), 9);
    for (const [place, at] of path.entries()) {
      expect(mirrored.path[place]?.x).toBeCloseTo(at.x, 9);
      expect(mirrored.path[place]?.z).toBeCloseTo(-at.z, 9);
    }
  });
});

describe("what is not known is not shown", () => {
  test("without conditions nothing is said of reference air", () => {
    const { path, landing, standard } = shownFlight(
      shot(`${IRON}, offline 7 yd`),
      conditions({ temperature: null }),
    );
    expect(path.length).toBeGreaterThan(10);
    expect(landing).not.toBeNull();
    expect(standard).toBeNull();
  });

  test("a spin that was computed and not measured gives no way", () => {
    const { path, landing, standard } = shownFlight(shot(`${IRON}, offline 7 yd`, ["spin-rate"]), WINDY);
    expect([path, standard]).toEqual([[], null]);
    expect(landing).not.toBeNull();
  });

  test("a launch beyond the model gives no way", () => {
    const readings = shot(
      "carry 20 yd, ball-speed 12 m/s, launch-angle 40°, start-direction 0°, spin-rate 4000 rpm, spin-axis 0°, offline 0 yd",
    );
    expect(shownFlight(readings, WINDY)).toMatchObject({
      path: [],
      standard: null,
      noPath: "At this launch the ball starts slower through the air than the flight model is made for.",
    });
  });

  test("without a carry that was measured there is no landing", () => {
    const without = IRON.replace(/carry [^,]+, /, "");
    expect(shownFlight(shot(`${without}, offline 7 yd`), WINDY).landing).toBeNull();
    expect(shownFlight(shot(`${IRON}, offline 7 yd`, ["carry"]), WINDY).landing).toBeNull();
  });

  test("without a side there is no landing, and the way is the model's own", () => {
    const { path, landing, standard } = shownFlight(shot(IRON), WINDY);
    expect([landing, standard]).toEqual([null, null]);
    expect(path.length).toBeGreaterThan(10);
  });
});
