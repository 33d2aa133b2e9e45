/** What must hold for every flight. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Coefficients, SS94, SS94_FLAT } from "../../server/flight/coefficients.ts";
import { BALL_RADIUS } from "../../server/flight/constants.ts";
import { type Flight, fly, isLanding, landingShare, trajectoryOf } from "../../server/flight/fly.ts";
import { axisOf, type Launch, startOf } from "../../server/flight/launch.ts";
import { type Moment, newMoment } from "../../server/flight/moment.ts";
import { complete, motionOf } from "../../server/flight/motion.ts";
import { pathOf } from "../../server/flight/path.ts";
import { step } from "../../server/flight/step.ts";
import { REFERENCE, type Surroundings, type Wind } from "../../server/flight/surroundings.ts";
import { Trajectory } from "../../server/flight/trajectory.ts";
import { constant, GRAVITY, launch, PLAIN_AIR, RPM, TOP_SPIN_RATE } from "./balls.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Launches that the model supports or nearly so. */
const launches: fc.Arbitrary<Launch> = fc
  .record({
    ballSpeed: between(34, 85),
    launch: between(3, 35),
    start: between(-8, 8),
    spinRatio: between(0.05, 0.3),
    tilt: between(-20, 20),
  })
  .map(({ ballSpeed, launch: up, start, spinRatio, tilt }) =>
    launch(ballSpeed, up, start, (spinRatio * ballSpeed) / BALL_RADIUS / RPM, tilt),
  );
const airs = fc.record({ density: between(0.9, 1.3), viscosity: between(1.7e-5, 1.9e-5) });
const winds: fc.Arbitrary<Wind> = fc.record({
  along: between(-6, 6),
  across: between(-6, 6),
  exponent: fc.constantFrom(0, 1 / 7),
});
const anywhere: fc.Arbitrary<Surroundings> = fc
  .record({ air: airs, wind: winds })
  .map((place) => ({ ...REFERENCE, ...place }));
const coefficients = fc.constantFrom(SS94, SS94_FLAT);

/** Within rounding. */
function expectEqual(actual: Flight, expected: Partial<Flight>, tolerance = 1e-9) {
  for (const [name, value] of Object.entries(expected)) {
    const difference = Math.abs(actual[name as keyof Flight] - value);
    expect(difference <= tolerance * (1 + Math.abs(value)), `${name}: ${difference} off`).toBe(true);
  }
}

test("a landing point is within 0.1 mm of what far shorter steps find", () => {
  fc.assert(
    fc.property(launches, anywhere, coefficients, (ball, place, set) => {
      const [usual, exact] = [fly(ball, place, set), fly(ball, place, set, 1e-10)];
      const off = Math.hypot(usual.downrange - exact.downrange, usual.offline - exact.offline);
      expect(off).toBeLessThan(1e-4);
    }),
    { seed: 1 },
  );
});

test("mirrored, a flight is the same flight", () => {
  fc.assert(
    fc.property(launches, anywhere, coefficients, (ball, place, set) => {
      const flight = fly(ball, place, set);
      const other = fly(
        { ...ball, startDirection: -ball.startDirection, spinAxis: -ball.spinAxis },
        { ...place, wind: { ...place.wind, across: -place.wind.across } },
        set,
      );
      expectEqual(other, { ...flight, offline: -flight.offline, curve: -flight.curve }, 1e-13);
    }),
  );
});

test("turned with its wind about the vertical, a flight lands on the turned place", () => {
  fc.assert(
    fc.property(launches, anywhere, coefficients, between(-0.5, 0.5), (ball, place, set, turn) => {
      const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
      const { along, across, exponent } = place.wind;
      const wind = { along: cos * along - sin * across, across: sin * along + cos * across, exponent };
      const flight = fly(ball, place, set);
      const turned = fly({ ...ball, startDirection: ball.startDirection + turn }, { ...place, wind }, set);
      expectEqual(turned, {
        carry: flight.carry,
        curve: flight.curve,
        flightTime: flight.flightTime,
        downrange: cos * flight.downrange - sin * flight.offline,
        offline: sin * flight.downrange + cos * flight.offline,
      });
    }),
  );
});

test("a steady wind is a moving frame", () => {
  fc.assert(
    fc.property(launches, airs, winds, coefficients, (ball, air, { along, across }, set) => {
      const tolerance = 1e-10;
      const windy = { ...REFERENCE, air, wind: { along, across, exponent: 0 } };
      const flight = fly(ball, windy, set, tolerance);
      // In still air, launched at the velocity through the air, about the same axis in space.
      const start = startOf(ball);
      const moving = { ...start, vx: start.vx - along, vz: start.vz - across };
      const trajectory = new Trajectory(
        motionOf(axisOf(ball), { ...REFERENCE, air }, set),
        moving,
        tolerance,
      );
      do trajectory.advance();
      while (!isLanding(trajectory));
      const { x, z, time } = trajectory.at(landingShare(trajectory));
      expectEqual(flight, {
        flightTime: time,
        downrange: x + along * time,
        offline: z + across * time,
      });
    }),
  );
});

test("in still air energy falls all the way, and the top comes before the landing", () => {
  fc.assert(
    fc.property(launches, airs, coefficients, (ball, air, set) => {
      const place = { ...REFERENCE, air };
      const path = pathOf(ball, place, set);
      const energies = path.map(({ vx, vy, vz, y }) => (vx * vx + vy * vy + vz * vz) / 2 + GRAVITY * y);
      for (const [index, energy] of energies.entries()) {
        if (index > 0) expect(energy).toBeLessThan(energies[index - 1] ?? 0);
      }
      const flight = fly(ball, place, set);
      const heights = path.map(({ y }) => y);
      expect(heights.indexOf(Math.max(...heights))).toBeLessThan(path.length - 1);
      expect(flight.apex).toBeGreaterThanOrEqual(Math.max(...heights) - 1e-4);
      expect(flight.descentAngle).toBeGreaterThan(0);
      expect(flight.descentAngle).toBeLessThan(Math.PI / 2);
      expect(flight.landingSpin).toBeLessThan(ball.spinRate);
    }),
  );
});

test("spin falls with the path through the air and with nothing else", () => {
  fc.assert(
    fc.property(launches, airs, coefficients, (ball, air, set) => {
      const path = pathOf(ball, { ...REFERENCE, air }, set, 0.002, 1e-10);
      let length = 0;
      for (const [index, { x, y, z }] of path.entries()) {
        const before = path[index - 1] ?? { x, y, z };
        length += Math.hypot(x - before.x, y - before.y, z - before.z);
      }
      const left = Math.exp((-2e-5 * air.density * length) / 1.225 / BALL_RADIUS);
      expect((path.at(-1)?.spin ?? 0) / ball.spinRate).toBeCloseTo(left, 6);
    }),
    { numRuns: 20 },
  );
});

test("only air over mass matters, but for the spin that is lost", () => {
  fc.assert(
    fc.property(launches, between(0.9, 1.3), (ball, density) => {
      // Twice the density is the same force on a ball of twice the mass as half the drag and lift is.
      const thin = { ...REFERENCE, air: { density, viscosity: 1.8e-5 } };
      const thick = {
        ...REFERENCE,
        air: { density: 2 * density, viscosity: 1.8e-5 },
        ball: { drag: 0.5, lift: 0.5 },
      };
      const [one, other] = [fly(ball, thin, SS94_FLAT), fly(ball, thick, SS94_FLAT)];
      expect(other.landingSpin).toBeLessThan(one.landingSpin);
      const [oneMotion, otherMotion] = [thin, thick].map((place) => motionOf([0, 0, 1], place, SS94_FLAT));
      const { spinLoss: _, reynoldsPerSpeed: __, ...same } = oneMotion ?? {};
      expect(otherMotion).toMatchObject(same);
    }),
  );
});

test("more tail wind or thinner air makes a drive longer", () => {
  const drives = fc
    .record({ ballSpeed: between(60, 80), up: between(9, 15), rpm: between(2300, 3200) })
    .map(({ ballSpeed, up, rpm }) => launch(ballSpeed, up, 0, rpm));
  fc.assert(
    fc.property(drives, coefficients, between(-5, 3), between(0.5, 2), (ball, set, along, more) => {
      const windy = (speed: number) => ({ ...PLAIN_AIR, wind: { along: speed, across: 0, exponent: 0 } });
      expect(fly(ball, windy(along + more), set).carry).toBeGreaterThan(fly(ball, windy(along), set).carry);
      const thinner = { ...PLAIN_AIR, air: { ...PLAIN_AIR.air, density: 1.225 - 0.05 * more } };
      expect(fly(ball, thinner, set).carry).toBeGreaterThan(fly(ball, PLAIN_AIR, set).carry);
    }),
  );
});

describe("one step", () => {
  /** Where a ball is after so many equal steps. */
  function stepped(
    seconds: number,
    steps: number,
    ball: Launch,
    place: Surroundings,
    set: Coefficients,
  ): Moment {
    const motion = motionOf(axisOf(ball), place, set);
    let [from, to] = [startOf(ball), newMoment()];
    complete(from, motion);
    const bow = { x: 0, y: 0, z: 0, vx: 0, vy: 0, vz: 0, spin: 0 };
    for (let taken = 0; taken < steps; taken++) {
      step(motion, from, seconds / steps, to, bow);
      [from, to] = [to, from];
    }
    return from;
  }

  test("is of fifth order: half the length, a 32nd of the error", () => {
    const place = (steps: number) => stepped(1, steps, launch(70, 12, 0, 3000), REFERENCE, SS94_FLAT);
    const exact = place(4000);
    const errors = [4, 8, 16, 32].map((steps) => {
      const { x, y } = place(steps);
      return Math.hypot(x - exact.x, y - exact.y);
    });
    for (const [index, error] of errors.entries()) {
      const coarser = errors[index - 1];
      if (coarser === undefined) continue;
      expect(coarser / error).toBeGreaterThan(26);
      expect(coarser / error).toBeLessThan(38);
    }
  });

  test("taken often enough leads where another method leads", () => {
    const ball = { ...launch(70, 12), spinRate: TOP_SPIN_RATE };
    expect(stepped(4, 400, ball, PLAIN_AIR, constant(0.25, 0.2)).x).toBeCloseTo(163.536550328, 8);
  });

  test("ends in a moment that is complete", () => {
    fc.assert(
      fc.property(launches, anywhere, coefficients, (ball, place, set) => {
        const trajectory = trajectoryOf(ball, place, set);
        trajectory.advance();
        const again = { ...trajectory.to };
        complete(again, motionOf(axisOf(ball), place, set));
        expect(again).toEqual(trajectory.to);
      }),
    );
  });
});

test("the curves through the steps are as good as their ends", () => {
  fc.assert(
    fc.property(launches, anywhere, coefficients, (ball, place, set) => {
      const path = pathOf(ball, place, set, 0.01);
      const exact = pathOf(ball, place, set, 0.01, 1e-10);
      for (const [index, { x, y, z }] of path.slice(0, -1).entries()) {
        const { x: ex, y: ey, z: ez } = exact[index] ?? newMoment();
        expect(Math.hypot(x - ex, y - ey, z - ez)).toBeLessThan(2e-4);
      }
    }),
    { seed: 1, numRuns: 30 },
  );
});

test("what does not start upwards does not fly, and says so", () => {
  for (const ball of [launch(70, 0), launch(70, -3), launch(0, 12), launch(Number.NaN, 12)]) {
    expect(() => fly(ball, REFERENCE, SS94)).toThrow(RangeError);
  }
  expect(fly(launch(0.01, 1e-6), REFERENCE, SS94).carry).toBeGreaterThan(0);
  expect(fly(launch(70, 90), REFERENCE, SS94).carry).toBeLessThan(1e-6);
});
