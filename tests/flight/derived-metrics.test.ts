/** Metrics from other metrics, and readings that do not fit together. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SS94_FLAT } from "../../server/flight/coefficients.ts";
import { DEGREE, ZERO_CELSIUS } from "../../server/flight/constants.ts";
import { disagreements } from "../../server/flight/cross-checks.ts";
import { derivedMetrics } from "../../server/flight/derived-metrics.ts";
import { estimatedFlight } from "../../server/flight/estimated-flight.ts";
import { fly } from "../../server/flight/fly.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import { launch } from "./balls.ts";
import { conditions, estimateOf, IRON, reasonOf, shot } from "./shots.ts";

const CLUB = "dynamic-loft 24°, face-angle 2°, attack-angle -4°, club-path 4°";

const derivedFrom = (phrase: string) =>
  Object.fromEntries(
    derivedMetrics(shot(phrase).values).map(({ metric, value, by }) => [metric, { value, by }]),
  );

describe("what follows from the readings", () => {
  test("the strike, from what the club did", () => {
    const derived = derivedFrom(CLUB);
    expect(Object.keys(derived)).toEqual(["spin-loft", "launch-angle", "start-direction", "spin-axis"]);
    // Row D10 of the table of strikes.
    expect(derived["spin-loft"]?.by).toBe("geometry");
    expect((derived["spin-loft"]?.value ?? 0) / DEGREE).toBeCloseTo(28.06767728, 7);
    expect(derived["spin-axis"]?.by).toBe("strike");
    expect((derived["spin-axis"]?.value ?? 0) / DEGREE).toBeCloseTo(-4.088413406, 7);
    expect((derived["start-direction"]?.value ?? 0) / DEGREE).toBeCloseTo(2.426559479, 7);
    expect((derived["launch-angle"]?.value ?? 0) / DEGREE).toBeCloseTo(18.54045743, 7);
  });

  test("nothing, where one of the club's angles is missing", () => {
    expect(derivedFrom("dynamic-loft 24°, face-angle 2°, club-path 4°")).toEqual({});
  });

  test("what was measured is kept", () => {
    expect(derivedFrom(`${CLUB}, spin-axis 1°`)).not.toHaveProperty("spin-axis");
  });

  test("the curve from where the ball started and landed, and back", () => {
    fc.assert(
      fc.property(
        fc.record({
          start: fc.double({ min: -8, max: 8, noNaN: true }),
          tilt: fc.double({ min: -20, max: 20, noNaN: true }),
        }),
        ({ start, tilt }) => {
          const flight = fly(launch(60, 14, start, 3500, tilt), REFERENCE, SS94_FLAT);
          const known = { carry: flight.carry, "start-direction": start * DEGREE };
          const [curve] = derivedMetrics({ ...known, offline: flight.offline });
          expect(curve).toMatchObject({ metric: "curve", by: "geometry" });
          expect(curve?.value).toBeCloseTo(flight.curve, 8);
          const [offline] = derivedMetrics({ ...known, curve: flight.curve });
          expect(offline?.value).toBeCloseTo(flight.offline, 8);
        },
      ),
    );
  });

  test("no curve from a ball that lands farther aside than it flew", () => {
    expect(derivedFrom("carry 10 m, offline 20 m, start-direction 0°")).toEqual({});
  });
});

describe("the flight that the model makes of a launch", () => {
  test("is that of the session's air, each value with its own uncertainty", () => {
    const { carry, apex, "descent-angle": descent } = estimatedFlight(shot(IRON), conditions());
    expect(estimateOf(carry).value).toBeGreaterThan(150);
    expect(estimateOf(carry).uncertainty).toBeGreaterThan(1);
    expect(estimateOf(apex).value).toBeLessThan(estimateOf(carry).value);
    expect(estimateOf(descent).value / DEGREE).toBeGreaterThan(35);
  });

  test("has a reason for every value it does not have", () => {
    const without = estimatedFlight(shot(IRON.replace("spin-axis 4°", "apex 30 m")), conditions());
    for (const estimate of Object.values(without))
      expect(reasonOf(estimate)).toBe("The shot has no spin-axis.");
    const nowhere = estimatedFlight(shot(IRON), conditions({ wind: null }));
    expect(reasonOf(nowhere.carry)).toContain("does not state the wind");
    const slow = estimatedFlight(shot(IRON.replace("54", "15")), conditions());
    expect(reasonOf(slow.apex)).toContain("slower through the air");
  });
});

describe("readings that do not fit together", () => {
  const flagged = (
    phrase: string,
    derived: string[] = [],
    air = null as Parameters<typeof disagreements>[1],
  ) => disagreements(shot(phrase, derived), air).map(({ metric }) => metric);

  test("none, where a strike and its ball agree", () => {
    const strike = `${CLUB}, spin-loft 28°, launch-angle 18°, start-direction 2.6°, spin-axis -5°`;
    expect(flagged(strike)).toEqual([]);
  });

  test("a spin axis that face and path do not explain, with what they make of it", () => {
    const [found, ...others] = disagreements(shot(`${CLUB}, spin-axis 14°`), null);
    expect(others).toEqual([]);
    expect(found).toMatchObject({
      metric: "spin-axis",
      measured: 14 * DEGREE,
      from: ["dynamic-loft", "face-angle", "attack-angle", "club-path"],
      reason: expect.stringContaining("away from the middle of the face"),
    });
    expect((found?.low ?? 0) / DEGREE).toBeGreaterThan(-10);
    expect((found?.high ?? 9) / DEGREE).toBeLessThan(1);
  });

  test.each([
    [`${CLUB}, start-direction -2°`, "start-direction"],
    [`${CLUB}, launch-angle 30°`, "launch-angle"],
    [`${CLUB}, spin-loft 20°`, "spin-loft"],
    ["carry 200 m, offline 20 m, start-direction 2°, curve -13 m", "curve"],
  ])("%s", (phrase, metric) => {
    expect(flagged(phrase)).toEqual([metric]);
  });

  test("what was computed and not measured cannot disagree", () => {
    expect(flagged(`${CLUB}, spin-axis 14°`, ["spin-axis"])).toEqual([]);
    expect(flagged(`${CLUB}, spin-axis 14°`, ["club-path"])).toEqual([]);
  });

  test("a carry that no ball flies from this launch, once the air is known", () => {
    const far = IRON.replace("165", "240");
    expect(flagged(far)).toEqual([]);
    expect(flagged(far, [], conditions())).toEqual(["carry"]);
    expect(flagged(IRON, [], conditions())).toEqual([]);
    expect(flagged(`${IRON}, curve -30 m`, [], conditions())).toEqual(["curve"]);
  });

  test("wind is no disagreement", () => {
    const windy = conditions({ temperature: ZERO_CELSIUS + 18, wind: { along: -6, across: 0 } });
    expect(flagged(IRON.replace("165", "143"), [], windy)).toEqual([]);
  });

  test("the mirror image disagrees in the mirror image", () => {
    const [right] = disagreements(shot(`${CLUB}, spin-axis 14°`), null);
    const mirrored = `dynamic-loft 24°, face-angle -2°, attack-angle -4°, club-path -4°, spin-axis -14°`;
    const [left] = disagreements(shot(mirrored), null);
    expect(left?.low).toBeCloseTo(-(right?.high ?? 0), 12);
    expect(left?.high).toBeCloseTo(-(right?.low ?? 0), 12);
  });
});
