/** What follows from the readings of a shot. */
import type { Instrument, ScoringInput } from "../../../shared/plan-model.ts";
import type { Shot } from "../../../shared/session-data.ts";
import { deriveCategories, namings } from "./categories.ts";
import { type Disagreement, disagreements } from "./consistency.ts";
import { derive, formulas } from "./derive.ts";

/** What a row tells of a shot. */
export interface Read extends Pick<Shot, "values" | "categories" | "club"> {
  /** Half of the last digit that was written, for the metrics in `values`. SI. */
  readonly roundings: Readonly<Record<string, number>>;
}

/** What is known of a shot. */
export interface Known extends Pick<Shot, "values" | "categories" | "derived"> {
  /** Readings that do not fit each other; hardly any shot has some. */
  readonly disagreements: readonly Disagreement[];
}

/**
 * Adds to what was read what follows from it. Shots of one table have few different names and derived metrics: equal ones
 * are the same object, which nobody may change.
 */
export function completer(input: ScoringInput): (read: Read) => Known {
  const derivable = formulas(input.metrics.values());
  const naming = namings(input.metrics.values(), input.player);
  const sameNames = sharing<Shot["categories"]>();
  const sameList = sharing<Shot["derived"]>();
  return ({ values, roundings, categories, club }) => {
    const margins = marginsOf(roundings, club, input.instrument);
    const found = disagreements(values, margins, derivable);
    const derived = derive(values, derivable);
    derived.push(...deriveCategories(categories, { values, club }, naming));
    return {
      values,
      categories: sameNames(categories),
      derived: sameList(derived),
      disagreements: found.length === 0 ? NONE : found,
    };
  };
}

const NONE: readonly Disagreement[] = [];

/** The first of equal objects. */
function sharing<Value extends object>(): (value: Value) => Value {
  const known = new Map<string, Value>();
  return (value) => {
    const key = Object.entries(value).join("\n");
    const first = known.get(key);
    if (first === undefined) known.set(key, value);
    return first ?? value;
  };
}

/** Rounding, and twice the standard uncertainty of the instrument, which hardly ever is exceeded. */
function marginsOf(
  roundings: Readonly<Record<string, number>>,
  club: string | null,
  instrument: Instrument | null,
): Readonly<Record<string, number>> {
  if (instrument === null) return roundings;
  const margins = { ...roundings };
  for (const { metric, random, systematic, clubs } of instrument.uncertainties) {
    const margin = margins[metric];
    if (margin === undefined || (clubs.length > 0 && !clubs.includes(club ?? ""))) continue;
    margins[metric] = margin + 2 * Math.sqrt(random * random + systematic * systematic);
  }
  return margins;
}
