/** Changes against a number that is taken as exact: limits of the number now, seen from there. */
import type { Interval } from "../../../../shared/statistics/interval.ts";
import type { Method, Question } from "../../statistic/methods/method.ts";
import type { Measure } from "../movement.ts";

/** @param value what there was before; above zero where the change is a share of it */
export function againstExact(method: Method, value: number, measure: Measure): Method {
  const isShare = measure === "share";
  const effect = ({ low, high }: Interval): Interval =>
    isShare ? { low: low / value - 1, high: high / value - 1 } : { low: low - value, high: high - value };
  const asked = ({ claim: { low, high }, confidence, slack }: Question): Question => ({
    claim: isShare
      ? { low: (1 + low) * value, high: (1 + high) * value }
      : { low: low + value, high: high + value },
    confidence,
    slack: isShare ? slack * value : slack,
  });
  return {
    ...method,
    limitsAt: (level) => {
      const limits = method.limitsAt(level);
      return limits && effect(limits);
    },
    fewest: (question) => method.fewest(asked(question)),
    shotsToDecide: (question) => method.shotsToDecide(asked(question)),
  };
}
