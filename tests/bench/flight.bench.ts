/**
 * What a flight costs, and how good it is: run with `node tests/bench/flight.bench.ts`. It prints medians of processor time and decides nothing.
 *
 * Beside it stand the classical method of fourth order at 5 ms, written with all its state in plain variables, and the bare steps of
 * our own method, which is the least that these flights can cost with it.
 */
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { bestReachable } from "../../server/flight/best-carry.ts";
import { bestLaunch } from "../../server/flight/best-launch.ts";
import {
  COEFFICIENTS,
  type CoefficientSet,
  type Coefficients,
  LIFT_CEILING,
  REYNOLDS_HIGH,
  REYNOLDS_LOW,
} from "../../server/flight/coefficients.ts";
import { BALL_RADIUS, DEGREE, GRAVITY, RPM } from "../../server/flight/constants.ts";
import { fly, isLanding, trajectoryOf } from "../../server/flight/fly.ts";
import { axisOf, type Launch, startOf } from "../../server/flight/launch.ts";
import { launchEfficiency } from "../../server/flight/launch-efficiency.ts";
import type { Readings } from "../../server/flight/measured-launch.ts";
import { newMoment } from "../../server/flight/moment.ts";
import { motionOf } from "../../server/flight/motion.ts";
import { standardCarry } from "../../server/flight/standard-carry.ts";
import { step } from "../../server/flight/step.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import { conditions } from "../flight/shots.ts";
import { median, printRatio } from "./figures.ts";

const LAUNCHES: Readonly<Record<string, Launch>> = {
  driver: launch(73, 12, 2700),
  "7-iron": launch(54, 16.3, 6800),
  wedge: launch(42, 28, 9200),
};

const WINDY = conditions({ wind: { along: -3, across: 1 }, humidity: null });

if (process.argv[2] === "cold") {
  console.log(standardise(readingsOf(200)).milliseconds);
} else {
  for (const [club, ball] of Object.entries(LAUNCHES)) {
    for (const set of Object.keys(COEFFICIENTS) as CoefficientSet[]) benchFlight(club, ball, set);
  }
  benchStandardisation(readingsOf(200));
  for (const set of Object.keys(COEFFICIENTS) as CoefficientSet[]) printTableError(set);
}

function benchFlight(club: string, ball: Launch, set: CoefficientSet): void {
  const coefficients = COEFFICIENTS[set];
  const exact = fly(ball, REFERENCE, coefficients, 1e-12).carry;
  const error = (carry: number) => `${(Math.abs(carry - exact) * 1000).toFixed(4)} mm off`;
  const lengths = stepLengths(ball, coefficients);
  const [ours, classical, bare] = times([
    () => fly(ball, REFERENCE, coefficients).carry,
    () => classicalCarry(ball, coefficients, 0.005),
    () => bareSteps(ball, coefficients, lengths),
  ]);
  const name = `${club}, ${set}`;
  console.log(`${name}: ${lengths.length} steps, ${error(fly(ball, REFERENCE, coefficients).carry)}`);
  print("  a flight", ours);
  print(`  fourth order at 5 ms, ${error(classicalCarry(ball, coefficients, 0.005))}`, classical);
  print("  the bare steps", bare);
  printRatio("  beside fourth order at 5 ms", ours, classical, 0.05);
  printRatio("  beside the bare steps (aim 1.3)", ours, bare);
}

/** Microseconds of processor time, in which what else the machine does is not counted. */
function used(): number {
  const { user, system } = process.cpuUsage();
  return user + system;
}

/** Microseconds of each, in turn, so that a machine that changes its pace changes it for all of them. */
function times(works: readonly (() => number)[]): [number[], number[], number[]] {
  const found: number[][] = works.map(() => []);
  let sum = 0;
  for (let round = 0; round < 40; round++) {
    for (const [index, work] of works.entries()) {
      const runs = index === 1 ? 20 : 500;
      const start = used();
      for (let run = 0; run < runs; run++) sum += work();
      if (round >= 10) found[index]?.push((used() - start) / runs);
    }
  }
  if (!Number.isFinite(sum)) throw new Error("A flight went nowhere.");
  return found as [number[], number[], number[]];
}

function print(name: string, microseconds: readonly number[]): void {
  console.log(`${name.padEnd(58)} p50 ${median(microseconds).toFixed(2).padStart(8)} µs`);
}

function launch(ballSpeed: number, up: number, rpm: number): Launch {
  return {
    ballSpeed,
    launchAngle: up * DEGREE,
    startDirection: 1.5 * DEGREE,
    spinRate: rpm * RPM,
    spinAxis: -4 * DEGREE,
  };
}

/** The steps that our method takes for a flight. */
function stepLengths(ball: Launch, coefficients: Coefficients): number[] {
  const trajectory = trajectoryOf(ball, REFERENCE, coefficients);
  const lengths: number[] = [];
  do {
    trajectory.advance();
    lengths.push(trajectory.to.time - trajectory.from.time);
  } while (!isLanding(trajectory));
  return lengths;
}

function bareSteps(ball: Launch, coefficients: Coefficients, lengths: readonly number[]): number {
  const motion = motionOf(axisOf(ball), REFERENCE, coefficients);
  let [from, to] = [startOf(ball), newMoment()];
  const bow = { x: 0, y: 0, z: 0, vx: 0, vy: 0, vz: 0, spin: 0 };
  for (const length of lengths) {
    step(motion, from, length, to, bow);
    [from, to] = [to, from];
  }
  return from.x;
}

/** The carry by steps of equal length of the classical method of fourth order, the landing by a straight line. */
function classicalCarry(ball: Launch, coefficients: Coefficients, h: number): number {
  const { axisX, axisY, axisZ, drag, dragBySpin, dragByReynolds, reynoldsPerSpeed, ...motion } = motionOf(
    axisOf(ball),
    REFERENCE,
    coefficients,
  );
  const start = startOf(ball);
  let [x, y, z, vx, vy, vz, spin] = [0, 0, 0, start.vx, start.vy, start.vz, start.spin];
  for (;;) {
    let [dx, dy, dz, dvx, dvy, dvz, dspin] = [0, 0, 0, 0, 0, 0, 0];
    let [ax, ay, az, loss] = [0, 0, 0, 0];
    for (let stage = 0; stage < 4; stage++) {
      const ahead = stage === 0 ? 0 : stage === 3 ? h : h / 2;
      const ux = vx + ahead * ax;
      const uy = vy + ahead * ay;
      const uz = vz + ahead * az;
      const w = spin + ahead * loss;
      const cx = axisY * uz - axisZ * uy;
      const cy = axisZ * ux - axisX * uz;
      const cz = axisX * uy - axisY * ux;
      const squared = ux * ux + uy * uy + uz * uz;
      const speed = Math.sqrt(squared);
      const spinRatio = (BALL_RADIUS * w * Math.sqrt(cx * cx + cy * cy + cz * cz)) / squared;
      let slowing = drag + dragBySpin * spinRatio;
      if (dragByReynolds !== 0) {
        const held = Math.min(Math.max(reynoldsPerSpeed * speed, REYNOLDS_LOW), REYNOLDS_HIGH);
        slowing += dragByReynolds * Math.sin((Math.PI * (held - 90_000)) / 200_000);
      }
      slowing *= speed;
      const lifting = (motion.lift * w * Math.min(spinRatio, LIFT_CEILING) ** 0.4) / spinRatio;
      ax = lifting * cx - slowing * ux;
      ay = lifting * cy - slowing * uy - GRAVITY;
      az = lifting * cz - slowing * uz;
      loss = -motion.spinLoss * w * speed;
      const weight = stage === 0 || stage === 3 ? h / 6 : h / 3;
      dx += weight * ux;
      dy += weight * uy;
      dz += weight * uz;
      dvx += weight * ax;
      dvy += weight * ay;
      dvz += weight * az;
      dspin += weight * loss;
    }
    if (y + dy <= 0 && vy + dvy < 0) {
      const share = y / -dy;
      return Math.hypot(x + share * dx, z + share * dz);
    }
    x += dx;
    y += dy;
    z += dz;
    vx += dvx;
    vy += dvy;
    vz += dvz;
    spin += dspin;
  }
}

function readingsOf(shots: number): Readings[] {
  return Array.from({ length: shots }, (_, index) => {
    const ball = launch(50 + (index % 20), 12 + (index % 9), 3000 + 100 * (index % 30));
    const values = {
      carry: 150,
      "ball-speed": ball.ballSpeed,
      "launch-angle": ball.launchAngle,
      "start-direction": ball.startDirection,
      "spin-rate": ball.spinRate,
      "spin-axis": ball.spinAxis,
      "attack-angle": ((index % 9) - 6) * DEGREE,
    };
    return { values, derived: [] };
  });
}

/** Milliseconds of this thread: the engine compiles beside it. */
function standardise(readings: readonly Readings[]) {
  const start = process.threadCpuUsage();
  let estimated = 0;
  for (const shot of readings) {
    if (standardCarry(shot, WINDY).status !== "not-measured") estimated++;
    if (launchEfficiency(shot).status !== "not-measured") estimated++;
  }
  const { user, system } = process.threadCpuUsage(start);
  return { estimated, milliseconds: (user + system) / 1000 };
}

/** In a process that does nothing else, where all code runs for the first time; and here, where it is compiled. */
function benchStandardisation(readings: readonly Readings[]): void {
  const cold = Array.from({ length: 9 }, () =>
    Number(execFileSync(process.execPath, [fileURLToPath(import.meta.url), "cold"], { encoding: "utf8" })),
  );
  const warm = Array.from({ length: 30 }, () => standardise(readings));
  console.log(
    `${readings.length} shots, carry and efficiency, ${warm[0]?.estimated} estimates: ${median(cold).toFixed(1)} ms in a cold process (to be under 50), then ${median(warm.map(({ milliseconds }) => milliseconds)).toFixed(1)} ms`,
  );
}

/** How far the table of best launches is from a search, on a lattice that hits no row of it. */
function printTableError(set: CoefficientSet): void {
  let [worst, usual] = [0, 0];
  for (let ballSpeed = 24.7; ballSpeed < 96; ballSpeed += 3.1) {
    for (let attack = -12.1; attack < 10; attack += 1.3) {
      const known = bestReachable(ballSpeed, attack * DEGREE, set)?.carry ?? Number.NaN;
      const error = Math.abs(known / bestLaunch({ ballSpeed }, attack * DEGREE, COEFFICIENTS[set]).carry - 1);
      worst = Math.max(worst, error);
      if (ballSpeed >= 34 && ballSpeed <= 80 && Math.abs(attack) <= 8) usual = Math.max(usual, error);
    }
  }
  const percent = (error: number) => `${(100 * error).toFixed(4)} %`;
  console.log(
    `table of best carries, ${set}: at most ${percent(worst)} off, ${percent(usual)} from 34 to 80 m/s and ±8°`,
  );
}
