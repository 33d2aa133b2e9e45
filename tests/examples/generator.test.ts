/** The generator keeps what it promises: the abilities it was given, and numbers that fit each other. */
import { describe, expect, test } from "vitest";
import { sampleOf } from "../../shared/statistics/summary.ts";
import { type Ability, draw, type GeneratedShot, hit, randomFrom, shuffled } from "../support/generator.ts";

const ability: Ability = {
  clubSpeed: [36, 0.6],
  attack: [-4, 0.9],
  path: [-5, 1.6],
  faceToPath: [3.5, 1.5],
  loft: [24.5, 1.2],
  bestSmash: 1.39,
  strikeCost: 0.02,
};
const SHOTS = 4000;

function shotsOf(hand: "right" | "left", seed: number): GeneratedShot[] {
  const random = randomFrom(seed);
  return Array.from({ length: SHOTS }, () => hit({ club: "7-iron", ability }, hand, random));
}

function sample(values: readonly number[]) {
  const found = sampleOf(values);
  if (found?.sd === undefined) throw new Error("a sample of one");
  return { mean: found.mean, sd: found.sd };
}

describe("random numbers", () => {
  test("follow from the seed", () => {
    const numbers = (seed: number) => Array.from({ length: 5 }, randomFrom(seed));
    expect(numbers(7)).toEqual(numbers(7));
    expect(numbers(7)).not.toEqual(numbers(8));
  });

  test("fill the range evenly", () => {
    const random = randomFrom(1);
    const tenths = new Array<number>(10).fill(0);
    for (let count = 0; count < 10_000; count++) {
      const tenth = Math.floor(10 * random());
      tenths[tenth] = (tenths[tenth] ?? Number.NaN) + 1;
    }
    // Each tenth holds 1000 on average, with a standard deviation of 30.
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });

  test("are normal where that is asked for", () => {
    const random = randomFrom(2);
    const values = Array.from({ length: 10_000 }, () => draw([10, 2], random));
    const { mean, sd } = sample(values);
    expect(Math.abs(mean - 10)).toBeLessThan(0.1);
    expect(Math.abs(sd - 2)).toBeLessThan(0.1);
    const beyondTwo = values.filter((value) => Math.abs(value - 10) > 2 * 1.959964).length;
    expect(Math.abs(beyondTwo - 500)).toBeLessThan(110);
  });

  test("shuffling keeps every item", () => {
    const items = Array.from({ length: 50 }, (_, index) => index);
    const mixed = shuffled(items, randomFrom(3));
    expect(mixed).not.toEqual(items);
    expect(mixed.toSorted((one, other) => one - other)).toEqual(items);
  });
});

describe("shots", () => {
  const shots = shotsOf("right", 11);

  test.each([
    ["path", ability.path],
    ["faceToPath", ability.faceToPath],
    ["attack", ability.attack],
    ["clubSpeed", ability.clubSpeed],
  ] as const)("%s has the mean and the deviation it was given", (metric, [mean, deviation]) => {
    const found = sample(shots.map((shot) => shot[metric]));
    const standardError = deviation / Math.sqrt(SHOTS);
    expect(Math.abs(found.mean - mean)).toBeLessThan(5 * standardError);
    expect(Math.abs(found.sd - deviation)).toBeLessThan(5 * standardError);
  });

  test("face, path and their difference fit to the last digit", () => {
    for (const { face, path, faceToPath } of shots) expect(face - path).toBeCloseTo(faceToPath, 10);
  });

  test("the ball starts between face and path, nearer to the face", () => {
    for (const { face, path, start } of shots) {
      expect(Math.abs(start - face)).toBeLessThanOrEqual(Math.abs(start - path) + 1e-9);
      expect(Math.abs(start - face) + Math.abs(start - path)).toBeCloseTo(Math.abs(face - path), 9);
    }
  });

  test("no strike gives more ball speed than the best one", () => {
    for (const { ballSpeed, clubSpeed } of shots)
      expect(ballSpeed / clubSpeed).toBeLessThanOrEqual(ability.bestSmash + 1e-9);
  });

  test("a face open to the path bends the ball to the right of the line it started on", () => {
    for (const { faceToPath, spinAxis, carry, offline, start } of shots) {
      expect(Math.sign(spinAxis)).toBe(Math.sign(faceToPath));
      const straight = carry * Math.sin((start * Math.PI) / 180);
      if (faceToPath !== 0) expect(Math.sign(offline - straight)).toBe(Math.sign(faceToPath));
    }
  });

  test("a left-hander of the same ability hits the mirror image", () => {
    const mirrored = shotsOf("left", 11);
    for (const [index, shot] of shots.entries()) {
      const other = mirrored[index];
      expect(other?.path).toBeCloseTo(-shot.path, 9);
      expect(other?.faceToPath).toBeCloseTo(-shot.faceToPath, 9);
      expect(other?.offline).toBeCloseTo(-shot.offline, 9);
      expect(other?.attack).toBe(shot.attack);
      expect(other?.carry).toBe(shot.carry);
    }
  });
});
