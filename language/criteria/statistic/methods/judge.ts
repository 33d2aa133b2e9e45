/** The verdict that a method gives, with the limits that decided. */
import { type Interval, liesOutside } from "../../../../shared/statistics/interval.ts";
import { judgeByLimits } from "../../../../shared/statistics/verdict.ts";
import type { Outcome } from "../../criterion.ts";
import { settlesAbility, shots as shotsInWords } from "../../wording.ts";
import type { Method, Question } from "./method.ts";

/** What judging ability adds to an outcome. */
export type AbilityOutcome = Pick<Outcome, "verdict" | "interval" | "settles" | "cautions">;

/**
 * Judges by limits. A range is missed only by limits of half the error, so that the promise holds for narrow ranges too.
 *
 * @param known how many shots the limits rest on
 * @param write limits in words
 */
export function judgeByMethod(
  method: Method,
  question: Question,
  known: number,
  write: (limits: Interval) => string,
): AbilityOutcome {
  const { claim, confidence, slack } = question;
  const { decision, limits, level } = judgeByLimits(method.limitsAt, claim, confidence, slack);
  const isOpen = decision === "undecided";
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
            text: write(limits),
          },
    settles: isOpen ? settles(method, question, known) : null,
    cautions: [
      ...method.cautions(level),
      limits !== undefined && limits.low === limits.high ? NO_DOUBT : null,
      isOpen && limits !== undefined && liesOutside(limits, claim, slack) ? NOT_FAR_ENOUGH : null,
    ].filter((caution) => caution !== null),
  };
}

/** Undecided, whatever the shots. */
export function undecided(settles: string): AbilityOutcome {
  return { verdict: "undecided", interval: null, settles, cautions: [] };
}

const TWO_SIDES = ", of half the error each since a range has two sides to miss";

const NO_DOUBT = "The limits show no doubt at all: the readings are probably coarser than the shots differ.";

const NOT_FAR_ENOUGH =
  "The limits lie outside the range, but not far enough: a range has two sides to miss, and calling it missed takes wider limits.";

/** Enough shots for the method, or about so many more; or that no number will do. */
function settles(method: Method, question: Question, known: number): string {
  const fewest = method.fewest(question);
  if (fewest !== undefined && known < fewest) {
    return `${shotsInWords(fewest)} or more with a reading: ${known} ${known === 1 ? "is" : "are"} too few to show it`;
  }
  const total = method.shotsToDecide(question);
  return typeof total === "string" ? total : settlesAbility(total, known);
}

function finite(limit: number): number | null {
  return Number.isFinite(limit) ? limit : null;
}
