/** Words that the messages of checks share. */
import { plural } from "../../shared/plural.ts";
import { unitSuffix } from "../../shared/quantity.ts";

export { code, quoted } from "../analysis/words.ts";

/** `one`, `one or two`, `one, two or three`. */
export function listed(words: readonly string[], last: "and" | "or" | "and in"): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** `a length`, `an angle`. @param shown how the noun is written */
export function withArticle(noun: string, shown = noun): string {
  return `${/^[aeiou]/i.test(noun) ? "an" : "a"} ${shown}`;
}

/** `1 shot`, `12 shots`. */
export function shots(count: number): string {
  return plural(count, "shot");
}

/** A number with its unit as amounts are written: `2°`, `12 yd`, `0.5`. */
export function amount(value: number, symbol: string): string {
  return value + unitBehindNumber(symbol);
}

/** A unit as it stands behind a number: the degree sign touches it. */
export function unitBehindNumber(symbol: string): string {
  return unitSuffix({ symbol });
}
