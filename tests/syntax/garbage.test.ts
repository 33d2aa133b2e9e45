import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Check, TextRange } from "../../language/checks/check.ts";
import { FAULT_CODE } from "../../language/checks/check.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { LONGEST_TEXT } from "../../language/syntax/limits.ts";
import { check } from "../checks/checked-files.ts";
import { untidy } from "../support/programs.ts";

// Whatever is in a file, it is answered with findings that have a place in it.

const checks = Object.values(CHECKS as Readonly<Record<string, Check>>);
const others = Object.assign({}, ...checks.map(({ files }) => files ?? {})) as Record<string, string>;
const shipped = globSync("examples/**/*.drill", { cwd: fileURLToPath(new URL("../..", import.meta.url)) });
const examples = [
  ...checks.map(({ silent }) => silent),
  ...shipped.map((path) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8")),
];
const example = fc.constantFrom(...examples);
const words = [...new Set(examples.flatMap((text) => text.match(/"[^"\n]*"|[\p{L}-]+|\d+|\S/gu) ?? []))];

async function expectFindingsInPlace(text: string, files = others): Promise<void> {
  const lines = text.split(/\r\n|\r|\n/);
  const isInText = ({ start, end }: TextRange) =>
    start.line <= end.line &&
    end.line < lines.length &&
    (start.line < end.line || start.character < end.character) &&
    end.character <= (lines[end.line] ?? "").length;
  const found = await check(text, files);
  expect(found.length).toBeLessThanOrEqual(200);
  for (const { range, message, code } of found) {
    expect(message, code).not.toBe("");
    expect(code, message).not.toBe(FAULT_CODE);
    if (text !== "")
      expect(isInText(range), `${code} at ${JSON.stringify(range)} of ${JSON.stringify(text)}`).toBe(true);
  }
}

const run = (texts: fc.Arbitrary<string>, numRuns = 300) =>
  fc.assert(
    fc.asyncProperty(texts, (text) => expectFindingsInPlace(text)),
    { numRuns },
  );

describe("garbage never crashes", () => {
  test("any text", () => run(fc.string({ unit: "binary", maxLength: 200 })));

  test("texts that the grammar allows, whatever they say", () => run(untidy));

  test("words of the language in any order", () =>
    run(
      fc
        .array(fc.tuple(fc.constantFrom(...words), fc.constantFrom(" ", " ", "\n", "\n  ", "")), {
          maxLength: 60,
        })
        .map((soup) => soup.flat().join("")),
      600,
    ));

  test("texts that end anywhere", () =>
    run(
      fc.tuple(example, fc.nat()).map(([text, at]) => text.slice(0, at % (text.length + 1))),
      600,
    ));

  test("texts with one character added, changed or missing", () =>
    run(
      fc
        .tuple(example, fc.nat(), fc.string({ unit: "grapheme", maxLength: 1 }), fc.nat(1))
        .map(([text, at, by, width]) => {
          const place = at % (text.length + 1);
          return text.slice(0, place) + by + text.slice(place + width);
        }),
      600,
    ));

  test("texts with a line twice, or in another place", () =>
    run(
      fc.tuple(example, fc.nat(), fc.nat(), fc.boolean()).map(([text, from, to, isMoved]) => {
        const lines = text.split("\n");
        const line = lines[from % lines.length] ?? "";
        const rest = isMoved ? lines.toSpliced(from % lines.length, 1) : lines;
        return rest.toSpliced(to % (rest.length + 1), 0, line).join("\n");
      }),
      600,
    ));

  test("texts with lines in another order", () =>
    run(
      example.chain((text) => {
        const lines = text.split("\n");
        return fc.shuffledSubarray(lines, { minLength: lines.length >> 1 }).map((some) => some.join("\n"));
      }),
    ));

  test("files that use one with a character missing", () =>
    fc.assert(
      fc.asyncProperty(example, fc.nat(), fc.nat(), async (text, split, at) => {
        const declarations = text.split(/\n(?=\S)/);
        const own = declarations.filter((_, index) => (split >> index) % 2 === 0);
        const used = declarations.filter((declaration) => !own.includes(declaration)).join("\n");
        const place = at % (used.length + 1);
        const broken = used.slice(0, place) + used.slice(place + 1);
        await expectFindingsInPlace(`use "./broken"\n${own.join("\n")}`, {
          ...others,
          "broken.drill": broken,
        });
      }),
      { numRuns: 600 },
    ));
});

describe("texts that are hard on a parser", () => {
  const long = (part: string, length = LONGEST_TEXT - 100) => part.repeat(Math.floor(length / part.length));

  test.each([
    ["a line of a million letters", long("x")],
    ["a line of a million digits", long("1")],
    ["a text that is never closed", `"${long('\\"')}`],
    ["comments that are never closed", long("/* ")],
    ["quotation marks of all kinds", long("“'‘„«")],
    ["a million characters that mean nothing", long("@#;:")],
    ["braces that open and open", long("{")],
    ["braces that close and close", long("}", 100_000)],
    ["blocks within blocks", `plan "Gate" {\n${long('block "Start" {\n', 50_000)}`],
    ["brackets within brackets", `metric pace is speed {\n  formula ${"(".repeat(20_000)}carry`],
    ["a formula without end", `metric pace is speed {\n  formula carry${long(" + carry", 500_000)}\n}`],
    ["a line of a million misspelt words", long("tagret ", 200_000)],
    ["a thousand misspelt lines", `plan "Gate" {\n${"  tagret carry at least 3 yd\n".repeat(1000)}}`],
    ["lines that are all mistakes", long("metric\n")],
    ["a number without end", `plan "Gate" {\n  time ${long("9", 1000)} min\n}`],
    ["more than is read", "x".repeat(LONGEST_TEXT + 1)],
  ])("%s", async (_, text) => {
    await expectFindingsInPlace(text);
    expect((await check(text)).some(({ severity }) => severity === "error")).toBe(true);
  });

  test("a long name is a name", async () => {
    const text = `player "${long("P")}" {\n  right-handed\n}`;
    expect(await check(text)).toEqual([]);
  });

  test("what was hard leaves the parser as it was", async () => {
    await check(`metric pace is speed {\n  formula ${"(".repeat(20_000)}carry`);
    const [text] = examples;
    expect(await check(text ?? "")).toEqual([]);
  });

  test("dimensions that double with each line", async () => {
    const lines = Array.from(
      { length: 60 },
      (_, n) => `dimension d${n + 1} = d${n} * d${n} {\n  unit u${n + 1}\n}`,
    );
    const text = `dimension d0 {\n  unit u0\n}\n${lines.join("\n")}\nmetric x is d60 {\n  shown in u60 to 1\n}`;
    expect(await check(text)).toEqual([]);
  });

  test("formulas that follow from each other, a thousand deep", async () => {
    const metrics = Array.from(
      { length: 1000 },
      (_, n) => `metric m${n + 1} is length {\n  formula m${n} + carry\n}`,
    );
    expect(await check(`metric m0 is length\n${metrics.join("\n")}`)).toEqual([]);
  });
});
