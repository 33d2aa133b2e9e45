/** How a plan is coloured before the server has said a word. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { grammarWords } from "../support/grammar-words.ts";
import { colour } from "../support/text-mate.ts";

const grammar = JSON.parse(
  readFileSync(new URL("../../extension/drillwright.tmLanguage.json", import.meta.url), "utf8"),
);

/** Each coloured stretch as `text: scope`, without the ending that all scopes share. */
function coloured(text: string): string[] {
  return colour(grammar, text).map(({ text, scope }) => `${text}: ${scope.replace(/\.drillwright$/, "")}`);
}

test("a declaration and its name stand out", () => {
  expect(coloured('plan "Start line" {')).toEqual([
    "plan: storage.type.declaration",
    '"Start line": string.quoted.double entity.name.section',
  ]);
  expect(coloured('club 7-iron also "7i"')).toEqual([
    "club: storage.type.declaration",
    "7-iron: entity.name.type",
    "also: keyword.operator.word",
    '"7i": string.quoted.double',
  ]);
});

test("a block tells its kind", () => {
  expect(coloured('  block "Gate" blocked {')).toContain("blocked: constant.language");
});

test("numbers, units and directions are told apart", () => {
  expect(coloured("  target club-path within 2.5° of 1° in-to-out")).toEqual([
    "target: keyword.other.statement",
    "club-path: variable.other",
    "within: keyword.operator.word",
    "2.5: constant.numeric",
    "°: keyword.other.unit",
    "of: keyword.operator.word",
    "1: constant.numeric",
    "°: keyword.other.unit",
    "in-to-out: constant.other.direction",
  ]);
});

test("a word that follows a number is a unit only where it is no word of the sentence", () => {
  expect(coloured("at least 12 of 18 shots on target")).toEqual([
    "at least: keyword.operator.word",
    "12: constant.numeric",
    "of: keyword.operator.word",
    "18: constant.numeric",
    "shots: keyword.operator.word",
    "on target: keyword.operator.word",
  ]);
  expect(coloured("3 in a row on target")[1]).toBe("in a row: keyword.operator.word");
  expect(coloured("offline below 3 in right").slice(-2)).toEqual([
    "in: keyword.other.unit",
    "right: constant.other.direction",
  ]);
  expect(coloured("at 50 % effort").slice(1)).toEqual([
    "50: constant.numeric",
    "%: keyword.other.unit",
    "effort: keyword.operator.word",
  ]);
});

test("a statement of several words is one, and only where a statement begins", () => {
  expect(coloured("leave out shots where carry below 90 yd")[0]).toBe(
    "leave out shots where: keyword.other.statement",
  );
  expect(coloured("success { at least 3 of 5 shots on target }")).not.toContain(
    "target: keyword.other.statement",
  );
});

test.each(["7-iron", "face-to-path", "target-side", "on-target", "m/s", "plans", "über-weg"])(
  "%s is one name, whatever words are in it",
  (name) => {
    expect(coloured(`needs ${name}`)).toEqual(["needs: keyword.other.statement", `${name}: variable.other`]);
  },
);

test("dates are no calculations", () => {
  expect(coloured("date 2026-09-14")).toEqual([
    "date: keyword.other.statement",
    "2026-09-14: constant.other.date",
  ]);
});

describe("comments and texts", () => {
  test("hold no words of the language", () => {
    expect(coloured('cue "plan: at least 3° // no comment"')).toEqual([
      "cue: keyword.other.statement",
      '"plan: at least 3° // no comment": string.quoted.double',
    ]);
    expect(coloured("// plan")).toEqual(["// plan: comment.line.double-slash"]);
  });

  test("a documentation comment goes on over lines, and ends", () => {
    expect(coloured("/** One\n * two\n */\nplan")).toEqual([
      "/** One * two */: comment.block.documentation",
      "plan: storage.type.declaration",
    ]);
    expect(coloured("/**/ plan")[0]).toBe("/**/: comment.block");
  });

  test("a text that was not ended does not run into the next line", () => {
    expect(coloured('cue "open\ntarget carry').slice(-2)).toEqual([
      "target: keyword.other.statement",
      "carry: variable.other",
    ]);
  });

  test("an escaped quote ends nothing", () => {
    expect(coloured('note "say \\"easy\\"" ').at(-1)).toMatch(/": string.quoted.double$/);
  });
});

test("no word of the language is taken for a name", () => {
  for (const word of grammarWords().all) {
    expect(coloured(`{ ${word} }`).filter((each) => each.includes("variable.other"))).toEqual([]);
  }
});
