/** What the plan says comes next, and why. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { placeIn } from "../places.ts";
import { remark, type Section } from "../section.ts";

/** Null where the plan says nothing of it. */
export function nextSection({ next, plan }: ScoreReport): Section | null {
  if (next === null) return null;
  const place = placeIn(plan.location.file, next.location);
  const why = [{ label: "because", text: next.reason }];
  return { title: "Next", remark: null, mark: null, entries: [remark(nextWords(next), place, why)] };
}

/** `advance to "Wedges"`, `repeat this plan` */
export function nextWords({ move, plan }: NonNullable<ScoreReport["next"]>): string {
  const verb = { advance: "advance", repeat: "repeat", "step-back": "step back" }[move];
  return plan === null ? `${verb} this plan` : `${verb} to "${plan}"`;
}
