/** Verdicts that rest on how probable readings of limited accuracy make them, in words. */
import { type Chances, type Doubt, sureTruths } from "./chances.ts";
import type { CountedShots, Outcome } from "./criterion.ts";
import { joined, percent, roundedPercent } from "./wording.ts";

/**
 * The outcome of a criterion that was judged with every reading as exact, with the doubt taken into account.
 *
 * @param wanted what is probable: `7 or more`
 */
export function withDoubt(
  asRead: Outcome,
  { low, high, decision }: Doubt,
  wanted: string,
  shots: CountedShots,
): Outcome {
  const { decisionLevel } = shots;
  const [from, to] = [low, high].map((probability) => roundedPercent(settled(probability), decisionLevel));
  const range = from === to ? from : `${from} to ${to}`;
  const { needs, ...others } = asRead;
  return {
    ...others,
    ...(needs !== undefined && decision === "undecided" ? { needs } : {}),
    verdict: decision,
    required: `${asRead.required}, at ${percent(decisionLevel)} probability`,
    observed: joined(`as read, ${asRead.observed}`, `probability of ${wanted}: ${range}`),
    settles: decision === "undecided" ? joined(asRead.settles, SURER) : null,
  };
}

/** Probabilities are shown from so many steps: what is closer together, as for mirror images, is the same number. */
const STEPS = 1e9;

function settled(probability: number): number {
  return Math.round(probability * STEPS) / STEPS;
}

/** What would settle a verdict that the accuracy of the readings leaves open. */
export const SURER = "surer readings: some shots lie too near a limit for the instrument to tell";

/** The shots that cannot be told to count, nor not to, at the level that the plan asks for. */
export function doubtfulShots(chances: Chances, shots: CountedShots): readonly number[] {
  return sureTruths(chances, shots.decisionLevel).flatMap((truth, index) =>
    truth === undefined ? [index] : [],
  );
}
