/** A number of things: `1 shot`, `2 shots`. For nouns that take an s. */
export function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** The same, and nothing of none. */
export function pluralUnlessNone(count: number, noun: string): string | undefined {
  return count === 0 ? undefined : plural(count, noun);
}
