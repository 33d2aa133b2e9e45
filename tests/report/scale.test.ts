/** Axes end at round numbers and hold what is shown. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { scaleOf } from "../../server/report/pictures/scale.ts";

const across = { from: 0, to: 100, unit: 1 };

test.each([
  { values: [-1.3, 4.2], ticks: [-2, 0, 2, 4, 6] },
  { values: [0.12, 0.31], ticks: [0.1, 0.15, 0.2, 0.25, 0.3, 0.35] },
  { values: [138, 163], ticks: [135, 140, 145, 150, 155, 160, 165] },
  { values: [7], ticks: [6, 6.5, 7, 7.5, 8] },
  { values: [], ticks: [0, 0.2, 0.4, 0.6, 0.8, 1] },
  { values: [0, Number.POSITIVE_INFINITY, 4], ticks: [0, 1, 2, 3, 4] },
])("$values: $ticks", ({ values, ticks }) => {
  const scale = scaleOf(values, across);
  expect(scale.ticks.map((tick) => Number(tick.toFixed(6)))).toEqual(ticks);
});

test("every number has its place on the picture, in order", () => {
  const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(fc.array(number, { minLength: 2, maxLength: 20 }), (values) => {
      const scale = scaleOf(values, across);
      const places = values.toSorted((one, other) => one - other).map(scale.at);
      for (const [index, place] of places.entries()) {
        expect(place).toBeGreaterThanOrEqual(0);
        expect(place).toBeLessThanOrEqual(100);
        expect(place).toBeGreaterThanOrEqual(places[index - 1] ?? 0);
      }
      expect(scale.ticks.length).toBeLessThan(15);
    }),
  );
});
