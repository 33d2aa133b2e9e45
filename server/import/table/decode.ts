/** From the bytes of a file to its text. */

/** The part of the platform's decoder (WHATWG Encoding) that is used here; both Node and browsers have it. */
declare const TextDecoder: new (
  label: string,
  options?: { fatal?: boolean },
) => { decode(bytes: Uint8Array): string };

/** How many bytes are looked at to recognise UTF-16 without a byte order mark. */
const SAMPLE = 4096;

/**
 * The text of a file, without its byte order mark. The encoding is, in this order: what the byte order mark says;
 * UTF-16 where nearly every second byte of the beginning is zero; UTF-8 where all bytes are valid in it; else
 * windows-1252, of which Latin-1 text is a part and in which every byte has a meaning. Never throws. Linear.
 */
export function decodeText(bytes: Uint8Array): string {
  const marked = markedEncoding(bytes) ?? unmarkedUtf16(bytes);
  // The decoder drops the byte order mark of its encoding and puts U+FFFD for what it cannot read.
  if (marked !== undefined) return new TextDecoder(marked).decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
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
