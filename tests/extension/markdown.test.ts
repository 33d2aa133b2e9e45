/** Plans in Markdown are coloured as plans: the rule that finds them, and where it hands over. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const grammar = JSON.parse(
  readFileSync(new URL("../../extension/markdown.tmLanguage.json", import.meta.url), "utf8"),
);
const [rule] = Object.values<{ begin: string; end: string; patterns: unknown[] }>(grammar.repository);

/** Both engines read this expression alike, but for the flag that the editor's writes in the text. */
const begins = (line: string) => {
  const [, flags = "", expression = ""] = /^(?:\(\?([a-z]+)\))?(.*)$/s.exec(rule?.begin ?? "") ?? [];
  return new RegExp(expression.replaceAll("\\G", ""), flags.replace("x", "")).test(line);
};

describe("a fenced block is a plan", () => {
  test.each(["```drill", "```drillwright", "~~~drill", "```drill title"])("after %s", (line) => {
    expect(begins(line)).toBe(true);
  });

  test.each(["```", "```drills", "```json", "drill"])("not after %s", (line) => {
    expect(begins(line)).toBe(false);
  });
});

test("its content is read by the grammar of plans", () => {
  expect(JSON.stringify(rule)).toContain("source.drillwright");
  expect(grammar.injectionSelector).toMatch(/text\.html\.markdown/);
});
