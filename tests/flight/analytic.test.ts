/** Flights that have a closed form: no air, drag only, lift only. */
import { describe, expect, test } from "vitest";
import { SS94_FLAT } from "../../server/flight/coefficients.ts";
import { BALL_AREA, BALL_MASS } from "../../server/flight/constants.ts";
import { fly } from "../../server/flight/fly.ts";
import type { Moment } from "../../server/flight/moment.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import {
  after,
  type Ball,
  constant,
  DEGREE,
  launch,
  PLAIN_AIR,
  RPM,
  TOP_SPIN_RATE,
  VACUUM,
  WITHOUT_GRAVITY,
} from "./balls.ts";

const rows = oracleRows("flight/analytic.csv", ["case", "parameters", "quantity", "value", "unit"]);

const speedOf = ({ vx, vy, vz }: Moment) => Math.hypot(vx, vy, vz);

/** Flies along x, its lift to the left of that: with no gravity it stays in the horizontal plane. */
const spinning = (speed: number): Ball => ({
  velocity: [speed, 0, 0],
  axis: [0, 1, 0],
  spin: TOP_SPIN_RATE,
});

/** What each case says, from its parameters by name. */
const CASES: Record<string, (quantity: string, p: Record<string, number>) => number> = {
  vacuum: (quantity, { speed = 0, launch: angle = 0 }) => {
    const flight = fly(launch(speed, angle), VACUUM, SS94_FLAT, 1e-11);
    return pick(quantity, {
      carry: flight.carry,
      apex: flight.apex,
      time: flight.flightTime,
      descent: flight.descentAngle / DEGREE,
    });
  },
  "drag only, straight line": (quantity, { speed = 0, t = 0, "drag coefficient": drag = 0 }) => {
    const ball = { ...spinning(speed), spin: 0 };
    const moment = after(t, ball, WITHOUT_GRAVITY, constant(drag, 0));
    return pick(quantity, { speed: speedOf(moment), distance: moment.x });
  },
  "vertical fall": (quantity, { t = 0, "drag coefficient": drag = 0 }) => {
    const ball: Ball = { velocity: [0, -1e-9, 0], axis: [0, 0, 1], spin: 0 };
    const moment = after(t, ball, PLAIN_AIR, constant(drag, 0));
    return pick(quantity, {
      speed: -moment.vy,
      "distance fallen": -moment.y,
      "terminal speed": -after(60, ball, PLAIN_AIR, constant(drag, 0)).vy,
    });
  },
  "vertical throw": (quantity, { "thrown straight up at": speed = 0, "drag coefficient": drag = 0 }) => {
    const flight = fly(launch(speed, 90), PLAIN_AIR, constant(drag, 0), 1e-11);
    const ball: Ball = { velocity: [0, speed, 0], axis: [0, 0, 1], spin: 0 };
    const climbing = (t: number) => after(t, ball, PLAIN_AIR, constant(drag, 0)).vy;
    return pick(quantity, {
      apex: flight.apex,
      "time to apex": zeroOf(climbing, 1, 10),
      "speed on return to start height": flight.landingSpeed,
    });
  },
  "lift only": (quantity, { "lift coefficient": lift = 0, speed = 60 }) => {
    const quarter = 5;
    const { x, z, vx, vz } = after(quarter, spinning(speed), WITHOUT_GRAVITY, constant(0, lift));
    const turned = Math.atan2(Math.abs(vz), vx);
    return pick(quantity, {
      "radius of the circle": Math.hypot(x, z) / (2 * Math.sin(turned / 2)),
      period: (2 * Math.PI * quarter) / turned,
    });
  },
  "lift and drag, no gravity": (quantity, p) => {
    const { speed = 0, t = 0, "drag coefficient": drag = 0, "lift coefficient": lift = 0 } = p;
    const moment = after(t, spinning(speed), WITHOUT_GRAVITY, constant(drag, lift));
    return pick(quantity, {
      speed: speedOf(moment),
      "angle turned": Math.atan2(Math.abs(moment.vz), moment.vx) / DEGREE,
    });
  },
  "spin decay": (quantity, { start = 0, density = 0, "path length through the air": path = 0 }) => {
    // In a straight line at constant speed the path is speed times time.
    const air = { density, viscosity: 1.8e-5 };
    const ball: Ball = { velocity: [50, 0, 0], axis: [0, 0, 1], spin: start * RPM };
    const moment = after(path / 50, ball, { ...WITHOUT_GRAVITY, air }, constant(0, 0));
    return pick(quantity, { spin: moment.spin / RPM });
  },
};

test.each(rows)("$case, $parameters: $quantity", (row) => {
  const compute = CASES[row.case];
  if (compute === undefined) throw new Error(`There is no case "${row.case}".`);
  const value = compute(row.quantity, parametersIn(row.parameters));
  expectNear(value, numberIn(row.value), { relative: 1e-8 }, row);
});

describe("a circle of lift", () => {
  test("is flown at constant speed", () => {
    const moment = after(7, spinning(60), WITHOUT_GRAVITY, constant(0, 0.25));
    expect(speedOf(moment)).toBeCloseTo(60, 8);
    const radius = (2 * BALL_MASS) / (1.225 * BALL_AREA * 0.25);
    expect(Math.hypot(moment.x, Math.abs(moment.z) - radius)).toBeCloseTo(radius, 6);
  });
});

/** `speed=75 m/s; launch=10.5 deg` and words such as `thrown straight up at 40 m/s`: numbers by name. */
function parametersIn(text: string): Record<string, number> {
  const parameters: Record<string, number> = {};
  for (const part of text.split("; ")) {
    const [, name, number] = /^(.+?)[ =](-?[\d.]+)(?: \S+)?$/.exec(part) ?? [];
    if (name !== undefined && number !== undefined) parameters[name] = numberIn(number);
  }
  return parameters;
}

function pick(quantity: string, values: Record<string, number>): number {
  const value = values[quantity];
  if (value === undefined) throw new Error(`There is no quantity "${quantity}".`);
  return value;
}

function zeroOf(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let round = 0; round < 50; round++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0) a = middle;
    else b = middle;
  }
  return a;
}
