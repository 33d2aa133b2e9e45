/** Names as people vary them. */

/** The letters and digits of a text, whatever the case, Unicode form, spaces, hyphens and punctuation. */
export function fold(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
}

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

/** Remembers what a lookup found: tables repeat a few names on thousands of rows. */
export function remembered(find: Lookup): Lookup {
  const known = new Map<string, string | undefined>();
  return (text) => {
    if (!known.has(text)) known.set(text, find(text));
    return known.get(text);
  };
}
