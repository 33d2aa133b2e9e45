/** Players to simulate: how their shots scatter about what they aim at, with mean 0 and standard deviation 1 or nearly. */
import type { Random } from "./random.ts";

export interface Player {
  readonly name: string;
  /** The shots of one block, in the order they are hit. */
  readonly shots: (random: Random, count: number) => number[];
}

const each =
  (draw: (random: Random) => number) =>
  (random: Random, count: number): number[] =>
    Array.from({ length: count }, () => draw(random));

/** A gamma variable with shape 4 has skewness 1: the sum of four exponential ones is one of eight squared normal ones. */
function skewed(random: Random): number {
  let squares = 0;
  for (let part = 0; part < 8; part++) squares += random.normal() ** 2;
  return (squares / 2 - 4) / 2;
}

/** One shot in ten scatters three times as much. */
function wild(random: Random): number {
  const spread = random.uniform() < 0.1 ? 3 : 1;
  return (spread * random.normal()) / Math.sqrt(0.9 + 0.1 * 9);
}

/** From the first shot to the last the aim moves by one standard deviation. */
function drifting(random: Random, count: number): number[] {
  const scale = Math.sqrt(1 + 1 / 12);
  return Array.from(
    { length: count },
    (_, shot) => (random.normal() + (count < 2 ? 0 : shot / (count - 1) - 0.5)) / scale,
  );
}

/** Each shot resembles the one before by 0.3. */
function following(random: Random, count: number): number[] {
  const shots: number[] = [];
  let last = random.normal();
  for (let shot = 0; shot < count; shot++) {
    shots.push(last);
    last = 0.3 * last + Math.sqrt(1 - 0.09) * random.normal();
  }
  return shots;
}

export const PLAYERS: readonly Player[] = [
  { name: "normal", shots: each((random) => random.normal()) },
  { name: "skewed", shots: each(skewed) },
  { name: "one wild in ten", shots: each(wild) },
  { name: "drifting", shots: drifting },
  { name: "following on", shots: following },
];
