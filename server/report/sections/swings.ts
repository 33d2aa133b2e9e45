/** How many swings it were, and the limits that they are held against. */
import { plural } from "../../../shared/plural.ts";
import type { ScoreReport } from "../../../shared/score-report.ts";
import { placeIn } from "../places.ts";
import { type Entry, remark, type Section } from "../section.ts";

/** Null where nobody swung and nothing is limited. */
export function swingsSection({ load, plan }: ScoreReport): Section | null {
  const { swings, fullEffort, limits } = load;
  if (swings === 0 && limits.length === 0) return null;
  const effort = `${plural(swings, "swing")}, ${fullEffort} of them at full effort, those of unknown effort included`;
  return {
    title: "Swings",
    remark: null,
    mark: null,
    entries: [
      remark(effort),
      ...limits.map(
        ({ text, isExceeded, location }): Entry => ({
          mark: isExceeded ? "warning" : null,
          text: isExceeded ? `${text}: more than the limit` : text,
          place: placeIn(plan.location.file, location),
          details: [],
          parts: [],
        }),
      ),
    ],
  };
}
