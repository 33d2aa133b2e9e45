/** What the windows that a block names ask for: on the range nobody has the file at hand that declares them. */
import { writeCondition } from "../../../shared/condition.ts";
import type { Block, Condition, Criterion, WindowVariant } from "../../../shared/plan-model.ts";

/** The windows of targets, requirements, shots to leave out and goals, each once: `"Neutral path"`, and what it asks for. */
export function windowsOf(block: Block): [name: string, text: string][] {
  const { targets, requirements, leaveOut, success, shots } = block;
  const found = new Map<string, string>();
  const clubs = shots.flatMap(({ club }) => club ?? []);
  const look = ({ anyOf }: Condition) => {
    for (const test of anyOf.flatMap(({ allOf }) => allOf)) {
      if (test.kind !== "window" || found.has(test.window)) continue;
      const variants = variantsFor(clubs, test.variants);
      found.set(test.window, variants.map(variantInWords).join("; "));
      for (const { condition } of variants) look(condition);
    }
  };
  for (const { condition } of [...targets, ...requirements, ...leaveOut]) look(condition);
  for (const condition of success.flatMap(conditionsOf)) look(condition);
  return [...found].map(([name, text]) => [JSON.stringify(name), text]);
}

/** Those that shots with these clubs can come to, in the order in which they are tried; all where no club is said. */
function variantsFor(clubs: readonly string[], variants: readonly WindowVariant[]): WindowVariant[] {
  let open = new Set(clubs);
  return variants.filter((variant) => {
    const takes = (club: string) => variant.clubs.length === 0 || variant.clubs.includes(club);
    const isReached = clubs.length === 0 || [...open].some(takes);
    if (variant.level === null) open = new Set([...open].filter((club) => !takes(club)));
    return isReached;
  });
}

/** `for driver at level "first year": club-path within 5° of 1° in-to-out` */
function variantInWords({ clubs, level, condition }: WindowVariant): string {
  const when = [
    ...(clubs.length === 0 ? [] : [`for ${clubs.join(", ")}`]),
    ...(level === null ? [] : [`at level ${JSON.stringify(level)}`]),
  ].join(" ");
  return `${when === "" ? "" : `${when}: `}${writeCondition(condition)}`;
}

function conditionsOf(goal: Criterion): Condition[] {
  if (goal.kind === "group") return goal.criteria.flatMap(conditionsOf);
  return "subject" in goal && goal.subject.kind === "meeting" ? [goal.subject.condition] : [];
}
