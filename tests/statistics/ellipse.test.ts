import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Cloud,
  cloudOf,
  ellipseAreaLimits,
  ellipseOf,
  factorForMean,
  factorForNextShot,
  factorForShots,
} from "../../shared/statistics/ellipse.ts";
import { slackOf } from "../../shared/statistics/interval.ts";
import { judgeByLimits } from "../../shared/statistics/verdict.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { unlimited } from "./samples.ts";

const relative = 1e-10;
const degree = Math.PI / 180;

describe("the ellipse: the reference table", () => {
  const columns = [
    "id",
    "x_across",
    "y_along",
    "n",
    "mean_x",
    "mean_y",
    "var_x",
    "var_y",
    "cov_xy",
    "content",
    "semi_axis_major",
    "semi_axis_minor",
    "major_axis_angle_deg_from_x",
    "area_content",
    "area_prediction_next_shot",
    "area_confidence_for_mean",
  ] as const;

  test.each(oracleRows("statistics/ellipse.csv", columns))("$id for $content", (row) => {
    const cloud = cloudIn(row);
    expectNear(cloud.meanX, numberIn(row.mean_x), { absolute: 1e-12 }, row);
    expectNear(cloud.meanY, numberIn(row.mean_y), { relative }, row);
    expectNear(cloud.varianceX, numberIn(row.var_x), { relative }, row);
    expectNear(cloud.varianceY, numberIn(row.var_y), { relative }, row);
    expectNear(cloud.covariance, numberIn(row.cov_xy), { relative }, row);

    const content = numberIn(row.content);
    const ellipse = ellipseOf(cloud, factorForShots(content));
    expectNear(ellipse.long, numberIn(row.semi_axis_major), { relative }, row);
    expectNear(ellipse.short, numberIn(row.semi_axis_minor), { relative }, row);
    const angle = row.major_axis_angle_deg_from_x;
    if (angle === "any") expect(ellipse.angle).toBe(0);
    else expectNear(ellipse.angle / degree, numberIn(angle), { relative }, row);
    expectNear(ellipse.area, numberIn(row.area_content), { relative }, row);

    const n = numberIn(row.n);
    const area = (factor: number | undefined) => ellipseOf(cloud, factor ?? Number.NaN).area;
    expectNear(
      area(factorForNextShot(n, content)),
      numberIn(row.area_prediction_next_shot),
      { relative },
      row,
    );
    expectNear(area(factorForMean(n, content)), numberIn(row.area_confidence_for_mean), { relative }, row);
  });
});

test("the factors of the three ellipses", () => {
  const columns = ["n", "content", "c_content", "c_prediction_next_shot", "c_confidence_for_mean"] as const;
  for (const row of oracleRows("statistics/ellipse_factors.csv", columns)) {
    const [n, content] = [numberIn(row.n), numberIn(row.content)];
    expectNear(factorForShots(content), numberIn(row.c_content), { relative }, row);
    expectNear(factorForNextShot(n, content), numberIn(row.c_prediction_next_shot), { relative }, row);
    expectNear(factorForMean(n, content), numberIn(row.c_confidence_for_mean), { relative }, row);
  }
});

describe("the area as ability: the reference table", () => {
  const columns = [
    "id",
    "x_across",
    "y_along",
    "n",
    "confidence",
    "area_90_percent",
    "lower_each_side_C",
    "upper_each_side_C",
    "limit_at_most",
    "verdict",
  ] as const;

  test.each(oracleRows("statistics/ellipse_area_limits.csv", columns))("$id at $confidence", (row) => {
    const { area } = ellipseOf(cloudIn(row), factorForShots(0.9));
    expectNear(area, numberIn(row.area_90_percent), { relative }, row);
    const limitsAt = (level: number) => ellipseAreaLimits(area, numberIn(row.n), level);
    const confidence = numberIn(row.confidence);
    expectNear(limitsAt(confidence)?.low, numberIn(row.lower_each_side_C), { relative }, row);
    expectNear(limitsAt(confidence)?.high, numberIn(row.upper_each_side_C), { relative }, row);
    const claim = { low: -unlimited, high: numberIn(row.limit_at_most) };
    expect(judgeByLimits(limitsAt, claim, confidence, slackOf(1)).decision).toBe(row.verdict);
  });
});

describe("shots without an area", () => {
  test("on a line", () => {
    const line = cloudWith([0.1, 0.2, 0.3, 0.7], [0.3, 0.6, 0.9, 2.1]);
    const ellipse = ellipseOf(line, 1);
    expect([ellipse.short, ellipse.area]).toEqual([0, 0]);
    expectNear(ellipse.angle, Math.atan(3), { relative: 1e-12 }, {});
    expectNear(ellipse.long, Math.sqrt(10 * line.varianceX), { relative: 1e-12 }, {});
  });

  test("all in one place, straight across, straight along", () => {
    expect(ellipseOf(cloudWith([2, 2, 2], [5, 5, 5]), 1)).toEqual({ long: 0, short: 0, angle: 0, area: 0 });
    expect(ellipseOf(cloudWith([1, 2, 3], [5, 5, 5]), 1)).toEqual({ long: 1, short: 0, angle: 0, area: 0 });
    const along = ellipseOf(cloudWith([5, 5, 5], [1, 2, 3]), 1);
    expect(along).toEqual({ long: 1, short: 0, angle: Math.PI / 2, area: 0 });
  });

  test("too few", () => {
    expect(cloudOf([1], [2])).toBeUndefined();
    expect(cloudOf([], [])).toBeUndefined();
    expect(cloudOf([1, 2, 3], [2, 3])).toBeUndefined();
    expect(ellipseOf(cloudWith([1, 2], [2, 5]), 1)).toMatchObject({ short: 0, area: 0 });
    expect([factorForMean(2, 0.9), factorForNextShot(2, 0.9)]).toEqual([undefined, undefined]);
    expect(ellipseAreaLimits(10, 2, 0.9)).toBeUndefined();
    expect(ellipseAreaLimits(10, 8, 1)).toBeUndefined();
  });
});

test("a turned cloud has the turned ellipse", () => {
  const coordinate = fc.integer({ min: -100, max: 100 });
  const shots = fc.array(fc.tuple(coordinate, coordinate), { minLength: 4, maxLength: 12 });
  fc.assert(
    fc.property(shots, fc.integer({ min: -80, max: 80 }), (places, turn) => {
      const [x, y] = [places.map(([a]) => a), places.map(([, b]) => b)];
      const [cos, sin] = [Math.cos(turn * degree), Math.sin(turn * degree)];
      const turned = ellipseOf(
        cloudWith(
          places.map(([a, b]) => a * cos - b * sin),
          places.map(([a, b]) => a * sin + b * cos),
        ),
        factorForShots(0.9),
      );
      const ellipse = ellipseOf(cloudWith(x, y), factorForShots(0.9));
      fc.pre(ellipse.short > 1 && ellipse.long > 1.01 * ellipse.short);
      expectNear(turned.long, ellipse.long, { relative: 1e-9 }, {});
      expectNear(turned.short, ellipse.short, { relative: 1e-9 }, {});
      expectNear(turned.area, Math.PI * turned.long * turned.short, { relative: 1e-9 }, {});
      expectNear(Math.sin(2 * (turned.angle - ellipse.angle - turn * degree)), 0, { absolute: 1e-7 }, {});
    }),
  );
});

function cloudIn(row: { readonly x_across: string; readonly y_along: string }): Cloud {
  return cloudWith(numbersIn(row.x_across), numbersIn(row.y_along));
}

function cloudWith(x: readonly number[], y: readonly number[]): Cloud {
  const cloud = cloudOf(x, y);
  if (cloud === undefined) throw new Error("A cloud needs two shots.");
  return cloud;
}
