/** Which column of a table is given which meaning. */

import { METRIC_WORDS } from "../../../shared/metric-words.ts";
import type { Metric } from "../../../shared/plan-model.ts";
import type { ParsedHeader } from "./header.ts";
import type { Candidate, Meaning } from "./meanings.ts";
import type { Profile } from "./profile.ts";
import { shareInside } from "./value-ranges.ts";

/** A column while it is being understood. */
export interface Draft {
  readonly place: number;
  readonly header: string;
  readonly parsed: ParsedHeader;
  readonly profile: Profile;
  readonly candidates: readonly Candidate[];
  chosen: Candidate | undefined;
  /** What the best candidate was where another column has it. */
  taken: string | undefined;
}

/** No candidate below this is taken. */
const LEAST = 0.4;

function keyOf(meaning: Meaning): string {
  return "metric" in meaning ? meaning.metric.name : meaning.kind;
}

/** Each metric, and each other meaning but `unread`, goes to the column that fits it best. */
export function choose(drafts: readonly Draft[]): void {
  const pairs = drafts
    .flatMap((draft) => draft.candidates.map((candidate) => ({ draft, candidate })))
    .filter(({ candidate }) => candidate.score >= LEAST)
    .sort((one, other) => other.candidate.score - one.candidate.score);
  const given = new Set<string>();
  for (const { draft, candidate } of pairs) {
    const key = keyOf(candidate.meaning);
    if (draft.chosen !== undefined) continue;
    if (key !== "unread" && given.has(key)) {
      if (candidate === draft.candidates[0]) draft.taken = key;
      continue;
    }
    // A second choice is taken only where it is nearly as good as the first.
    if (candidate.score < (draft.candidates[0]?.score ?? 0) - 0.25) continue;
    draft.chosen = candidate;
    given.add(key);
  }
}

/**
 * A column that states no unit gets that of its like: tables do not give one speed in miles and another in metres, nor the
 * carry and the side. Heights are another matter.
 */
export function shareUnits(drafts: readonly Draft[]): void {
  const like = ({ metric: { name, dimension } }: { readonly metric: Metric }) => {
    const isOfTheGround = METRIC_WORDS[name]?.realm === "ball" && name !== "apex";
    return dimension === "length" && !isOfTheGround ? name : dimension;
  };
  const metrics = drafts.flatMap((draft) =>
    draft.chosen?.meaning.kind === "metric" ? [{ draft, meaning: draft.chosen.meaning }] : [],
  );
  for (const { draft, meaning } of metrics) {
    if (meaning.isUnitStated || draft.chosen === undefined) continue;
    const stated = metrics.filter(
      (other) => other.meaning.isUnitStated && like(other.meaning) === like(meaning),
    );
    const units = new Map(stated.map((other) => [other.meaning.unit.symbol, other.meaning.unit]));
    const [unit] = units.values();
    if (unit === undefined || units.size > 1 || shareInside(meaning.metric, unit, draft.profile) < 0.95)
      continue;
    draft.chosen = { ...draft.chosen, meaning: { ...meaning, unit, units: [unit] } };
  }
}
