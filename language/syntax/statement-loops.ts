/**
 * Where the grammar has one statement after another: between the braces of a declaration or block, and in a file as a
 * whole. Read from the grammar, so that what is added there is known here.
 */
import { type AstNode, AstUtils, type Grammar, GrammarAST } from "langium";

/** One statement after another, up to a closing brace or the end of the file. */
export interface StatementLoop {
  /** The word that opens it, such as `block`; undefined for a file. */
  readonly opener: string | undefined;
  /** The rules of its statements. */
  readonly items: ReadonlySet<string>;
  /** The keywords and terminals that one of its statements can start with. */
  readonly starters: ReadonlySet<string>;
}

/** The loops by the name of the rule they stand in. */
export type StatementLoops = ReadonlyMap<string, StatementLoop>;

export function statementLoopsOf(grammar: Grammar): StatementLoops {
  const loops = new Map<string, StatementLoop>();
  for (const rule of grammar.rules.filter(GrammarAST.isParserRule)) {
    const items = itemsOf(rule);
    if (items.length === 0) continue;
    loops.set(rule.name, {
      opener: rule.entry ? undefined : [...firstOf(rule.definition).words][0],
      items: new Set(items.map(({ name }) => name)),
      starters: new Set(items.flatMap((item) => [...firstOf(item.definition).words])),
    });
  }
  return loops;
}

/** The keywords that a rule itself writes down, and those of the words it chooses from. */
export function keywordsOf(grammar: Grammar): ReadonlyMap<string, readonly string[]> {
  return new Map(
    grammar.rules.filter(GrammarAST.isParserRule).map((rule) => [rule.name, [...ownKeywords(rule)]]),
  );
}

function ownKeywords(rule: GrammarAST.ParserRule): Set<string> {
  const words = new Set<string>();
  for (const element of AstUtils.streamAllContents(rule)) {
    if (GrammarAST.isKeyword(element)) words.add(element.value);
    else if (GrammarAST.isRuleCall(element)) {
      const called = element.rule.ref;
      const chooses = GrammarAST.isParserRule(called) && called.dataType !== undefined;
      if (chooses) for (const word of ownKeywords(called)) words.add(word);
    }
  }
  return words;
}

/** The rules repeated before the closing brace of a rule, or over a whole file. */
function itemsOf(rule: GrammarAST.ParserRule): GrammarAST.ParserRule[] {
  const repeated = AstUtils.streamAst(rule.definition)
    .filter(GrammarAST.isAbstractElement)
    .find((element) => element.cardinality === "*" && (isBeforeBrace(element) || isWholeFile(element, rule)));
  if (repeated === undefined) return [];
  return AstUtils.streamAst(repeated)
    .filter(GrammarAST.isRuleCall)
    .map((call) => call.rule.ref)
    .filter(GrammarAST.isParserRule)
    .toArray();
}

function isBeforeBrace(element: GrammarAST.AbstractElement): boolean {
  const group = element.$container;
  if (!GrammarAST.isGroup(group)) return false;
  const next = group.elements[group.elements.indexOf(element) + 1];
  return GrammarAST.isKeyword(next) && next.value === "}";
}

function isWholeFile(element: GrammarAST.AbstractElement, rule: GrammarAST.ParserRule): boolean {
  return rule.entry && element === rule.definition;
}

/** What an element can start with, and whether it can be empty. */
interface First {
  readonly words: ReadonlySet<string>;
  readonly optional: boolean;
}

function firstOf(element: AstNode | undefined): First {
  const first = firstOfElement(element);
  const cardinality = GrammarAST.isAbstractElement(element) ? element.cardinality : undefined;
  return cardinality === "?" || cardinality === "*" ? { ...first, optional: true } : first;
}

function firstOfElement(element: AstNode | undefined): First {
  if (GrammarAST.isKeyword(element)) return { words: new Set([element.value]), optional: false };
  if (GrammarAST.isAssignment(element)) return firstOf(element.terminal);
  if (GrammarAST.isCrossReference(element)) return firstOf(element.terminal);
  if (GrammarAST.isRuleCall(element)) return firstOfRule(element.rule.ref);
  if (GrammarAST.isAlternatives(element)) {
    const all = element.elements.map(firstOf);
    return {
      words: new Set(all.flatMap(({ words }) => [...words])),
      optional: all.some(({ optional }) => optional),
    };
  }
  if (GrammarAST.isGroup(element)) {
    const words = new Set<string>();
    for (const part of element.elements) {
      const first = firstOf(part);
      for (const word of first.words) words.add(word);
      if (!first.optional) return { words, optional: false };
    }
    return { words, optional: true };
  }
  return { words: new Set(), optional: true };
}

function firstOfRule(rule: GrammarAST.AbstractRule | undefined): First {
  if (GrammarAST.isParserRule(rule)) return firstOf(rule.definition);
  if (GrammarAST.isInfixRule(rule)) return firstOf(rule.call);
  return { words: new Set(rule === undefined ? [] : [rule.name]), optional: false };
}
