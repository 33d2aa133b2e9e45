import { expect, test } from "vitest";
import { circleConformance } from "../../shared/statistics/circle-conformance.ts";
import { normalCdf } from "../../shared/statistics/distributions.ts";
import { slackOf } from "../../shared/statistics/interval.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

const slack = slackOf(1);

test("the reference table", () => {
  const columns = ["distance_from_centre", "radius", "u_each_axis", "conformance_probability"] as const;
  for (const row of oracleRows("statistics/circle_conformance.csv", columns)) {
    const actual = circleConformance(
      numberIn(row.distance_from_centre),
      numberIn(row.radius),
      numberIn(row.u_each_axis),
      slack,
    );
    expectNear(actual, numberIn(row.conformance_probability), { absolute: 1e-9 }, row);
  }
});

test("where the boundary is taken as straight, the probability goes on as it did", () => {
  for (const z of [-2, -0.5, 0, 1]) {
    const curved = circleConformance(2990 - z, 2990, 1, slack);
    const straight = circleConformance(3010 - z, 3010, 1, slack);
    expectNear(straight, curved, { absolute: 2e-6 }, { z });
    expectNear(straight, normalCdf(z), { absolute: 2e-4 }, { z });
  }
});

test("exact readings, a circle without size, and uncertainties that are none", () => {
  expect([5, 5.1].map((distance) => circleConformance(distance, 5, 0, slack))).toEqual([1, 0]);
  expect(circleConformance(0.1 + 0.2, 0.3, 0, slack)).toBe(1);
  expect(circleConformance(3, 0, 1, slack)).toBe(0);
  expect(circleConformance(3, 5, -1, slack)).toBeNaN();
});
