/**
 * What was found out about blocks before, so that a keystroke in one asks nothing of the others, and a thousand files made
 * from the same drills ask once.
 */
import type { Finding } from "./check.ts";

/** A finding without the node, which is another one after each keystroke. */
export type Remembered = Omit<Finding, "node" | "cst" | "property" | "index">;

/** The answer hangs on more than it is looked for by here, and is kept with all that as well. */
export const HANGS_ON_MORE = Symbol("hangs on more");

/** By what was asked. */
export type Answers = Map<unknown, readonly Remembered[] | typeof HANGS_ON_MORE>;

/** More blocks than files have that are looked at one after the other, again and again. */
const MOST_BLOCKS = 10_000;

/** Holds no more than twice so many. */
export class Memory {
  private readonly answers = new TwoGenerations<Answers>();
  private readonly numbers = new TwoGenerations<number>();
  private last = 0;

  /** The answers about whatever the key describes in full; none at first. */
  about(key: string): Answers {
    return this.answers.get(key, () => new Map());
  }

  /** A number that stands for a text, so that keys need not hold long ones. Never that of another text. */
  numberOf(text: string): number {
    return this.numbers.get(text, () => ++this.last);
  }
}

/** Forgets what was not asked for since so many others were. */
class TwoGenerations<T> {
  private before = new Map<string, T>();
  private now = new Map<string, T>();

  get(key: string, make: () => T): T {
    const known = this.now.get(key);
    if (known !== undefined) return known;
    const value = this.before.get(key) ?? make();
    if (this.now.size >= MOST_BLOCKS) {
      this.before = this.now;
      this.now = new Map();
    }
    this.now.set(key, value);
    return value;
  }
}
