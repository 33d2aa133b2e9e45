/** A number of things: `1 shot`, `2 shots`. For nouns that take an s. */
export function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** The same, and nothing of none. */
export function pluralUnlessNone(count: number, noun: string): string | undefined {
  return count === 0 ? undefined : plural(count, noun);
}

/** The ending of a number in a row of things: `st` of 21, `th` of 11 and of 90. */
export function ordinalEnding(number: number): "st" | "nd" | "rd" | "th" {
  const lastTwo = number % 100;
  if (lastTwo >= 11 && lastTwo <= 13) return "th";
  return ({ 1: "st", 2: "nd", 3: "rd" } as const)[number % 10] ?? "th";
}
