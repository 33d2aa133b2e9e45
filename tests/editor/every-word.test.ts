/**
 * Whoever types a plan or session from the first word to the last is offered every word when its turn comes: what can
 * be meant at each place, and only units of the dimension that is spoken of.
 */
import { readdirSync, readFileSync } from "node:fs";
import { AstUtils, type CstNode, CstUtils, GrammarAST, GrammarUtils, type LangiumDocument } from "langium";
import { describe, expect, test } from "vitest";
import { CompletionItemKind } from "vscode-languageserver";
import {
  isQuantity,
  isShownIn,
  isUnitName,
  type Metric,
  type UnitName,
} from "../../language/generated/tree/ast.ts";
import { DrillwrightGrammar } from "../../language/generated/tree/grammar.ts";
import { mayBeShare } from "../../language/types/amounts.ts";
import { metricAt } from "../../language/types/directions.ts";
import { openEditor, type TestEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";
import { LISTS } from "./lists.ts";

const EXAMPLES = new URL("../../examples/", import.meta.url);

interface Word {
  readonly offset: number;
  readonly text: string;
  readonly cst: CstNode;
}

/** The words that can be offered: those of the language and those that refer to something. */
function wordsOf(document: LangiumDocument): Word[] {
  const root = document.parseResult.value.$cstNode;
  if (root === undefined) return [];
  return CstUtils.flattenCst(root)
    .filter(({ hidden, text }) => !hidden && /[\p{L}°%]/u.test(text))
    .filter((leaf) => GrammarAST.isKeyword(leaf.grammarSource) || isReference(leaf))
    .map((leaf) => ({ offset: leaf.offset, text: leaf.text, cst: leaf }))
    .toArray();
}

function isReference(leaf: CstNode): boolean {
  const assignment = GrammarUtils.findAssignment(leaf);
  return GrammarAST.isCrossReference(assignment?.terminal);
}

function named(text: string): string {
  return text.startsWith('"') ? text.slice(1, -1).replace(/\\(.)/g, "$1") : text;
}

/** Offers are phrases: `least` is met by `least`, `at` by `at least`, `leave` by `leave out shots where`. */
async function isOffered(editor: TestEditor, word: string): Promise<boolean> {
  const offers = await editor.offers();
  return offers.some((offer) => offer === named(word) || offer.split(" ")[0] === word);
}

function examples(): Record<string, string> {
  const paths = readdirSync(EXAMPLES, { recursive: true, encoding: "utf8" }).filter((path) =>
    path.endsWith(".drill"),
  );
  return Object.fromEntries(
    paths.map((path) => [path.replaceAll("\\", "/"), readFileSync(new URL(path, EXAMPLES), "utf8")]),
  );
}

describe("every word of a finished text is offered where it stands", () => {
  const files = { ...examples(), ...SAMPLE };
  test.each(Object.keys(files).filter((path) => path.endsWith(".drill")))("%s", async (path) => {
    const editor = await openEditor(files);
    const words = wordsOf(editor.file(path));
    expect(words.length).toBeGreaterThan(3);
    const missing: string[] = [];
    for (const { offset, text } of words) {
      if (!(await isOffered(editor.at(path, offset), text))) missing.push(`${offset}: ${text}`);
    }
    expect(missing).toEqual([]);
  });
});

describe("every word is offered while a text is typed: nothing stands behind it", () => {
  test.each(Object.keys(SAMPLE).filter((path) => path.endsWith(".drill")))("%s", async (path) => {
    const text = SAMPLE[path] as string;
    const whole = await openEditor(SAMPLE);
    const missing: string[] = [];
    for (const word of wordsOf(whole.file(path))) {
      const isText = word.text.startsWith('"');
      // The word itself has been begun with its first letter, a text with its quotation mark.
      for (const begun of [0, isText || /^\p{L}{2}/u.test(word.text) ? 1 : 0]) {
        const typed = `${text.slice(0, word.offset + begun)}<|>`;
        const editor = await openEditor({ ...SAMPLE, [path]: typed });
        if (!(await isOffered(editor, word.text))) missing.push(`${typed.slice(-30)} … ${word.text}`);
      }
    }
    expect(missing).toEqual([]);
  });
});

describe("every word of a list is offered where it goes on in the next line", () => {
  const files = Object.fromEntries(Object.entries(LISTS).map(([path, text]) => [path, wrapped(text)]));

  test("there is one of every list of the grammar", async () => {
    const editor = await openEditor(files);
    const written = Object.keys(files).flatMap((path) => {
      const root = editor.file(path).parseResult.value.$cstNode;
      return root === undefined
        ? []
        : CstUtils.flattenCst(root)
            .map(({ grammarSource }) => grammarSource)
            .toArray();
    });
    const lists = AstUtils.streamAst(DrillwrightGrammar())
      .filter(GrammarAST.isKeyword)
      .filter(({ value }) => value === ",")
      .toArray();
    expect(lists.length).toBeGreaterThan(10);
    const lacking = lists.filter((comma) => !written.includes(comma));
    expect(lacking.map((comma) => AstUtils.getContainerOfType(comma, GrammarAST.isParserRule)?.name)).toEqual(
      [],
    );
  });

  test.each(Object.keys(files))("%s, finished", async (path) => {
    const editor = await openEditor(files);
    expect(editor.file(path).parseResult.parserErrors).toEqual([]);
    const missing: string[] = [];
    for (const { offset, text } of wordsOf(editor.file(path))) {
      if (!(await isOffered(editor.at(path, offset), text))) missing.push(`${offset}: ${text}`);
    }
    expect(missing).toEqual([]);
  });

  test.each(Object.keys(files))("%s, while it is typed", async (path) => {
    const text = files[path] as string;
    const whole = await openEditor(files);
    const missing: string[] = [];
    for (const word of wordsOf(whole.file(path))) {
      const typed = `${text.slice(0, word.offset)}<|>`;
      const editor = await openEditor({ ...files, [path]: typed });
      if (!(await isOffered(editor, word.text))) missing.push(`${typed.slice(-30)} … ${word.text}`);
    }
    expect(missing).toEqual([]);
  });
});

/** Broken behind every comma, as the layout does where a line is too wide. */
function wrapped(text: string): string {
  return text
    .split(/("(?:\\.|[^"\\\r\n])*"|\/\/.*|\/\*[\s\S]*?\*\/)/)
    .map((part, index) => (index % 2 === 0 ? part.replace(/, /g, ",\n      ") : part))
    .join("");
}

test("where a unit stands, only units of that metric's dimension are offered, and the usual one first", async () => {
  const files = { ...examples(), ...SAMPLE };
  const editor = await openEditor(files);
  let places = 0;
  for (const path of Object.keys(files).filter((name) => name.endsWith(".drill"))) {
    for (const { offset, cst } of wordsOf(editor.file(path))) {
      const metric = isUnitPlace(cst) ? metricAt(cst.astNode) : undefined;
      if (metric === undefined || cst.astNode.$container?.$type === "QuantityOperand") continue;
      places++;
      const { items } = await editor.at(path, offset).completion();
      const units = items
        .filter(({ kind }) => kind === CompletionItemKind.Unit)
        .toSorted((a, b) => ((a.sortText ?? "") < (b.sortText ?? "") ? -1 : 1))
        .map(({ label }) => label);
      const shown = metric.statements.find(isShownIn)?.unit?.ref;
      if (shown !== undefined) expect(units[0], `${path} ${offset}`).toBe(shown.name);
      const share = isQuantity(cst.astNode) && mayBeShare(cst.astNode) ? ["%"] : [];
      expect(new Set(units), `${path} ${offset}`).toEqual(new Set([...unitsOf(metric), ...share]));
    }
  }
  expect(places).toBeGreaterThan(50);
});

function isUnitPlace(cst: CstNode): boolean {
  return (
    GrammarUtils.findAssignment(cst)?.feature === "unit" && (isQuantity(cst.astNode) || isReference(cst))
  );
}

function unitsOf(metric: Metric): string[] {
  const units = metric.dimension?.ref?.units ?? [];
  return units
    .flatMap(({ names: [first] }): UnitName[] => (isUnitName(first) ? [first] : []))
    .map(({ name }) => name);
}
