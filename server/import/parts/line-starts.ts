/** Where the lines of a file begin, in bytes, while it is read. */

const LF = 0x0a;
const CR = 0x0d;

/**
 * Lines end in LF, CRLF or CR, and count from 1. For encodings in which these bytes stand for nothing else: all that contain
 * ASCII. Holds the starts of the lines from the one that was asked for last.
 */
export class LineStarts {
  #starts = [0];
  /** The line that the first of them is the start of. */
  #first = 1;
  #size = 0;
  #isAfterCr = false;

  push(bytes: Uint8Array): void {
    for (let at = 0; at < bytes.length; at++) {
      const byte = bytes[at] ?? 0;
      if (byte > CR) this.#isAfterCr = false;
      else if (byte === LF && this.#isAfterCr) {
        this.#starts[this.#starts.length - 1] = this.#size + at + 1;
        this.#isAfterCr = false;
      } else {
        if (byte === LF || byte === CR) this.#starts.push(this.#size + at + 1);
        this.#isAfterCr = byte === CR;
      }
    }
    this.#size += bytes.length;
  }

  /** How many bytes were pushed. */
  get size(): number {
    return this.#size;
  }

  /** Lines are asked for from the top to the bottom. */
  startOf(line: number): number {
    return this.#starts[line - this.#first] ?? this.#size;
  }

  /** Nothing before this line will be asked for. */
  forgetBefore(line: number): void {
    if (line <= this.#first) return;
    this.#starts = this.#starts.slice(line - this.#first);
    this.#first = line;
  }
}
