/** A table that may be written while it is open somewhere: what it holds now, and whether somebody is writing it. */
import { isPacked } from "../gunzip.ts";
import { SETTLED } from "./pace.ts";
import { areEqual, type GrowingFile, joined, Tail } from "./tail.ts";

/** Bytes up to which a table is compared as a whole. */
const MOST_COMPARED = 1_000_000;

/**
 * Holds the bytes of a file, and reads what is added to it. What is there at the first look counts as it stands; from the
 * first change on the table is growing, until it has not changed for a while.
 */
export class FollowedTable {
  /** Undefined before the first look, and where there is no such file or it cannot be read. */
  content: Uint8Array | undefined;
  readonly #tail: Tail;
  #isFirst = true;
  #isWritten = false;
  #quiet = 0;
  #looking: Promise<unknown> = Promise.resolve();

  constructor(file: GrowingFile) {
    this.#tail = new Tail(file);
  }

  /** Whether the last row may be a half one. An empty file has none, and nobody reads half a packed one. */
  get isGrowing(): boolean {
    return (
      this.#isWritten && this.content !== undefined && this.content.length > 0 && !isPacked(this.content)
    );
  }

  /**
   * Looks at the file, when those who look already are done. True where it is to be read otherwise than before. `closely`:
   * somebody says that it was written, so a table of usual size is compared byte by byte, too.
   */
  look(closely = false): Promise<boolean> {
    const look = this.#looking.then(() => this.#look(closely));
    this.#looking = look;
    return look;
  }

  async #look(closely: boolean): Promise<boolean> {
    const isFirst = this.#isFirst;
    this.#isFirst = false;
    const before = this.content;
    try {
      const growth = await this.#tail.look();
      if (growth.kind === "gone") this.content = undefined;
      else if (growth.kind === "replaced") this.content = growth.whole;
      else if (growth.kind === "grown") this.content = joined(before ?? new Uint8Array(), growth.added);
      else if (!closely || before === undefined || before.length > MOST_COMPARED) return this.#hasSettled();
      else {
        // Two writings within a tick of the file system's clock look alike from outside.
        const whole = await this.#tail.whole();
        if (areEqual(before, whole)) return this.#hasSettled();
        this.content = whole;
      }
    } catch {
      // A folder, or a file nobody may read: as good as missing.
      this.content = undefined;
      return before !== undefined;
    }
    this.#isWritten = !isFirst;
    this.#quiet = 0;
    return true;
  }

  #hasSettled(): boolean {
    if (!this.#isWritten || ++this.#quiet < SETTLED) return false;
    this.#isWritten = false;
    return true;
  }
}
