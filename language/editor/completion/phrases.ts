/** Words of the grammar as they are offered: those that always stand together as one. */

import { type AstNode, AstUtils, GrammarAST, GrammarUtils } from "langium";
import { type CompletionItem, CompletionItemKind } from "vscode-languageserver";
import { ordinalEnding } from "../../../shared/plural.ts";
import { keywordDocumentation } from "../descriptions/keyword.ts";
import { NOTHING, type Offers, type Place, RANK, sortText, wordEdit } from "./place.ts";

type Element = GrammarAST.AbstractElement;

/** The phrases that can stand at a place, in the order of the grammar. */
export function phrasesAt(place: Place): Offers {
  if (place.token.quotes !== "none") return NOTHING;
  const items = new Map<string, CompletionItem>();
  for (const [index, expectation] of place.expected.entries()) {
    if (!GrammarAST.isKeyword(expectation) || isAlsoAName(expectation)) continue;
    if (isSingular(expectation) && !/\b1\s*$/.test(place.statement)) continue;
    if (isOrdinal(expectation) && expectation.value !== ordinalOf(place.statement)) continue;
    const documentation = keywordDocumentation(expectation);
    for (const phrase of phrasesFrom(expectation)) {
      if (items.has(phrase) || !place.matches(phrase)) continue;
      items.set(phrase, {
        label: phrase,
        kind: CompletionItemKind.Keyword,
        textEdit: wordEdit(place, phrase),
        sortText: sortText(RANK.phrases, index),
        ...(documentation === undefined ? {} : { documentation: { kind: "markdown", value: documentation } }),
      });
    }
  }
  return { items: [...items.values()], isIncomplete: false };
}

/** Whether the grammar has the word in the plural as well: `shot` of `shots`. */
function isSingular(keyword: GrammarAST.Keyword): boolean {
  const choice: AstNode = keyword.$container;
  if (!GrammarAST.isAlternatives(choice)) return false;
  return choice.elements.some((other) => GrammarAST.isKeyword(other) && other.value === `${keyword.value}s`);
}

/** The endings of `21st`, `22nd`, `23rd` and `90th`. */
const ORDINALS: ReadonlySet<string> = new Set([1, 2, 3, 4].map(ordinalEnding));

function isOrdinal({ value }: GrammarAST.Keyword): boolean {
  return ORDINALS.has(value);
}

/** The ending of the number with which a statement ends so far. */
function ordinalOf(statement: string): string | undefined {
  const number = /(\d+)\s*$/.exec(statement)?.[1];
  return number && ordinalEnding(Number(number));
}

/** Keywords that the grammar lets stand where any name can: nobody looks for `effort` when naming something. */
function isAlsoAName(keyword: GrammarAST.Keyword): boolean {
  const rule = AstUtils.getContainerOfType(keyword, GrammarAST.isParserRule);
  if (rule === undefined || !GrammarUtils.isDataTypeRule(rule)) return false;
  return AstUtils.streamAst(rule).some(GrammarAST.isRuleCall);
}

/**
 * The phrases that begin with a keyword: `in a row`, `leave out shots where`; of a choice between two both, `at least`
 * and `at most`. Empty for punctuation.
 */
export function phrasesFrom(keyword: GrammarAST.Keyword): readonly string[] {
  let phrases = [keyword.value];
  for (let at = nextOf(keyword); at !== undefined; at = nextOf(at)) {
    const words = wordsOf(at);
    if (words.length === 0) break;
    phrases = phrases.flatMap((phrase) => words.map((word) => `${phrase} ${word}`));
    if (words.length > 1) break;
  }
  return phrases.filter((phrase) => /^\p{L}|^%/u.test(phrase));
}

/** What must follow an element in its group. */
function nextOf(element: Element): Element | undefined {
  const member = memberOf(element);
  const group = member?.$container;
  if (member === undefined || !GrammarAST.isGroup(group)) return undefined;
  const next = group.elements[group.elements.indexOf(member) + 1];
  return next?.cardinality === undefined ? next : undefined;
}

/** The element, or the choice or assignment around it, that is a member of a group; undefined where it may repeat. */
function memberOf(element: Element): Element | undefined {
  let at: AstNode | undefined = element;
  while (at !== undefined && GrammarAST.isAbstractElement(at) && (at.cardinality ?? "?") === "?") {
    if (GrammarAST.isGroup(at.$container)) return at;
    at = at.$container;
  }
  return undefined;
}

/** The one or two words that an element consists of; empty where it is anything else. */
function wordsOf(element: Element): string[] {
  if (GrammarAST.isKeyword(element)) return /\p{L}/u.test(element.value) ? [element.value] : [];
  if (GrammarAST.isAssignment(element)) return wordsOf(element.terminal);
  if (!GrammarAST.isAlternatives(element) || element.elements.length > 2) return [];
  const words = element.elements.map(wordsOf);
  return words.every(({ length }) => length > 0) ? words.flat() : [];
}
