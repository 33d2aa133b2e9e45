/** Readings of one shot that cannot all be true. They are kept and counted; somebody should look at them. */
import { reading } from "../../../shared/condition.ts";
import type { Metric } from "../../../shared/plan-model.ts";
import { formatReading } from "../../../shared/quantity.ts";
import type { Shot } from "../../../shared/session-data.ts";
import type { Findings } from "../../import/finding.ts";

/** Two metrics, and how much smaller than the other one the first can be at most, as a share of it. */
interface Rule {
  readonly smaller: string;
  readonly larger: string;
  readonly share: number;
  readonly why: string;
}

/**
 * A ball that is struck leaves at least at half the speed of the club head, even from a lob wedge or the edge of a face; and
 * it comes to rest no nearer than it landed by more than a tenth of the carry, which is more than a ball spins back.
 */
const RULES: readonly Rule[] = [
  {
    smaller: "ball-speed",
    larger: "club-speed",
    share: 0.5,
    why: "a ball that is struck leaves faster than that",
  },
  { smaller: "total", larger: "carry", share: 0.9, why: "a ball does not roll back that far" },
];

export function reportImpossible(
  shots: readonly Shot[],
  vocabulary: ReadonlyMap<string, Metric>,
  findings: Findings,
): void {
  for (const shot of shots) {
    for (const rule of RULES) {
      const message = violation(shot, rule, vocabulary);
      if (message === undefined) continue;
      const { file, line } = shot.row;
      findings.about(file)({ code: "value-inconsistent", severity: "warning", line, message });
    }
  }
}

function violation(
  { values, derived }: Shot,
  { smaller, larger, share, why }: Rule,
  vocabulary: ReadonlyMap<string, Metric>,
): string | undefined {
  const [low, high] = [reading(values, smaller), reading(values, larger)];
  if (low === undefined || high === undefined || low >= share * high) return undefined;
  if (derived.includes(smaller) || derived.includes(larger)) return undefined;
  const inWords = (name: string, value: number) => {
    const metric = vocabulary.get(name);
    return metric === undefined ? String(value) : formatReading(value, metric, "right");
  };
  return `${smaller} is ${inWords(smaller, low)} and ${larger} ${inWords(larger, high)}: ${why}. One of the readings, or the unit of a column, is wrong. Both are kept as they were read.`;
}
