/** The known name somebody most likely meant. */

/** How many edits still count as a slip, for a name of this length. */
const slips = (length: number) => (length <= 3 ? 1 : length <= 6 ? 2 : 3);

/**
 * The candidate that differs from `name` by the fewest inserted, dropped, changed or swapped characters, case aside;
 * undefined where none is close. Of equally close ones the first.
 */
export function nearest(name: string, candidates: Iterable<string>): string | undefined {
  const wanted = name.trim().toLowerCase();
  let best: string | undefined;
  let fewest = slips(wanted.length) + 1;
  for (const candidate of candidates) {
    const text = candidate.trim().toLowerCase();
    if (text === "" || Math.abs(text.length - wanted.length) >= fewest) continue;
    const edits = distance(wanted, text);
    if (edits < fewest && edits < wanted.length) {
      best = candidate;
      fewest = edits;
    }
  }
  return best;
}

/** Optimal string alignment distance (Damerau-Levenshtein without editing a swapped pair again). */
function distance(one: string, other: string): number {
  let before: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row++) {
    const here = [row];
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1];
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      here[column] = Math.min(
        (above[column] ?? 0) + 1,
        (here[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (same ? 0 : 1),
        swapped ? (before[column - 2] ?? 0) + 1 : Infinity,
      );
    }
    before = above;
    above = here;
  }
  return above[other.length] ?? 0;
}
