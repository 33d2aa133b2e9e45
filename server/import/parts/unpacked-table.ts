/** What was packed, held so that rows can be read from the middle of it. */
import { firstIndexWhere } from "../../../shared/first-index.ts";
import type { Pieces } from "../pieces.ts";

/** Bytes that are held of one table. A season's export of a million rows is smaller. */
const MOST_HELD = 1 << 27;

/** The bytes of a packed table, unpacked, under the hash of the packed file. */
export class UnpackedTable {
  size = 0;
  readonly sha256: () => string;
  readonly #pieces: Uint8Array[] = [];
  /** Where each of them begins. */
  readonly #starts: number[] = [];

  constructor(packed: Pick<Pieces, "sha256">) {
    this.sha256 = () => packed.sha256();
  }

  push(piece: Uint8Array): void {
    this.#starts.push(this.size);
    this.#pieces.push(piece);
    this.size += piece.length;
  }

  get isTooMuch(): boolean {
    return this.size > MOST_HELD;
  }

  async between(start: number, end: number): Promise<Uint8Array> {
    const bytes = new Uint8Array(end - start);
    for (let at = this.#pieceAt(start); (this.#starts[at] ?? end) < end; at++) {
      const from = this.#starts[at] ?? 0;
      const piece = this.#pieces[at]?.subarray(Math.max(0, start - from), end - from);
      if (piece !== undefined) bytes.set(piece, Math.max(0, from - start));
    }
    return bytes;
  }

  /** Which piece holds the byte at a place. */
  #pieceAt(place: number): number {
    const starts = this.#starts;
    return Math.max(0, firstIndexWhere(starts.length, (piece) => (starts[piece] ?? 0) > place) - 1);
  }
}
