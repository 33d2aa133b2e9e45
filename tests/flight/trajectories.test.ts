/** Flights against a table computed with another method, in another language. */
import { describe, expect, test } from "vitest";
import { dragCoefficient, liftCoefficient, SS94 } from "../../server/flight/coefficients.ts";
import { BALL_DIAMETER, DEGREE, RPM } from "../../server/flight/constants.ts";
import { fly } from "../../server/flight/fly.ts";
import { pathOf } from "../../server/flight/path.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import { validityOf } from "../../server/flight/validity.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { AIR_COLUMNS, coefficientsIn, LAUNCH_COLUMNS, launchIn, surroundingsIn, YARD } from "./flights.ts";

const rows = oracleRows("flight/trajectories.csv", [
  "id",
  "group",
  "aero",
  ...LAUNCH_COLUMNS,
  ...AIR_COLUMNS,
  "wind_x_mps",
  "wind_z_mps",
  "wind_exponent",
  "drag_scale",
  "lift_scale",
  "carry_m",
  "downrange_m",
  "offline_m",
  "curve_m",
  "apex_m",
  "flight_time_s",
  "descent_deg",
  "landing_speed_mps",
  "landing_spin_rpm",
  "spin_ratio_launch",
  "reynolds_launch",
  "tier",
]);

describe("flights", () => {
  test.each(rows)("$id $group $aero", (row) => {
    const flight = fly(launchIn(row), surroundingsIn(row), coefficientsIn(row));
    const length = { absolute: 0.01 * YARD };
    expectNear(flight.carry, numberIn(row.carry_m), length, row);
    expectNear(flight.downrange, numberIn(row.downrange_m), length, row);
    expectNear(flight.offline, numberIn(row.offline_m), length, row);
    expectNear(flight.curve, numberIn(row.curve_m), length, row);
    expectNear(flight.apex, numberIn(row.apex_m), length, row);
    expectNear(flight.flightTime, numberIn(row.flight_time_s), { absolute: 0.0005 }, row);
    expectNear(flight.descentAngle / DEGREE, numberIn(row.descent_deg), { absolute: 0.005 }, row);
    expectNear(flight.landingSpeed, numberIn(row.landing_speed_mps), { absolute: 0.005 }, row);
    expectNear(flight.landingSpin / RPM, numberIn(row.landing_spin_rpm), { absolute: 0.5 }, row);
  });
});

describe("how far they can be relied on", () => {
  test.each(rows)("$id is $tier", (row) => {
    const validity = validityOf(launchIn(row), surroundingsIn(row));
    expect(validity.status).toBe(row.tier);
    expect(validity.reason === null).toBe(row.tier === "supported");
    expectNear(validity.spinRatio, numberIn(row.spin_ratio_launch), { absolute: 5e-7 }, row);
    expectNear(validity.reynolds, numberIn(row.reynolds_launch), { relative: 5e-6 }, row);
  });
});

describe("a path, with what acts along it", () => {
  const rows = oracleRows("flight/path_example.csv", [
    "time_s",
    "x_m",
    "y_m",
    "z_m",
    "vx_mps",
    "vy_mps",
    "vz_mps",
    "spin_rpm",
    "spin_ratio",
    "reynolds",
    "drag_coefficient",
    "lift_coefficient",
  ]);
  const launch = launchIn({
    ball_speed_mps: "68",
    launch_deg: "13",
    start_deg: "1.5",
    spin_rpm: "3000",
    spin_axis_deg: "-7",
  });
  // 22 °C, 1000 hPa, 40 %, with the density of the short formula: row A08 of moist_air.csv.
  const air = { density: 1.176020301, viscosity: 1.822960673e-5 };
  const surroundings = { ...REFERENCE, air, wind: { along: -2, across: 3, exponent: 0 } };
  const path = pathOf(launch, surroundings, SS94, 0.5, 1e-11);

  test("has a moment every half second, and the landing", () => expect(path).toHaveLength(rows.length));

  test.each(rows.map((row, index) => ({ ...row, index })))("after $time_s s", ({ index, ...row }) => {
    const moment = path[index];
    if (moment === undefined) throw new Error("The path is too short.");
    const { spinRatio, airspeed } = moment;
    const reynolds = (air.density * BALL_DIAMETER * airspeed) / air.viscosity;
    near(moment.time, row.time_s);
    near(moment.x, row.x_m);
    near(moment.y, row.y_m);
    near(moment.z, row.z_m);
    near(moment.vx, row.vx_mps);
    near(moment.vy, row.vy_mps);
    near(moment.vz, row.vz_mps);
    near(moment.spin / RPM, row.spin_rpm);
    near(spinRatio, row.spin_ratio);
    near(reynolds, row.reynolds);
    near(dragCoefficient(SS94, spinRatio, reynolds), row.drag_coefficient);
    near(liftCoefficient(SS94, spinRatio), row.lift_coefficient);

    function near(actual: number, printed: string) {
      const value = numberIn(printed);
      // What passes through zero is as good as the rest of its vector.
      expectNear(actual, value, { absolute: Math.max(1e-5 * Math.abs(value), 1e-6) }, row);
    }
  });
});
