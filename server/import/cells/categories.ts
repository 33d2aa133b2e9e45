/** Which of its names a metric has in a cell. */
import { type Lookup, lookup, remembered } from "../spelling.ts";

/** Finds the name by the source's own spellings, then as it is, whatever the case, spaces and hyphens. */
export function categoryLookup(
  spellings: readonly { text: string; category: string }[],
  names: readonly string[],
): Lookup {
  const bySource = lookup(spellings.map(({ text, category }) => [text, category] as const));
  const byName = lookup(names.map((name) => [name, name] as const));
  return remembered((text) => bySource(text) ?? byName(text));
}
