/** What stands for what in a table, as people vary it. */
import { fold } from "../../shared/fold.ts";

/** What a text stands for; undefined where it stands for nothing, or for more than one thing. */
export type Lookup = (text: string) => string | undefined;

/**
 * A lookup of names by their spellings: as written, else as `key` reduces them. Earlier spellings are not overruled by
 * later ones that are written the same; reduced ones that stand for several names stand for none.
 */
export function lookup(spellings: Iterable<readonly [text: string, name: string]>, key = fold): Lookup {
  const exact = new Map<string, string>();
  const reduced = new Map<string, string | undefined>();
  for (const [text, name] of spellings) {
    if (!exact.has(text)) exact.set(text, name);
    const short = key(text);
    reduced.set(short, reduced.has(short) && reduced.get(short) !== name ? undefined : name);
  }
  return (text) => exact.get(text.trim()) ?? reduced.get(key(text));
}

/** How many texts a lookup remembers: of a column in which every cell is another, none need be. */
const MOST_REMEMBERED = 10_000;

/** Remembers what was found of a text: tables repeat a few names on thousands of rows. */
export function remembered<Found>(find: (text: string) => Found): (text: string) => Found {
  const known = new Map<string, Found>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined || known.has(text)) return before as Found;
    const found = find(text);
    if (known.size < MOST_REMEMBERED) known.set(text, found);
    return found;
  };
}
