/** Averages by Student's t. */
import type { ReadingUncertainty } from "../../../../shared/statistics/reading-uncertainty.ts";
import { MOST_SHOTS, newShotsThatDecide } from "../../../../shared/statistics/shots-to-decide.ts";
import { meanLimits, meanShotsToDecide } from "../../../../shared/statistics/student.ts";
import type { Sample } from "../../../../shared/statistics/summary.ts";
import { isDecided, type Method } from "./method.ts";

/** The scatter of the shots holds the random part of the readings already; what they share no number of shots averages out. */
export function averageMethod(sample: Sample, { systematic }: ReadingUncertainty): Method {
  const limitsOf = (n: number) => (level: number) => meanLimits({ ...sample, n }, level, systematic);
  return {
    limitsAt: limitsOf(sample.n),
    words: () =>
      systematic === 0
        ? "one-sided limits of Student's t"
        : "one-sided limits of Student's t, with what all readings may be off by",
    fewest: () => 2,
    shotsToDecide: (question) => {
      const { claim, confidence, slack } = question;
      if (systematic === 0) return meanShotsToDecide(sample, claim, confidence, slack);
      const decides = (n: number) => isDecided(limitsOf(n), question);
      const total = newShotsThatDecide(sample.n, MOST_SHOTS, decides);
      return total === "never" ? NEVER : total;
    },
    cautions: () => [],
  };
}

const NEVER =
  "no number of shots decides it: what all readings of a session may be off by together is more than the gap";
