/** Which way a column is signed, as far as its name, its cells and other columns tell. */
import { oppositeOf } from "../../../shared/interval.ts";
import type { Direction, Metric } from "../../../shared/plan-model.ts";
import { quote } from "../finding.ts";
import type { ParsedHeader } from "./header.ts";
import type { Profile } from "./profile.ts";
import type { Link, Reading } from "./relations.ts";
import { SIDES } from "./side-columns.ts";
import type { StatedSide } from "./stated-side.ts";

/** Of a path, these are where it comes from to some, and where it goes to others. */
const EITHER_WAY = new Set(["i", "in", "o", "out"]);

/** The direction that a word in a header or a cell means, written out or cut short; undefined where that is not clear. */
export function directionOf(
  word: string | undefined,
  directions: readonly Direction[],
): Direction | undefined {
  if (word === undefined || word === "") return undefined;
  const start = word.toLowerCase().replace(/\s+/g, "-");
  const meant = directions.filter((direction) => direction.word.startsWith(start));
  if (EITHER_WAY.has(start) && meant.some(({ word }) => /-to-/.test(word))) return undefined;
  const exact = meant.find((direction) => direction.word === start);
  return exact ?? (meant.length === 1 ? meant[0] : undefined);
}

/** The direction that a column's name calls positive, if only by what it calls negative. */
export function statedDirection(
  { positive, negative }: StatedSide,
  directions: readonly Direction[],
): Direction | undefined {
  const stated = directionOf(positive, directions);
  if (stated !== undefined || positive !== undefined) return stated;
  return oppositeOf(directionOf(negative, directions), directions);
}

/** The side that each cell names; undefined where not every reading but zero names one that is known. */
export function sidesOf(
  { numbers, sides }: Profile,
  { directions }: Metric,
): (Direction | undefined)[] | undefined {
  const found = sides.map((side) => directionOf(side, directions) ?? directionOf(SIDES[side], directions));
  let named = 0;
  for (const [row, number] of numbers.entries()) {
    if (number === undefined || number === 0) continue;
    if (found[row] === undefined || number < 0) return undefined;
    named++;
  }
  return named > 0 ? found : undefined;
}

/** The words beside the numbers that name a side, but not in the language of plans, and what they mean. */
export function foreignSides({ sides }: Profile, { directions }: Metric): Map<string, "left" | "right"> {
  const foreign = [...new Set(sides)].filter((side) => directionOf(side, directions) === undefined).sort();
  return new Map(foreign.flatMap((text) => (SIDES[text] === undefined ? [] : [[text, SIDES[text]]])));
}

/** The two texts that stand beside the numbers; none where there are not just two, or numbers stand alone, too. */
export function unknownSides({ sides, numbers }: Profile): string[] {
  const texts = new Set(sides.filter((_, row) => numbers[row] !== undefined && numbers[row] !== 0));
  return texts.size === 2 && !texts.has("") ? [...texts].sort() : [];
}

/** The positive side where it is proven; else the words to choose from. */
export function signFor(
  metric: Metric,
  header: ParsedHeader,
  profile: Profile,
  reading: Reading | undefined,
): { positive: string | null; signs: string[]; why: string } {
  const { directions } = metric;
  if (directions.length === 0) return { positive: null, signs: [], why: "" };
  if (sidesOf(profile, metric) !== undefined)
    return { positive: null, signs: [], why: "its cells name the side" };
  const stated = statedDirection(header, directions);
  if (stated !== undefined && profile.sided === 0)
    return { positive: stated.word, signs: [], why: "its name says which way is positive" };
  const plain = (sign: number) => sideWord(directions, sign);
  const proven =
    reading !== undefined && reading.sign !== 0 && profile.sided === 0 ? plain(reading.sign) : undefined;
  if (proven !== undefined) return { positive: proven, signs: [], why: reading?.why ?? "" };
  const words = [plain(1), plain(-1)].filter((word) => word !== undefined);
  return { positive: null, signs: words.length > 0 ? words : directions.map(({ word }) => word), why: "" };
}

/** The word of the frame for a side. */
function sideWord(directions: readonly Direction[], sign: number): string | undefined {
  return directions.find((direction) => !direction.handed && direction.sign === sign)?.word;
}

/** What follows for an open sign from that of another column. */
export function linkText(metric: Metric, { sign, why }: Link, leader: Metric, leaderHeader: string): string {
  const ways = [1, -1].map(
    (side) =>
      `positive ${sideWord(metric.directions, side * sign)} where that is positive ${sideWord(leader.directions, side)}`,
  );
  return `It follows from column ${quote(leaderHeader)}: ${ways.join(", ")}, since ${why}.`;
}
