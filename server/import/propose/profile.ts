/** What the cells of one column look like. */
import { isBlank, parseNumber, plainText } from "../cells/number.ts";
import { type minusBeside, partsOf } from "../cells/reading.ts";
import { symbolOf } from "../cells/unit-words.ts";
import type { Form } from "./form.ts";

export interface Profile {
  /** By row; undefined where there is no number. Signs as written, side words left off. */
  readonly numbers: readonly (number | undefined)[];
  /** By row: the word beside the number, in lower case; empty where there is none. */
  readonly sides: readonly string[];
  /** The unit that stands behind the numbers. */
  readonly unit: string | undefined;
  /** Cells that are not blank. */
  readonly stated: number;
  /** What marks a number below zero: a minus in front of it where this is null. The numbers have their signs all the same. */
  readonly minus: Minus | null;
  /** How many of those are numbers, and how many of the numbers have a word for a side. */
  readonly read: number;
  readonly sided: number;
  /** Different texts, up to some hundreds, as written. */
  readonly texts: ReadonlyMap<string, number>;
  readonly samples: readonly string[];
}

export type Minus = NonNullable<ReturnType<typeof minusBeside>>;

const MOST_TEXTS = 300;
const SAMPLES = 3;

export function profileOf(place: number, { rows, decimal, thousands, blanks }: Form): Profile {
  const noReading = new Set(blanks.map((text) => text.toLowerCase()));
  const numbers: (number | undefined)[] = [];
  const sides: string[] = [];
  const texts = new Map<string, number>();
  const units = new Map<string, number>();
  let stated = 0;
  for (const { cells } of rows) {
    const text = plainText((cells[place] ?? "").trim());
    const isStated = !isBlank(text) && !noReading.has(text.toLowerCase());
    const { number, side, unit } = isStated ? numberIn(text) : NOTHING;
    if (isStated) {
      stated++;
      if (texts.size < MOST_TEXTS || texts.has(text)) texts.set(text, (texts.get(text) ?? 0) + 1);
      if (unit !== undefined) units.set(unit, (units.get(unit) ?? 0) + 1);
    }
    numbers.push(number);
    sides.push(side);
  }
  const minus = minusOf(numbers, sides);
  if (minus !== null) {
    for (const [row, side] of sides.entries()) {
      if (side !== minus) continue;
      numbers[row] = 0 - (numbers[row] ?? 0);
      sides[row] = "";
    }
  }
  const read = numbers.filter((number) => number !== undefined).length;
  const [unit] = [...units].sort(([, one], [, other]) => other - one)[0] ?? [undefined];
  return {
    numbers,
    sides,
    unit,
    stated,
    minus,
    read,
    sided: numbers.filter((number, row) => number !== undefined && number !== 0 && sides[row] !== "").length,
    texts,
    samples: [...texts.keys()].slice(0, SAMPLES),
  };

  function numberIn(text: string): { number: number | undefined; side: string; unit: string | undefined } {
    const bare = parseNumber(text, decimal, thousands);
    if (bare !== undefined) return { number: bare, side: "", unit: undefined };
    const parts = partsOf(text);
    const number = parts === undefined ? undefined : parseNumber(parts.number, decimal, thousands);
    if (parts === undefined || number === undefined) return NOTHING;
    const words = `${parts.before} ${parts.after.replace(/^([°º"'])(?=\S)/, "$1 ")}`
      .split(/\s+/)
      .filter((word) => word !== "");
    const unit = words.map(symbolOf).find((symbol) => symbol !== undefined);
    const side = words
      .filter((word) => symbolOf(word) === undefined)
      .join(" ")
      .toLowerCase()
      .replace(/^[−–]$/, "-");
    return side.length > 12 || /\d/.test(side) ? NOTHING : { number, side, unit };
  }
}

/** Brackets, or a dash behind the number, are its minus where no number has one in front, and nothing else stands beside any. */
function minusOf(numbers: readonly (number | undefined)[], sides: readonly string[]): Minus | null {
  const beside = new Set(sides.filter((side) => side !== ""));
  const [side] = beside;
  const isMinus = beside.size === 1 && (side === "()" || side === "-");
  return isMinus && numbers.every((number) => number === undefined || number >= 0) ? side : null;
}

const NOTHING = { number: undefined, side: "", unit: undefined };
