/** Texts as a plan writes them. */

/** In quotation marks, with what would end it early escaped. */
export function textLiteral(text: string): string {
  return `"${escapedText(text)}"`;
}

/** A text as it stands between quotation marks. */
export function escapedText(text: string): string {
  return text.replace(/["\\]/g, "\\$&").replace(/\n/g, "\\n").replace(/\r/g, "\\r");
}
