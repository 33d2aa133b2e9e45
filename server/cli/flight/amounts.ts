/** Amounts as people write them in options and cells: `70 m/s`, `1.5° right`, `4° draw`. */
import type { Direction, Hand, Metric, Unit } from "../../../shared/plan-model.ts";
import { type Notation, readCell } from "../../import/cells/reading.ts";
import type { Vocabulary } from "../../import/propose/vocabulary.ts";

/** The amount in SI and the target frame; that there is none; or what is wrong with the text, as the end of a sentence. */
export type Amount = number | "blank" | { readonly problem: string };

/** What a column says of its cells. */
export interface Column {
  /** The unit of numbers without one; null where each must have its own. */
  readonly unit: Unit | null;
  /** The side that a number without a side means; null for right, up and forward. */
  readonly positive: Direction | null;
}

const PLAIN: Column = { unit: null, positive: null };

export class AmountReader {
  readonly #vocabulary: Vocabulary;
  readonly #hand: Hand;

  constructor(vocabulary: Vocabulary, hand: Hand) {
    this.#vocabulary = vocabulary;
    this.#hand = hand;
  }

  /** @throws Error where there is no such metric, which would be a mistake of ours. */
  metricCalled(name: string): Metric {
    const metric = this.#vocabulary.metrics.find((each) => each.name === name);
    if (metric === undefined) throw new Error(`The vocabulary has no metric ${name}.`);
    return metric;
  }

  /** A reading of a metric. */
  ofMetric(text: string, name: string, column = PLAIN): Amount {
    const metric = this.metricCalled(name);
    return this.#read(text, metric.dimension, metric.directions, column, metric.unit);
  }

  /** An amount of a dimension without sides. */
  ofDimension(text: string, dimension: string): Amount {
    const first = this.#units(dimension)[0];
    if (first === undefined) throw new Error(`The vocabulary has no dimension ${dimension}.`);
    return this.#read(text, dimension, [], PLAIN, first);
  }

  /** The unit that is spelled so, among those of a metric. */
  unitOf(spelling: string, { dimension }: Metric): Unit | undefined {
    return this.#units(dimension).find(({ symbol }) => symbol === spelling);
  }

  #read(
    text: string,
    dimension: string,
    directions: readonly Direction[],
    column: Column,
    usual: Unit,
  ): Amount {
    const notation: Omit<Notation, "unit"> = {
      decimal: "point",
      thousands: null,
      positive: column.positive,
      directions,
      sides: [],
      hand: this.#hand,
    };
    const bare = readCell(text, { ...notation, unit: column.unit ?? { symbol: "", factor: 1 } });
    if (bare === "blank" || (typeof bare === "number" && column.unit !== null)) return bare;
    if (typeof bare === "number") {
      return { problem: `has no unit: write it as in "${text.trim()} ${usual.symbol}"` };
    }
    for (const unit of this.#units(dimension)) {
      const value = readCell(text, { ...notation, unit });
      if (typeof value === "number") return value;
    }
    const sides = directions.map(({ word }) => word).join(", ");
    const side = sides === "" ? "" : ` and where it matters a side (${sides})`;
    return { problem: `cannot be read: write a number and a unit such as ${usual.symbol}${side}` };
  }

  /** Every unit of a dimension, under each of its spellings. */
  #units(dimension: string): Unit[] {
    const units = this.#vocabulary.units.get(dimension) ?? [];
    return units.flatMap(({ unit, names }) => names.map((symbol) => ({ ...unit, symbol })));
  }
}
