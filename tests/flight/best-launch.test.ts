/** Best launches against independently searched ones. */
import { describe, expect, test } from "vitest";
import {
  type BestLaunch,
  bestFreeLaunch,
  bestLaunch,
  type Given,
  launchWindow,
} from "../../server/flight/best-launch.ts";
import { DEGREE, RPM } from "../../server/flight/constants.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { coefficientsIn, YARD } from "./flights.ts";

const rows = oracleRows("flight/best_launch.csv", [
  "id",
  "kind",
  "aero",
  "ball_speed_mps",
  "club_speed_mps",
  "attack_deg",
  "spin_loft_deg",
  "launch_deg",
  "spin_rpm",
  "carry_yd",
  "launch_low_deg",
  "launch_high_deg",
  "spin_low_rpm",
  "spin_high_rpm",
]);
type Row = (typeof rows)[number];

describe("the launch that carries farthest", () => {
  test.each(rows)(
    "$id $kind $aero, ball $ball_speed_mps, club $club_speed_mps m/s, attack $attack_deg°",
    (row) => {
      const best = bestIn(row);
      expectNear(best.carry, numberIn(row.carry_yd) * YARD, { absolute: 0.01 * YARD }, row);
      expectNear(best.launch.launchAngle / DEGREE, numberIn(row.launch_deg), { absolute: 0.1 }, row);
      expectNear(best.launch.spinRate / RPM, numberIn(row.spin_rpm), { absolute: 30 }, row);
      if (row.kind === "free") return expect(best.spinLoft).toBeNull();
      const { spinLoft } = best;
      expectNear((spinLoft ?? 0) / DEGREE, numberIn(row.spin_loft_deg), { absolute: 0.1 }, row);
      const window = launchWindow(givenIn(row), numberIn(row.attack_deg) * DEGREE, coefficientsIn(row));
      const edges = [window.low, window.high];
      // More spin loft launches higher and spins more.
      const [low, high] = edges.map(({ launchAngle, spinRate }) => [launchAngle / DEGREE, spinRate / RPM]);
      expectNear(low?.[0], numberIn(row.launch_low_deg), { absolute: 0.02 }, row);
      expectNear(high?.[0], numberIn(row.launch_high_deg), { absolute: 0.02 }, row);
      expectNear(low?.[1], numberIn(row.spin_low_rpm), { absolute: 5 }, row);
      expectNear(high?.[1], numberIn(row.spin_high_rpm), { absolute: 5 }, row);
    },
  );
});

function bestIn(row: Row): BestLaunch {
  const coefficients = coefficientsIn(row);
  if (row.kind === "free") return bestFreeLaunch(numberIn(row.ball_speed_mps), coefficients);
  return bestLaunch(givenIn(row), numberIn(row.attack_deg) * DEGREE, coefficients);
}

function givenIn(row: Row): Given {
  return row.kind === "club-speed"
    ? { clubSpeed: numberIn(row.club_speed_mps) }
    : { ballSpeed: numberIn(row.ball_speed_mps) };
}
