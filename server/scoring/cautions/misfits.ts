/** Readings of one shot that do not fit what geometry and the flight model make of its others. They are kept and counted. */
import { listed } from "../../../language/criteria/wording.ts";
import type { ScoringInput } from "../../../shared/plan-model.ts";
import { formatRange, formatReading } from "../../../shared/quantity.ts";
import type { Shot } from "../../../shared/session-data.ts";
import { type Disagreement, disagreements } from "../../flight/cross-checks.ts";
import type { Findings } from "../../import/finding.ts";

/** From this many shots, and this share of those with a reading, on, it is not single shots that are odd. */
const MANY = 6;
const MANY_SHARE = 1 / 3;

/** One finding a reading; where many shots are alike, one for all of them. Cost: a flight for each shot at most. */
export function reportMisfits(
  shots: readonly Shot[],
  { metrics, player, session }: ScoringInput,
  findings: Findings,
): void {
  const misfits = shots.flatMap((shot) =>
    disagreements(shot, session.conditions)
      .filter(({ metric }) => metrics.has(metric))
      .map((disagreement) => ({ shot, disagreement })),
  );
  const inWords = ({ metric: name, measured, low, high, from, by, reason }: Disagreement) => {
    const metric = metrics.get(name);
    const hand = player.hand ?? "right";
    if (metric === undefined) return "";
    const makes = by === "model" ? "by the flight model, an estimate, make it" : "make it";
    return `${name} is ${formatReading(measured, metric, hand)}; ${listed(from)} ${makes} ${formatRange(low, high, metric, hand)}. ${reason}`;
  };
  for (const [name, alike] of Map.groupBy(misfits, ({ disagreement }) => disagreement.metric)) {
    const [first] = alike;
    if (first === undefined) continue;
    const measured = shots.filter(({ values, derived }) => name in values && !derived.includes(name)).length;
    if (alike.length >= MANY && alike.length >= MANY_SHARE * measured) {
      findings.about(first.shot.row.file)({
        code: "value-inconsistent",
        severity: "warning",
        message: `${name} does not fit the other readings at ${alike.length} of ${measured} shots, so that a column's sign or unit may be wrong, or what the session states of air and ball. At line ${first.shot.row.line}, ${inWords(first.disagreement)} All are kept as they were read.`,
      });
      continue;
    }
    for (const { shot, disagreement } of alike) {
      findings.about(shot.row.file)({
        code: "value-inconsistent",
        severity: "warning",
        line: shot.row.line,
        message: `${inWords(disagreement)} It is kept as it was read.`,
      });
    }
  }
}
