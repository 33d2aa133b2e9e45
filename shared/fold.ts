/** Names as people vary them. */

/** The letters and digits of a text, whatever the case, Unicode form, spaces, hyphens and punctuation. */
export function fold(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
}

/** The same, whatever zeros stand in front of numbers: `Gate 01` is `Gate 1`. */
export function foldNumbered(text: string): string {
  return fold(text.replace(/(?<!\d)0+(?=\d)/g, ""));
}
