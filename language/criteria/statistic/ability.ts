/**
 * A statistic as ability: the player's true number, judged by confidence limits at the planned number of shots. A range is
 * missed only by limits of half the error, so that the promise holds for narrow ranges too.
 */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { liesOutside } from "../../../shared/statistics/interval.ts";
import type { ReadingUncertainty } from "../../../shared/statistics/reading-uncertainty.ts";
import { judgeByLimits } from "../../../shared/statistics/verdict.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { impossibleConfidence, settlesAbility, shots as shotsInWords } from "../wording.ts";
import { orderOf } from "./compute.ts";
import type { Method, Question } from "./methods/method.ts";
import { methodFor } from "./methods/methods.ts";
import { nameOf } from "./names.ts";
import { rangeInWords, scaleOf } from "./value.ts";

/** What judging ability adds to an outcome. */
type AbilityOutcome = Pick<Outcome, "verdict" | "interval" | "settles" | "cautions">;

/** Judges the true number from the known values. To be asked when all planned shots are hit. */
export function judgeAbility(
  criterion: StatisticCriterion,
  confidence: number,
  values: readonly number[],
  uncertainty: ReadingUncertainty | null,
  shots: CountedShots,
): AbilityOutcome {
  const { statistic, metric, bounds } = criterion;
  const method = methodFor(statistic, values, uncertainty, orderOf(shots.metric(metric), shots.hand, bounds));
  const impossible = impossibleConfidence(confidence);
  if (impossible !== null) return undecided(impossible);
  if (method === undefined) {
    return undecided(
      `a sentence without the confidence: the ${nameOf(statistic)} shot says nothing about ability that could be held against shots`,
    );
  }
  const { interval: claim, slack } = claimOf(bounds, shots.hand);
  const question: Question = { claim, confidence, slack };
  const { decision, limits, level } = judgeByLimits(method.limitsAt, claim, confidence, slack);
  const isOpen = decision === "undecided";
  const isNotFarEnough = isOpen && limits !== undefined && liesOutside(limits, claim, slack);
  const isWithoutDoubt = statistic.kind !== "spread" && limits !== undefined && limits.low === limits.high;
  return {
    verdict: decision,
    interval:
      limits === undefined
        ? null
        : {
            low: finite(limits.low),
            high: finite(limits.high),
            confidence: level,
            method: method.words(level) + (level === confidence ? "" : TWO_SIDES),
            text: rangeInWords(limits.low, limits.high, scaleOf(criterion, shots)),
          },
    settles: isOpen ? settles(method, question, values.length) : null,
    cautions: [
      ...method.cautions,
      ...(isWithoutDoubt ? [NO_DOUBT] : []),
      ...(isNotFarEnough ? [NOT_FAR_ENOUGH] : []),
    ],
  };
}

const TWO_SIDES = ", of half the error each since a range has two sides to miss";

const NO_DOUBT = "The limits show no doubt at all: the readings are probably coarser than the shots differ.";

export const NOT_FAR_ENOUGH =
  "The limits lie outside the range, but not far enough: a range has two sides to miss, and calling it missed takes wider limits.";

/** What would settle it: enough shots for the method, or about so many more; or that no number will. */
function settles(method: Method, question: Question, known: number): string {
  const fewest = method.fewest(question);
  if (fewest !== undefined && known < fewest) {
    return `${shotsInWords(fewest)} or more with a reading: ${known} ${known === 1 ? "is" : "are"} too few to show it`;
  }
  const total = method.shotsToDecide(question);
  return total === "never" ? NEVER : settlesAbility(total, known);
}

const NEVER =
  "no number of shots: what all readings of a session may be off by together is more than the gap (estimate)";

function undecided(settles: string): AbilityOutcome {
  return { verdict: "undecided", interval: null, settles, cautions: [] };
}

function finite(limit: number): number | null {
  return Number.isFinite(limit) ? limit : null;
}
