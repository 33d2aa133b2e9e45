/** What the editor does with keys and words before the server has said a word. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { LIBRARY_FILES } from "../../language/generated/library.ts";
import { DrillwrightTerminals } from "../../language/generated/tree/ast.ts";

const configuration = JSON.parse(
  readFileSync(new URL("../../extension/language-configuration.json", import.meta.url), "utf8"),
);

describe("a double click takes the whole of", () => {
  const words = (text: string) =>
    text.match(new RegExp(configuration.wordPattern.pattern, `g${configuration.wordPattern.flags}`)) ?? [];

  test.each(["7-iron", "in-to-out", "m/s", "face-to-path", "right-hander", "°/s", "°", "2.5", "yd", "größe"])(
    "%s",
    (word) => {
      expect(words(`(${word})`)).toEqual([word]);
    },
  );

  test("two words, never more", () => {
    expect(words("2°in-to-out; 3-4 plan{block")).toEqual([
      "2",
      "°in",
      "-to-out".slice(1),
      "3",
      "4",
      "plan",
      "block",
    ]);
  });

  test("every name of the built-in vocabulary, as the language itself reads it", () => {
    const names = Object.values(LIBRARY_FILES)
      .map((text) => text.replace(/"[^"]*"|\/\*[\s\S]*?\*\/|\/\/.*/g, " "))
      .flatMap((text) => text.match(new RegExp(DrillwrightTerminals.WORD, "g")) ?? []);
    expect(names.length).toBeGreaterThan(100);
    for (const name of names) expect(words(name)).toEqual([name]);
  });
});

describe("the next line", () => {
  const increase = new RegExp(configuration.indentationRules.increaseIndentPattern);
  const decrease = new RegExp(configuration.indentationRules.decreaseIndentPattern);

  test.each(['plan "A" {', "  success {", "{ // what follows"])("is indented after %s", (line) => {
    expect(increase.test(line)).toBe(true);
  });

  test.each([
    "success { 3 in a row on target }",
    "// success {",
    ' * block "A" {',
    'cue "open {"',
    "12 shots",
  ])("is not indented after %s", (line) => {
    expect(increase.test(line)).toBe(false);
  });

  test("a closing brace goes back", () => {
    expect(decrease.test("  }")).toBe(true);
    expect(decrease.test("  12 shots }")).toBe(false);
  });
});

describe("Enter in a documentation comment", () => {
  interface Rule {
    readonly beforeText: string;
    readonly afterText?: string;
    readonly previousLineText?: string;
    readonly action: { readonly indent: string; readonly appendText?: string; readonly removeText?: number };
  }

  /** What the first rule that fits does. */
  function enter(before: string, after = "", previous = ""): Rule["action"] | undefined {
    const fits = (expression: string | undefined, text: string) =>
      expression === undefined || new RegExp(expression).test(text);
    return configuration.onEnterRules.find(
      (rule: Rule) =>
        fits(rule.beforeText, before) && fits(rule.afterText, after) && fits(rule.previousLineText, previous),
    )?.action;
  }

  test("opens it between its ends", () => {
    expect(enter("/**", " */")).toEqual({ indent: "indentOutdent", appendText: " * " });
  });

  test("goes on with it", () => {
    expect(enter("  /** Second lesson.")).toEqual({ indent: "none", appendText: " * " });
    expect(enter("   * and more", "", "  /** Second lesson.")).toEqual({ indent: "none", appendText: "* " });
  });

  test("leaves the column of the asterisk at its end", () => {
    expect(enter("   */")).toEqual({ indent: "none", removeText: 1 });
  });

  test("does nothing elsewhere", () => {
    expect(enter("12 shots")).toBeUndefined();
    expect(enter("  /** Done. */")).toBeUndefined();
    expect(enter("formula carry", "", "12 shots")).toBeUndefined();
  });
});

test("braces, brackets and quotes come in pairs", () => {
  const pairs = configuration.autoClosingPairs.map(
    ({ open, close }: { open: string; close: string }) => open + close,
  );
  expect(pairs).toEqual(["{}", "()", '""', "/** */"]);
});
