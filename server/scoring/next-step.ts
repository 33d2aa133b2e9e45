/** What the plan says comes next, after these verdicts. */

import type { NextStep, NextTest, Plan } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";
import type { BlockResult, Recommendation, Verdict } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";

/** The first step whose tests all hold; null where none does. */
export function nextStep({ next }: Plan, blocks: readonly BlockResult[]): Recommendation | null {
  const step = next.find(({ when }) => when.every((test) => holds(test, blocks)));
  if (step === undefined) return null;
  const { move, plan, text, location } = step;
  return { move, plan, text, location, reason: reasonFor(step, blocks) };
}

/** Where nothing is asked, nothing is every goal, and no goal is any. */
function holds({ goals, verdicts }: NextTest, blocks: readonly BlockResult[]): boolean {
  const isWanted = (verdict: Verdict | null) => verdict !== null && verdicts.includes(verdict);
  if (goals.kind === "block") {
    return blocks.some(({ name, verdict }) => name === goals.block && isWanted(verdict));
  }
  const all = goalVerdicts(blocks);
  return goals.kind === "any" ? all.some(isWanted) : all.length > 0 && all.every(isWanted);
}

function goalVerdicts(blocks: readonly BlockResult[]): Verdict[] {
  return blocks.flatMap(({ criteria }) => criteria.map(({ verdict }) => verdict));
}

/** `Every goal is met: 5 of 5.`, `Block "Prove it" is undecided.`, of a step without tests how the goals came out. */
function reasonFor({ when }: NextStep, blocks: readonly BlockResult[]): string {
  if (when.length === 0) return `No step before it holds: ${standing(goalVerdicts(blocks))}.`;
  const reasons = when.map((test) => reason(test, blocks)).join(" and ");
  return `${reasons.slice(0, 1).toUpperCase()}${reasons.slice(1)}.`;
}

function reason({ goals, verdicts }: NextTest, blocks: readonly BlockResult[]): string {
  if (goals.kind === "block") {
    const verdict = blocks.find(({ name }) => name === goals.block)?.verdict ?? "not-measured";
    return `block "${goals.block}" is ${inWords(verdict)}`;
  }
  const all = goalVerdicts(blocks);
  const wanted = verdicts.map(inWords).join(" or ");
  if (goals.kind === "every") return `every goal is ${wanted} (${all.length} of ${all.length})`;
  const found = all.filter((verdict) => verdicts.includes(verdict)).length;
  return `${found} of ${plural(all.length, "goal")} ${found === 1 ? "is" : "are"} ${wanted}`;
}

const ORDER: readonly Verdict[] = ["met", "missed", "undecided", "not-measured"];

/** `2 goals met, 1 missed` */
function standing(verdicts: readonly Verdict[]): string {
  if (verdicts.length === 0) return "the plan sets no goals";
  const counts = ORDER.map((verdict) => ({
    verdict,
    count: verdicts.filter((each) => each === verdict).length,
  })).filter(({ count }) => count > 0);
  return counts
    .map(({ verdict, count }, place) => {
      const goals = place === 0 ? ` ${count === 1 ? "goal is" : "goals are"}` : "";
      return `${count}${goals} ${inWords(verdict)}`;
    })
    .join(", ");
}
