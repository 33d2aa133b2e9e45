/** Where the lines of a file begin, in bytes, while it is read. */

const LF = 0x0a;
const CR = 0x0d;

/**
 * Lines end in LF, CRLF or CR, and count from 1. For UTF-16, and for encodings in which these bytes stand for nothing else:
 * all that contain ASCII. Holds the starts of the lines from the one that was asked for last.
 */
export class LineStarts {
  #starts = [0];
  /** The line that the first of them is the start of. */
  #first = 1;
  #size = 0;
  #isAfterCr = false;
  /** The first byte of a unit of UTF-16 whose second has not arrived. */
  #half: number | undefined;

  /** `encoding` is the label of that of the whole text. */
  push(bytes: Uint8Array, encoding = "utf-8"): void {
    if (encoding.startsWith("utf-16")) this.#pushUnits(bytes, encoding === "utf-16be");
    else for (let at = 0; at < bytes.length; at++) this.#take(bytes[at] ?? 0, this.#size + at + 1);
    this.#size += bytes.length;
  }

  #pushUnits(bytes: Uint8Array, isBigEndian: boolean): void {
    for (let at = 0; at < bytes.length; at++) {
      const byte = bytes[at] ?? 0;
      if (this.#half === undefined) this.#half = byte;
      else {
        this.#take(isBigEndian ? 256 * this.#half + byte : this.#half + 256 * byte, this.#size + at + 1);
        this.#half = undefined;
      }
    }
  }

  /** What stands in the text before a place in bytes. */
  #take(code: number, end: number): void {
    if (code > CR) this.#isAfterCr = false;
    else if (code === LF && this.#isAfterCr) {
      this.#starts[this.#starts.length - 1] = end;
      this.#isAfterCr = false;
    } else {
      if (code === LF || code === CR) this.#starts.push(end);
      this.#isAfterCr = code === CR;
    }
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
