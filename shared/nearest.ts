/** What somebody most likely meant by a name that is not known. */
import { distance } from "fastest-levenshtein";

/** How many changed letters still count as a slip, for a name of this length. */
function mostChanges(length: number): number {
  if (length <= 3) return 1;
  return length <= 7 ? 2 : 3;
}

/**
 * The candidates that differ from `name` by a slip, case and surrounding space aside: the nearest, and all that are as near, in their order.
 * `atMost`: how many changed letters count as a slip, where that is fewer than usual. Cost: candidates times the square of a name's length.
 */
export function nearest(name: string, candidates: Iterable<string>, atMost = Infinity): string[] {
  const wanted = name.trim().toLowerCase();
  const most = Math.min(mostChanges(wanted.length), wanted.length - 1, atMost);
  const near: { readonly candidate: string; readonly changes: number }[] = [];
  for (const candidate of new Set(candidates)) {
    if (Math.abs(candidate.length - wanted.length) > most) continue;
    const changes = changesBetween(wanted, candidate.toLowerCase());
    if (changes <= most) near.push({ candidate, changes });
  }
  const fewest = Math.min(...near.map(({ changes }) => changes));
  return near.filter(({ changes }) => changes === fewest).map(({ candidate }) => candidate);
}

/** Letters added, taken away or changed; two that are swapped count as one. */
function changesBetween(one: string, other: string): number {
  const changes = distance(one, other);
  return changes === 2 && sorted(one) === sorted(other) ? 1 : changes;
}

function sorted(text: string): string {
  return [...text].sort().join("");
}
