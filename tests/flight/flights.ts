/** Launches and surroundings as the tables of `tests/oracles/flight` write them: degrees, rpm, °C, hPa, percent. */
import { airOf } from "../../server/flight/air.ts";
import { type Coefficients, SS94, SS94_FLAT } from "../../server/flight/coefficients.ts";
import { DEGREE, GRAVITY, RPM, ZERO_CELSIUS } from "../../server/flight/constants.ts";
import type { Launch } from "../../server/flight/launch.ts";
import type { Surroundings } from "../../server/flight/surroundings.ts";
import { numberIn } from "../support/oracle.ts";

export const YARD = 0.9144;

type Cells<Name extends string> = Readonly<Record<Name, string>>;

export const LAUNCH_COLUMNS = [
  "ball_speed_mps",
  "launch_deg",
  "start_deg",
  "spin_rpm",
  "spin_axis_deg",
] as const;

export const AIR_COLUMNS = ["temperature_c", "pressure_hpa", "humidity_pct"] as const;

export function launchIn(row: Cells<(typeof LAUNCH_COLUMNS)[number]>): Launch {
  return {
    ballSpeed: numberIn(row.ball_speed_mps),
    launchAngle: numberIn(row.launch_deg) * DEGREE,
    startDirection: numberIn(row.start_deg) * DEGREE,
    spinRate: numberIn(row.spin_rpm) * RPM,
    spinAxis: numberIn(row.spin_axis_deg) * DEGREE,
  };
}

export function airIn(row: Cells<(typeof AIR_COLUMNS)[number]>) {
  return airOf(
    numberIn(row.temperature_c) + ZERO_CELSIUS,
    numberIn(row.pressure_hpa) * 100,
    numberIn(row.humidity_pct) / 100,
  );
}

export function coefficientsIn({ aero }: Cells<"aero">): Coefficients {
  const sets: Record<string, Coefficients> = { ss94: SS94, ss94_flat: SS94_FLAT };
  const set = sets[aero];
  if (set === undefined) throw new Error(`There are no coefficients "${aero}".`);
  return set;
}

export function surroundingsIn(
  row: Cells<
    (typeof AIR_COLUMNS)[number] | "wind_x_mps" | "wind_z_mps" | "wind_exponent" | "drag_scale" | "lift_scale"
  >,
): Surroundings {
  return {
    air: airIn(row),
    wind: {
      along: numberIn(row.wind_x_mps),
      across: numberIn(row.wind_z_mps),
      exponent: numberIn(row.wind_exponent),
    },
    ball: { drag: numberIn(row.drag_scale), lift: numberIn(row.lift_scale) },
    gravity: GRAVITY,
  };
}
