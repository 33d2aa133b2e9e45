/** What was found out about blocks the last time a file was looked at, so that a keystroke in one asks nothing of the others. */
import type { LangiumDocument } from "langium";
import type { Finding } from "./check.ts";

/** A finding without the node, which is another one after each keystroke. */
export type Remembered = Omit<Finding, "node" | "cst" | "property" | "index">;

/** By what was asked. */
export type Answers = Map<unknown, readonly Remembered[]>;

export class Memory {
  private before = new Map<string, Answers>();
  private now = new Map<string, Answers>();

  /** The memory of a file. */
  static of(document: LangiumDocument): Memory {
    const memory = memories.get(document) ?? new Memory();
    memories.set(document, memory);
    return memory;
  }

  /** The answers about whatever the key describes in full; none at first. */
  about(key: string): Answers {
    const answers = this.now.get(key) ?? this.before.get(key) ?? new Map();
    this.now.set(key, answers);
    return answers;
  }

  /** Forgets what was not asked for again since the last time. Not called where looking at the file was cut short. */
  forgetTheRest(): void {
    this.before = this.now;
    this.now = new Map();
  }
}

const memories = new WeakMap<LangiumDocument, Memory>();
