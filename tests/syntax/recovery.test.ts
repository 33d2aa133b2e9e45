import { readdirSync, readFileSync } from "node:fs";
import { AstUtils } from "langium";
import { describe, expect, test } from "vitest";
import {
  isBlockStatement,
  isCriterion,
  isCurriculumStatement,
  isCurriculumStepStatement,
  isFindingStatement,
  isInstrumentStatement,
  isMetricStatement,
  isNextStep,
  isPlanStatement,
  isPlayerStatement,
  isSessionStatement,
  isSourceStatement,
  isWindowVariant,
} from "../../language/generated/tree/ast.ts";
import { syntaxErrors } from "../../language/syntax/syntax-errors.ts";
import { check, services } from "../checks/checked-files.ts";
import { EVERY_CONSTRUCT } from "./every-construct.ts";

const examples = new URL("../../examples/", import.meta.url);
const files = ["plans", "sessions", "library"].flatMap((folder) =>
  readdirSync(new URL(folder, examples)).map((name): [string, string] => [
    `${folder}/${name}`,
    readFileSync(new URL(`${folder}/${name}`, examples), "utf8"),
  ]),
);
files.push(["every construct", EVERY_CONSTRUCT]);

const STATEMENTS = [
  isBlockStatement,
  isCriterion,
  isCurriculumStatement,
  isCurriculumStepStatement,
  isFindingStatement,
  isInstrumentStatement,
  isMetricStatement,
  isNextStep,
  isPlanStatement,
  isPlayerStatement,
  isSessionStatement,
  isSourceStatement,
  isWindowVariant,
];

const parse = (text: string) => services.parser.LangiumParser.parse(text);

/** The statements that hold no others, each with its line. */
function statementsOf(text: string): string[] {
  return AstUtils.streamAst(parse(text).value)
    .filter((node) => STATEMENTS.some((is) => is(node)))
    .map(({ $cstNode: cst }) => `${cst?.range.start.line}: ${cst?.text}`)
    .filter((statement) => !statement.includes("{"))
    .toArray();
}

test("every construct can be read", () => {
  expect(syntaxErrors(parse(EVERY_CONSTRUCT))).toEqual([]);
});

describe.each(files)("%s", (_, text) => {
  test("a statement that cannot be read takes no other with it", () => {
    const whole = statementsOf(text);
    const lines = text.split("\n");
    for (const [index, line] of lines.entries()) {
      const others = whole.filter((statement) => !statement.startsWith(`${index}:`));
      if (others.length === whole.length) continue;
      const broken = lines.with(index, line.replace(/\S+/, "xyzzy")).join("\n");
      // What the broken line itself is read as may be a statement too: one of a name that nobody knows.
      const read = statementsOf(broken).filter((statement) => !statement.startsWith(`${index}:`));
      expect(read, `without line ${index + 1}: ${line}`).toEqual(others);
    }
  });

  test("a word that is missing or misspelt is one mistake", () => {
    for (const { startOffset, image } of services.parser.Lexer.tokenize(text).tokens) {
      const before = text.slice(0, startOffset);
      const after = text.slice(startOffset + image.length);
      for (const slip of ["", `${image}q`]) {
        const errors = syntaxErrors(parse(before + slip + after));
        // The lines of a block whose { is missing are in the wrong place, which is said where it starts again.
        const most = image === "{" ? 3 : 1;
        expect(errors.length, `${JSON.stringify(image)} as ${JSON.stringify(slip)}`).toBeLessThanOrEqual(
          most,
        );
      }
    }
  });
});

test("mistakes in other blocks are reported too", async () => {
  const found = await check(`
plan "Gate" {
  block "One" {
    10 shots
    tagret carry at least 150 yd
    success at least 12 of 10 shots with carry at least 150 yd
  }
  block "Two" test {
    10 shots
    success at least 12 of 10 shots with carry at least 150 yd
  }
}

player "P-1" {
  right-handed
  left-handed
}`);
  expect(found.map(({ code, range }) => `${range.start.line + 1} ${code}`)).toEqual([
    "5 syntax",
    "10 hits-must-not-exceed-shots",
    "16 statement-must-be-stated-once",
  ]);
});

test("a mistake between the blocks of a plan leaves them to be checked", async () => {
  const found = await check(`
plan "Gate" {
  tiem 40 min
  block "One" {
    10 shots
    success at least 12 of 10 shots with carry at least 150 yd
  }
}`);
  expect(found.map(({ code }) => code)).toEqual(["syntax", "hits-must-not-exceed-shots"]);
});
