/** Drag and lift against independently computed values, and the table behind the lift against its power. */
import { describe, expect, test } from "vitest";
import {
  dragCoefficient,
  LIFT_CEILING,
  liftCoefficient,
  liftSlope,
  SS94_FLAT,
} from "../../server/flight/coefficients.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { coefficientsIn } from "./flights.ts";

describe("coefficients", () => {
  const rows = oracleRows("flight/coefficients.csv", [
    "aero",
    "spin_ratio",
    "reynolds",
    "drag_coefficient",
    "lift_coefficient",
  ]);

  test.each(rows)("$aero at S $spin_ratio, Re $reynolds", (row) => {
    const coefficients = coefficientsIn(row);
    const spinRatio = numberIn(row.spin_ratio);
    const drag = dragCoefficient(coefficients, spinRatio, numberIn(row.reynolds));
    expectNear(drag, numberIn(row.drag_coefficient), { relative: 1e-9 }, row);
    const lift = liftCoefficient(coefficients, spinRatio);
    expectNear(lift, numberIn(row.lift_coefficient), { relative: 1e-9 }, row);
  });
});

test("the table is the power, wherever it is asked, and continuous at its ends", () => {
  for (let spinRatio = 1e-6; spinRatio < 2; spinRatio *= 1.0013) {
    const power = Math.min(spinRatio, LIFT_CEILING) ** 0.4 / spinRatio;
    expectNear(liftSlope(spinRatio), power, { relative: 1.5e-10 }, { spinRatio });
  }
  expect(liftSlope(0)).toBe(0);
  expect(liftCoefficient(SS94_FLAT, 0)).toBe(0);
});
