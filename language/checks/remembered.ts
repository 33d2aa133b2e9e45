/** What was found out about blocks the last time a file was looked at, so that a keystroke in one asks nothing of the others. */
import type { LangiumDocument } from "langium";
import type { Finding } from "./check.ts";

/** A finding without the node, which is another one after each keystroke. */
export type Remembered = Omit<Finding, "node" | "cst" | "property" | "index">;

/** The answer hangs on other blocks of the plan as well, and is kept with them. */
export const WITH_OTHERS = Symbol("with others");

/** By what was asked. */
export type Answers = Map<unknown, readonly Remembered[] | typeof WITH_OTHERS>;

export class Memory {
  private readonly answers = new TwoGenerations<Answers>();
  private readonly numbers = new TwoGenerations<number>();
  private last = 0;

  /** The memory of a file. */
  static of(document: LangiumDocument): Memory {
    const memory = memories.get(document) ?? new Memory();
    memories.set(document, memory);
    return memory;
  }

  /** The answers about whatever the key describes in full; none at first. */
  about(key: string): Answers {
    return this.answers.get(key, () => new Map());
  }

  /** A number that stands for a text, so that keys need not hold long ones. */
  numberOf(text: string): number {
    return this.numbers.get(text, () => ++this.last);
  }

  /** Forgets what was not asked for again since the last time. Not called where looking at the file was cut short. */
  forgetTheRest(): void {
    this.answers.forgetTheRest();
    this.numbers.forgetTheRest();
  }
}

class TwoGenerations<T> {
  private before = new Map<string, T>();
  private now = new Map<string, T>();

  get(key: string, make: () => T): T {
    const value = this.now.get(key) ?? this.before.get(key) ?? make();
    this.now.set(key, value);
    return value;
  }

  forgetTheRest(): void {
    this.before = this.now;
    this.now = new Map();
  }
}

const memories = new WeakMap<LangiumDocument, Memory>();
