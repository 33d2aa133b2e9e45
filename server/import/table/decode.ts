/** From the bytes of a file to its text, piece by piece. */

/** The part of the platform's decoder (WHATWG Encoding) that is used here; both Node and browsers have it. */
declare const TextDecoder: new (
  label: string,
  options?: { ignoreBOM: boolean },
) => { decode(bytes?: Uint8Array, options?: { stream: boolean }): string };

/** How many bytes are looked at to recognise UTF-16 without a byte order mark, and how many are waited for. */
const SAMPLE = 4096;
const LEAST = 4;

/**
 * Decodes a text that arrives in pieces, without its byte order mark. The encoding is, in this order: what the byte order
 * mark says; UTF-16 where nearly every second byte of the first piece is zero; UTF-8 where the first bytes that are not
 * ASCII are valid in it; else windows-1252, of which Latin-1 text is a part and in which every byte has a meaning. Bytes
 * without a meaning become U+FFFD. Never throws. Linear.
 */
export class TextDecoding {
  #decoder: InstanceType<typeof TextDecoder> | undefined;
  /** Bytes that were not decoded yet: too few to tell the encoding. */
  #held: Uint8Array = new Uint8Array();
  #started = false;
  /** False while all that was read is ASCII, so that it may still be anything that contains it. */
  #decided = false;
  #encoding = "utf-8";

  /** The encoding as far as it was told by what was pushed. ASCII is UTF-8. */
  get encoding(): string {
    return this.#encoding;
  }

  push(bytes: Uint8Array): string {
    const piece = this.#held.length === 0 ? bytes : joined(this.#held, bytes);
    this.#held = new Uint8Array();
    if (!this.#started) {
      if (piece.length < LEAST) return this.#hold(piece);
      this.#start(piece);
    }
    return this.#decided ? this.#decode(piece) : this.#whileAscii(piece, false);
  }

  /** The rest of the text. Nothing may be pushed any more. */
  end(): string {
    const piece = this.#held;
    if (!this.#started) this.#start(piece);
    const text = this.#decided ? this.#decode(piece) : this.#whileAscii(piece, true);
    return text + (this.#decoder?.decode() ?? "");
  }

  #start(piece: Uint8Array): void {
    this.#started = true;
    const encoding = markedEncoding(piece) ?? unmarkedUtf16(piece);
    if (encoding !== undefined) this.#decide(encoding);
  }

  #decide(encoding: string): void {
    this.#decided = true;
    this.#encoding = encoding;
    this.#decoder = new TextDecoder(encoding);
  }

  #decode(piece: Uint8Array): string {
    return this.#decoder?.decode(piece, { stream: true }) ?? "";
  }

  #hold(piece: Uint8Array): string {
    this.#held = piece.slice();
    return "";
  }

  #whileAscii(piece: Uint8Array, isLast: boolean): string {
    const text = new TextDecoder("utf-8").decode(piece);
    // Any byte that is not ASCII makes the text shorter than its bytes, or is unreadable.
    if (text.length === piece.length && !text.includes("\uFFFD")) return text;
    const first = piece.findIndex((byte) => byte > 0x7f);
    const isUtf8 = startsUtf8(piece, first);
    if (isUtf8 === undefined && !isLast) {
      this.#hold(piece.subarray(first));
      return text.slice(0, first);
    }
    this.#decide(isUtf8 === true ? "utf-8" : "windows-1252");
    return this.#decode(piece);
  }
}

/** Decodes pieces of a text that do not begin where it does, in an encoding that was found before. */
export function decodingFrom(encoding: string): (bytes: Uint8Array) => string {
  const decoder = new TextDecoder(encoding, { ignoreBOM: true });
  return (bytes) => decoder.decode(bytes, { stream: true });
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  const both = new Uint8Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
}

function markedEncoding(bytes: Uint8Array): string | undefined {
  const [first, second, third] = bytes;
  if (first === 0xef && second === 0xbb && third === 0xbf) return "utf-8";
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  return undefined;
}

/** Tables are mostly digits, Latin letters and separators, whose high byte in UTF-16 is zero. */
function unmarkedUtf16(bytes: Uint8Array): string | undefined {
  const pairs = Math.floor(Math.min(bytes.length, SAMPLE) / 2);
  if (pairs === 0) return undefined;
  let zerosAtEven = 0;
  let zerosAtOdd = 0;
  for (let pair = 0; pair < pairs; pair++) {
    if (bytes[2 * pair] === 0) zerosAtEven++;
    if (bytes[2 * pair + 1] === 0) zerosAtOdd++;
  }
  if (zerosAtOdd >= 0.7 * pairs && zerosAtEven === 0) return "utf-16le";
  if (zerosAtEven >= 0.7 * pairs && zerosAtOdd === 0) return "utf-16be";
  return undefined;
}

/** Whether a character of UTF-8 that is not ASCII begins there; undefined where the piece ends inside it. */
function startsUtf8(bytes: Uint8Array, at: number): boolean | undefined {
  const lead = bytes[at] ?? 0;
  const length = lead >= 0xf0 ? 4 : lead >= 0xe0 ? 3 : 2;
  if (lead < 0xc2 || lead > 0xf4) return false;
  for (let next = at + 1; next < at + length; next++) {
    const byte = bytes[next];
    if (byte === undefined) return undefined;
    if (byte < 0x80 || byte > 0xbf) return false;
  }
  return true;
}
