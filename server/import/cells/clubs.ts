/** Which club a cell names. */
import type { Club } from "../../../shared/plan-model.ts";
import { type Lookup, lookup, remembered } from "../spelling.ts";

/**
 * Finds clubs by the source's own spellings, then by the clubs' names and other spellings; case, spaces, hyphens and
 * punctuation do not matter. What the source says wins.
 */
export function clubLookup(
  spellings: readonly { text: string; club: string }[],
  clubs: readonly Club[],
): Lookup {
  const bySource = lookup(spellings.map(({ text, club }) => [text, club] as const));
  const byName = lookup(
    clubs.flatMap((club) => [club.name, ...club.spellings].map((text) => [text, club.name] as const)),
  );
  return remembered((text) => bySource(text) ?? byName(text));
}
