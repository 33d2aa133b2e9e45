/** The reader that is written from the grammar reads every text as the framework's parser does, or leaves it to that. */
import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { type AstNode, type CstNode, GrammarAST, GrammarUtils, isAstNode, isReference } from "langium";
import { describe, expect, test } from "vitest";
import { PART_PROPERTIES } from "../../language/generated/part-properties.ts";
import type { PlaceOfNode } from "../../language/syntax/reader/places.ts";
import { readText } from "../../language/syntax/reader/read-text.ts";
import { createRecoveringParser } from "../../language/syntax/recovering-parser.ts";
import { nameOf, type TokenType } from "../../language/syntax/tokens.ts";
import { services } from "../checks/checked-files.ts";
import { untidy } from "../support/programs.ts";
import { EVERY_CONSTRUCT } from "./every-construct.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const files = globSync("{examples,language/library}/**/*.drill", { cwd: root });
const texts = new Map(files.map((path) => [path, readFileSync(`${root}/${path}`, "utf8")]));
texts.set("every construct", EVERY_CONSTRUCT);

const parser = createRecoveringParser(services);
const read = (text: string) => readText(text, services.references.Linker, () => services.Grammar);

/** Expects the tree of the parser, or none where that found a mistake. */
function expectSameTree(text: string): void {
  const { value, parserErrors } = parser.parse(text);
  const own = read(text);
  expect(own === undefined).toBe(parserErrors.length > 0);
  if (own === undefined) return;
  expect(factsOf(own)).toEqual(factsOf(value));
  expect(placesOf(own.$cstNode)).toEqual(placesOf(value.$cstNode));
}

const PROPERTIES = [...new Set(PART_PROPERTIES)].filter((property) => property !== "");

/** A node with what it holds, what holds it and where it stands; of a property without a value nothing. */
function factsOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(factsOf);
  if (isReference(value)) return { says: value.$refText, at: "$refNode" in value && placeOf(value.$refNode) };
  if (!isAstNode(value)) return value;
  const held = Object.entries(value).filter(([name, of]) => !name.startsWith("$") && of !== undefined);
  const { $container, $containerProperty, $containerIndex, $cstNode, $type } = value;
  return {
    $type,
    around: [$container?.$type, $containerProperty, $containerIndex],
    at: placeOf($cstNode),
    isItsPlace: $cstNode?.astNode === value,
    placesOfProperties: PROPERTIES.map((name) => placesOfProperty(value, name).map(placeOf)),
    held: held.map(([name, of]) => [name, factsOf(of)]).sort(),
  };
}

function placesOfProperty({ $cstNode }: AstNode, name: string): CstNode[] {
  return ($cstNode as PlaceOfNode).placesOf?.(name) ?? GrammarUtils.findNodesForProperty($cstNode, name);
}

function placeOf(place: CstNode | undefined): unknown {
  return place && [place.offset, place.length, place.end, place.range];
}

/** A place with all that stands within it. */
function placesOf(place: CstNode | undefined): unknown {
  if (place === undefined) return undefined;
  const { tokenType, content } = place as { tokenType?: TokenType; content?: CstNode[] };
  for (const part of content ?? []) expect(part.container).toBe(place);
  return {
    at: placeOf(place),
    text: place.text,
    hidden: place.hidden,
    token: tokenType && nameOf(tokenType),
    readBy: partOf(place.grammarSource),
    node: content && place.astNode.$type,
    within: content?.map(placesOf),
  };
}

function partOf(part: GrammarAST.AbstractElement | undefined): unknown {
  if (part === undefined) return undefined;
  if (GrammarAST.isAssignment(part)) return part.feature; // made up for a chain of operators
  return `${part.$type} ${part.$cstNode?.text} in ${part.$container?.$type}`;
}

describe("the tree is the parser's", () => {
  test.each([...texts])("%s", (_, text) => {
    expect(read(text)).toBeDefined();
    expectSameTree(text);
  });

  test.each([
    ["nothing", ""],
    ["comments alone", "// a\n/* b */"],
    ["comments between all words", '/*0*/ plan /*1*/ "A" /*2*/ { /*3*/ time /*4*/ 40 /*5*/ min /*6*/ } // 7'],
    [
      "a name on a new line",
      "metric mine is one of low, high {\n  low where carry below 3\n  high where carry above 3\n}",
    ],
    ["all line ends", 'plan "A"\r\n{\r  time\n40 min }'],
    ["operators of two levels", "metric mine is length {\n formula 1 - 2 * 3 / 4 + (5 - 6) - 7\n}"],
    [
      "names that begin with words of the language",
      "metric shots-taken is plan-two\nmetric in-play is at-rest",
    ],
    ["a word of the language as a name", "metric effort is one of effort, in-to-out"],
    ["a mark at the start of the file", '\uFEFFplan "A" {}'],
  ])("%s", (_, text) => {
    expect(read(text)).toBeDefined();
    expectSameTree(text);
  });

  test("programs of the grammar", () => {
    fc.assert(fc.property(untidy, expectSameTree), { numRuns: 300 });
  });
});

describe("a text with a mistake is left to the parser", () => {
  test.each([...texts])("%s with a word missing, twice or changed", (_, text) => {
    const words = [...text.matchAll(/"[^"\n]*"|[\p{L}\d-]+|\S/gu)];
    const other = fc.constantFrom("", "7", '"A"', "{", "}", "at", "/", "/*", "carry", "…", "\n");
    fc.assert(
      fc.property(fc.nat(words.length - 1), fc.boolean(), other, (index, stays, put) => {
        const { index: at = 0, 0: word = "" } = words[index] ?? {};
        expectSameTree(text.slice(0, at) + (stays ? `${word} ` : "") + put + text.slice(at + word.length));
      }),
      { numRuns: 20 },
    );
  });

  test("more than the parser takes on", () => {
    const formula = (operators: number) => `metric mine is length { formula 1${" + 1".repeat(operators)} }`;
    expect(read(formula(200))).toBeDefined();
    expect(read(formula(201))).toBeUndefined();
    const brackets = (depth: number) =>
      `metric mine is length { formula ${"(".repeat(depth)}1${")".repeat(depth)} }`;
    expect(read(brackets(50))).toBeDefined();
    expect(read(brackets(100))).toBeUndefined();
  });
});
