import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Check } from "../../language/checks/check.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { layoutEdits } from "../../language/layout/layout.ts";
import { Lowering } from "../../language/lowering/document.ts";
import { edited, services, withChecked } from "../checks/checked-files.ts";
import { program, untidy } from "../support/programs.ts";

/** A text in its layout. */
function laidOut(text: string): Promise<string> {
  return withChecked(text, {}, ({ document }) => edited(text, layoutEdits(document, services.parser.Lexer)));
}

const tokensOf = (text: string) => services.parser.Lexer.tokenize(text).tokens.map(({ image }) => image);
const commentsOf = (text: string) =>
  services.parser.Lexer.tokenize(text).hidden.map(({ image }) =>
    image
      .split(/\r\n|\r|\n/)
      .map((line) => line.trim())
      .join("\n"),
  );

describe("one statement a line", () => {
  test.each([
    [
      "a block in a line",
      'plan "A"{block "B" test{10 shots}}',
      'plan "A" {\n  block "B" test {\n    10 shots\n  }\n}\n',
    ],
    [
      "statements that run on",
      'player "P"{right-handed note "x"}',
      'player "P" {\n  right-handed\n  note "x"\n}\n',
    ],
    ["a statement over two lines", 'club driver also\n  "d",\n  "dr"', 'club driver also "d", "dr"\n'],
    [
      "a criterion without braces",
      'plan "A" {\nblock "B" { 3 shots\nsuccess\n  3 in a row with carry at least 100 yd } }',
      'plan "A" {\n  block "B" {\n    3 shots\n    success 3 in a row with carry at least 100 yd\n  }\n}\n',
    ],
    ["a window in a line", 'window "W"   is carry at least 3 m', 'window "W" is carry at least 3 m\n'],
    [
      "variants of a window",
      'window "W" { is carry at least 3 m for driver is carry at least 4 m }',
      'window "W" {\n  is carry at least 3 m\n  for driver is carry at least 4 m\n}\n',
    ],
  ])("%s", async (_, text, expected) => {
    expect(await laidOut(text)).toBe(expected);
  });
});

describe("spaces", () => {
  test.each([
    [
      "degrees touch their number",
      'window "W" is club-path within ± 2 °',
      'window "W" is club-path within ±2°\n',
    ],
    [
      "a percent sign does not",
      "metric m is ratio { plausible between 0% and 90  % }",
      "metric m is ratio {\n  plausible between 0 % and 90 %\n}\n",
    ],
    [
      "drills and their parameters",
      'drill "D"(w:angle=3 °,n : ratio = 2){5 shots}',
      'drill "D" (w: angle = 3°, n: ratio = 2) {\n  5 shots\n}\n',
    ],
    [
      "formulas",
      "metric m is angle { formula ( face-angle-  club-path )*2 }",
      "metric m is angle {\n  formula (face-angle - club-path) * 2\n}\n",
    ],
    ["nothing between braces", "metric m is angle {\n\n}", "metric m is angle {}\n"],
  ])("%s", async (_, text, expected) => {
    expect(await laidOut(text)).toBe(expected);
  });
});

describe("blank lines", () => {
  test("set declarations and blocks with braces apart, and are at most one elsewhere", async () => {
    expect(
      await laidOut(
        'use "./a"\nuse "./b"\nclub one-iron\n\n\n\nclub two-iron\nplan "A" {\n\n  intent "x"\n\n\n  time 5 min\n  block "B" {\n    3 shots\n\n  }\n  block "C" {\n    3 shots\n  }\n\n}\nplan "B" {\n}',
      ),
    ).toBe(
      'use "./a"\nuse "./b"\nclub one-iron\n\nclub two-iron\n\nplan "A" {\n  intent "x"\n\n  time 5 min\n\n  block "B" {\n    3 shots\n  }\n\n  block "C" {\n    3 shots\n  }\n}\n\nplan "B" {}\n',
    );
  });

  test("a comment in front of a declaration stays with it", async () => {
    expect(await laidOut('club one-iron\n// About B.\n/** B. */\nplan "B" {\n  intent "x"\n}\n')).toBe(
      'club one-iron\n\n// About B.\n/** B. */\nplan "B" {\n  intent "x"\n}\n',
    );
  });
});

describe("comments", () => {
  test("stay where they are: behind a statement, on a line of their own, in the middle", async () => {
    expect(
      await laidOut(
        'plan "A" { // first   \n/* own */\n  time /* about */ 5 min// behind\n   // last\n}\n// end',
      ),
    ).toBe('plan "A" { // first\n  /* own */\n  time /* about */ 5 min // behind\n  // last\n}\n// end\n');
  });

  test("long ones move with what they are about", async () => {
    expect(await laidOut('plan "A" {\n/**\n      * One.\n  *\n* Two.  \n*/\ntime 5 min }')).toBe(
      'plan "A" {\n  /**\n   * One.\n   *\n   * Two.\n   */\n  time 5 min\n}\n',
    );
  });
});

test("lists that are too wide go on in the next line, behind a comma", async () => {
  const metrics = "club-path, face-angle, attack-angle, start-direction, carry, offline, curve, spin-rate";
  expect(await laidOut(`plan "A" {\n  needs ${metrics}, spin-axis, ball-speed\n}`)).toBe(
    `plan "A" {\n  needs ${metrics},\n      spin-axis, ball-speed\n}\n`,
  );
});

test("line ends stay as they are, the last line has one", async () => {
  expect(await laidOut('plan "A" {\r\ntime 5 min\r\n\r\n\r\n}')).toBe('plan "A" {\r\n  time 5 min\r\n}\r\n');
  expect(await laidOut("")).toBe("");
  expect(await laidOut("\n\n")).toBe("");
});

describe("beside a mistake", () => {
  test("what can be read is laid out, and what cannot stays", async () => {
    expect(
      await laidOut(
        'plan "A" {\n  time   5   min\n  cue at   least\n  block "B" test {\n  10   shots\n  }\n}',
      ),
    ).toBe('plan "A" {\n  time 5 min\n  cue at   least\n  block "B" test {\n    10 shots\n  }\n}\n');
  });
});

const checks = Object.values(CHECKS as Readonly<Record<string, Check>>);
const sound = [
  ...checks.map(({ silent, files = {} }) => ({ name: undefined, text: silent, files })),
  ...["curricula", "library", "plans", "sessions"].flatMap((folder) =>
    readdirSync(new URL(`../../examples/${folder}/`, import.meta.url)).map((name) => ({
      name,
      text: readFileSync(new URL(`../../examples/${folder}/${name}`, import.meta.url), "utf8"),
      files: {},
    })),
  ),
];

describe("whatever the text", () => {
  test("a layout changes white space only, keeps every comment, and is its own layout", async () => {
    await fc.assert(
      fc.asyncProperty(untidy, async (text) => {
        const once = await laidOut(text);
        expect(tokensOf(once)).toEqual(tokensOf(text));
        expect(commentsOf(once)).toEqual(commentsOf(text));
        expect(await laidOut(once)).toBe(once);
      }),
      { numRuns: 300 },
    );
  });

  test("programs from the grammar are read without a mistake", async () => {
    await fc.assert(
      fc.asyncProperty(program, async (pieces) => {
        const errors = await withChecked(
          pieces.join(" "),
          {},
          ({ document }) => document.parseResult.parserErrors,
        );
        expect(errors.map(({ message }) => message)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test("random edits leave a text whose layout changes white space only", async () => {
    const bits = ["", "{", "}", '"', "//", "/*", "\n", " ", "at least", "7", "°", "block"];
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...sound.map(({ text }) => text)),
        fc.array(fc.tuple(fc.nat(), fc.nat(8), fc.constantFrom(...bits)), { minLength: 1, maxLength: 4 }),
        async (text, changes) => {
          let broken = text;
          for (const [at, length, bit] of changes) {
            const from = at % (broken.length + 1);
            broken = broken.slice(0, from) + bit + broken.slice(from + length);
          }
          const once = await laidOut(broken);
          expect(tokensOf(once)).toEqual(tokensOf(broken));
          expect(commentsOf(once)).toEqual(commentsOf(broken));
        },
      ),
      { numRuns: 300 },
    );
  });

  test("a layout means the same plan", async () => {
    const model = (text: string, files: Readonly<Record<string, string>>) =>
      withChecked(text, files, ({ document, found }) => {
        if (found.some(({ severity }) => severity === "error")) return undefined;
        const lowered = new Lowering(services, () => "").document(document);
        return JSON.stringify(lowered, (key, value) => (key === "location" ? undefined : value));
      });
    let compared = 0;
    for (const { text, files } of sound) {
      const squeezed = text.replace(/(\/\/[^\n]*\n)|\n+ */g, (_, comment) => comment ?? "  \n");
      const before = await model(text, files);
      if (before === undefined) continue;
      compared++;
      expect(await model(await laidOut(squeezed), files)).toBe(before);
    }
    expect(compared).toBeGreaterThan(30);
  });
});

test.each(sound.filter(({ name }) => name !== undefined))(
  "the example $name is laid out already",
  async ({ text }) => {
    expect(await laidOut(text)).toBe(text);
  },
);
