/** Sentences in pages are read as sentences, and change nothing else. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { sentencePage, withNotice } from "../../extension/views/page-html.ts";

const SENTENCE = "Mend “a < b & $&” first.";
const WRITTEN = "Mend “a &lt; b &amp; $&amp;” first.";

test.each(["second-visit.html", "card.html"])("a notice is the first thing on %s", (name) => {
  const page = readFileSync(new URL(`../report/expected/${name}`, import.meta.url), "utf8");
  const noticed = withNotice(page, SENTENCE);
  expect(noticed).toMatch(/<body>\n<p class="care" role="status">[^\n]*<\/p>\n<main>/);
  expect(noticed.replace(`\n<p class="care" role="status">${WRITTEN}</p>`, "")).toBe(page);
});

test("a sentence that stands in for a page loads and runs nothing", () => {
  expect(sentencePage(SENTENCE)).toContain(`<p>${WRITTEN}</p>`);
  expect(sentencePage(SENTENCE)).toContain("default-src 'none'");
});
