/** A number made of readings that may be off, held against what is claimed of it (JCGM 106). */
import { conformanceProbability, verdictByProbability } from "../../../shared/statistics/conformance.ts";
import { guardBand } from "../../../shared/statistics/guard-band.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import type { Claim } from "../condition.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { joined, percent, roundedPercent } from "../wording.ts";

/**
 * The outcome with the verdict that the probability gives, and what the verdict rests on.
 *
 * @param number what it is called: `average`
 * @param uncertainty standard uncertainty of the value, SI
 * @param write limits in words
 */
export function withProbability(
  outcome: Outcome,
  number: string,
  { value, uncertainty }: { readonly value: number; readonly uncertainty: number },
  { interval: claim, slack }: Claim,
  { decisionLevel }: CountedShots,
  write: (limits: Interval) => string,
): Outcome {
  const probability = conformanceProbability(value, uncertainty, claim, slack);
  const verdict = verdictByProbability(probability, decisionLevel);
  const band = guardBand(uncertainty, decisionLevel);
  const limits = { low: value - band, high: value + band };
  return {
    ...outcome,
    verdict,
    required: `${outcome.required}, at ${percent(decisionLevel)} probability`,
    observed: joined(
      outcome.observed,
      `probability that it is so: ${roundedPercent(probability, decisionLevel)}`,
    ),
    interval: {
      ...limits,
      confidence: decisionLevel,
      method: "what the readings may be off by",
      text: write(limits),
    },
    settles:
      verdict === "undecided"
        ? `surer readings: the ${number} lies too near a limit for the instrument to tell`
        : null,
  };
}
