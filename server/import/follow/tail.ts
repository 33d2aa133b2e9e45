/** What was added to a file since it was looked at last. */

/** A file that somebody writes. */
export interface GrowingFile {
  /** Undefined where there is no file, as between two that have the same name. `modified` changes with every writing. */
  state(): Promise<{ readonly size: number; readonly modified: number } | undefined>;
  /** Bytes from one place up to another; fewer where the file ends before. */
  read(from: number, to: number): Promise<Uint8Array>;
}

export type Growth =
  | { readonly kind: "unchanged" | "gone" }
  /** `added` follows what was read before. */
  | { readonly kind: "grown"; readonly added: Uint8Array }
  /** The file is another one, or was emptied or rewritten: `whole` is all that it holds. */
  | { readonly kind: "replaced"; readonly whole: Uint8Array };

/**
 * How many bytes at the beginning, and before the place that was reached, tell whether a file is still the same. All of a
 * lesson is among them: somebody may correct a number and add a row at once.
 */
const BEGINNING = 65_536;
const BEFORE = 64;

/**
 * Follows a file by looking at it again and again. It is taken for the same file with something added where it has not
 * become shorter and what is there before the place reached is what was there; for another one where not, or where it was
 * written without growing.
 */
export class Tail {
  readonly #file: GrowingFile;
  #position = 0;
  #modified: number | undefined;
  #head: Uint8Array = new Uint8Array();
  #before: Uint8Array = new Uint8Array();

  constructor(file: GrowingFile) {
    this.#file = file;
  }

  async look(): Promise<Growth> {
    const state = await this.#file.state();
    if (state === undefined) {
      const wasThere = this.#modified !== undefined;
      this.#modified = undefined;
      this.#position = 0;
      return { kind: wasThere ? "gone" : "unchanged" };
    }
    const { size, modified } = state;
    if (modified === this.#modified && size === this.#position) return { kind: "unchanged" };
    const isFirst = this.#modified === undefined;
    this.#modified = modified;
    if (!isFirst && size > this.#position && (await this.#isSame())) {
      const added = await this.#file.read(this.#position, size);
      this.#passed(added);
      return { kind: "grown", added };
    }
    const whole = await this.#file.read(0, size);
    this.#position = 0;
    this.#head = new Uint8Array();
    this.#before = new Uint8Array();
    this.#passed(whole);
    return { kind: "replaced", whole };
  }

  /** Everything up to the place that was reached. */
  whole(): Promise<Uint8Array> {
    return this.#file.read(0, this.#position);
  }

  async #isSame(): Promise<boolean> {
    const [head, before] = await Promise.all([
      this.#file.read(0, this.#head.length),
      this.#file.read(this.#position - this.#before.length, this.#position),
    ]);
    return areEqual(head, this.#head) && areEqual(before, this.#before);
  }

  #passed(bytes: Uint8Array): void {
    this.#position += bytes.length;
    const room = BEGINNING - this.#head.length;
    if (room > 0) this.#head = joined(this.#head, bytes.subarray(0, room));
    this.#before = joined(this.#before, bytes.subarray(Math.max(0, bytes.length - BEFORE))).slice(-BEFORE);
  }
}

export function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  const both = new Uint8Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
}

export function areEqual(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
