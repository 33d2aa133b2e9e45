/** Whether a text is well-formed XML, as far as what this project writes goes: no DTD, no CDATA, no comments. */
import { expect } from "vitest";

/** Every tag closed in order, attributes quoted and once each, no stray `<` or `&`, no character that XML cannot hold. */
export function assertWellFormed(text: string): void {
  expect(text.startsWith('<?xml version="1.0" encoding="UTF-8"?>\n')).toBe(true);
  expect(text).not.toMatch(/(?![\t\n\r])\p{Cc}|[\uFFFE\uFFFF]|&(?!(?:amp|lt|gt|quot|#39);)/u);
  const open: string[] = [];
  let roots = 0;
  for (const piece of text.slice(text.indexOf("\n") + 1).split(/(?=<)/)) {
    if (!piece.startsWith("<")) {
      expect(piece.trim()).toBe("");
      continue;
    }
    const tag = /^<(\/?)([a-z][\w-]*)((?: [\w-]+="[^"<]*")*)(\/?)>([^>]*)$/.exec(piece);
    expect(tag, piece).not.toBeNull();
    const [, closes, name = "", attributes = "", isEmpty, rest = ""] = tag ?? [];
    const names = [...attributes.matchAll(/ ([\w-]+)="/g)].map(([, attribute]) => attribute);
    expect(new Set(names).size, piece).toBe(names.length);
    if (closes === "/") expect(open.pop()).toBe(name);
    else {
      if (open.length === 0) roots++;
      if (isEmpty !== "/") open.push(name);
    }
    if (open.length === 0) expect(rest.trim()).toBe("");
  }
  expect([open, roots]).toEqual([[], 1]);
}
