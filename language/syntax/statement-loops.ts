/**
 * Where the grammar has one statement after another: between the braces of a declaration or block, and in a file as a
 * whole. Read from the grammar, so that what is added there is known here.
 */
import { type AstNode, type Grammar, GrammarAST } from "langium";
import { code, withArticle } from "../checks/wording.ts";
import { walk } from "./walk.ts";

/** One statement after another, up to a closing brace or the end of the file. */
export interface StatementLoop {
  /** The words that open it, such as `block`; of a group there are several, of a file none. */
  readonly openers: readonly string[];
  /** The rules that are repeated. */
  readonly items: ReadonlySet<string>;
  /** The rules of its statements, where those above only choose from them, each with what it can start with. */
  readonly forms: ReadonlyMap<string, ReadonlySet<string>>;
  /** The keywords and terminals that one of its statements can start with. */
  readonly starters: ReadonlySet<string>;
  /** Those of them by which a line is known to start one: all but names, with which a line can also go on. */
  readonly anchors: ReadonlySet<string>;
}

/** Whether the statements stand outside all braces. */
export function isFile({ openers }: StatementLoop): boolean {
  return openers.length === 0;
}

/** Where they stand, for a message. */
export function placeOf({ openers }: StatementLoop): string {
  const [opener, ...others] = openers;
  if (opener === undefined) return "outside all braces";
  return others.length === 0 ? `in ${withArticle(opener, code(opener))}` : "in a group";
}

/** The loops by the name of the rule they stand in. */
export type StatementLoops = ReadonlyMap<string, StatementLoop>;

export function statementLoopsOf(grammar: Grammar): StatementLoops {
  const loops = new Map<string, StatementLoop>();
  const names = namesOf(grammar);
  for (const rule of grammar.rules.filter(GrammarAST.isParserRule)) {
    const items = itemsOf(rule);
    if (items.length === 0) continue;
    const forms = new Map(items.flatMap(formsOf).map((form) => [form.name, firstOf(form.definition).words]));
    const starters = new Set([...forms.values()].flatMap((words) => [...words]));
    loops.set(rule.name, {
      openers: rule.entry
        ? []
        : [...firstOf(rule.definition).words].filter((word) => /^[a-z]/.test(word) && !names.has(word)),
      items: new Set(items.map(({ name }) => name)),
      forms,
      starters,
      anchors: new Set([...starters].filter((name) => !names.has(name))),
    });
  }
  return loops;
}

/** The rule of names: a terminal, and words of the grammar that can be names as well. */
const NAME_RULE = "Word";

/** The keywords and terminals that can be a name. */
export function namesOf(grammar: Grammar): ReadonlySet<string> {
  return firstOf(
    grammar.rules.filter(GrammarAST.isParserRule).find(({ name }) => name === NAME_RULE)?.definition,
  ).words;
}

/** What a rule writes down. */
export interface RuleWords {
  /** Its keywords, and those of the words it chooses from. */
  readonly own: readonly string[];
  /** The rules it calls. */
  readonly calls: readonly string[];
}

export function ruleWordsOf(grammar: Grammar): ReadonlyMap<string, RuleWords> {
  return new Map(
    grammar.rules.filter(GrammarAST.isParserRule).map((rule) => {
      const calls = rulesCalledBy(rule);
      return [rule.name, { own: [...ownKeywords(rule)], calls: calls.map(({ name }) => name) }];
    }),
  );
}

/** The keywords that can stand in a statement. Linear in the grammar; asked where there is a mistake to explain. */
export function keywordsWithin(rules: ReadonlyMap<string, RuleWords>, rule: string): readonly string[] {
  const seen = new Set([rule]);
  for (const name of seen) for (const called of rules.get(name)?.calls ?? []) seen.add(called);
  return [...seen].flatMap((name) => rules.get(name)?.own ?? []);
}

function ownKeywords(rule: GrammarAST.ParserRule): Set<string> {
  const words = new Set<string>();
  walk(rule, (element) => {
    if (GrammarAST.isKeyword(element)) words.add(element.value);
  });
  for (const called of rulesCalledBy(rule)) {
    if (called.dataType !== undefined) for (const word of ownKeywords(called)) words.add(word);
  }
  return words;
}

function rulesCalledBy(rule: AstNode): GrammarAST.ParserRule[] {
  const called: GrammarAST.ParserRule[] = [];
  walk(rule, (element) => {
    if (GrammarAST.isRuleCall(element) && GrammarAST.isParserRule(element.rule.ref)) {
      called.push(element.rule.ref);
    }
  });
  return called;
}

/** The rules repeated before the closing brace of a rule, or over a whole file. */
function itemsOf(rule: GrammarAST.ParserRule): GrammarAST.ParserRule[] {
  let repeated: AstNode | undefined;
  walk(rule.definition, (element) => {
    if (repeated !== undefined || !GrammarAST.isAbstractElement(element) || element.cardinality !== "*")
      return;
    if (isBeforeBrace(element) || isWholeFile(element, rule)) repeated = element;
  });
  return repeated === undefined ? [] : rulesCalledBy(repeated);
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

/** The rules that a rule chooses from, where it does nothing else. */
function formsOf(rule: GrammarAST.ParserRule): GrammarAST.ParserRule[] {
  const { definition } = rule;
  const choices = GrammarAST.isAlternatives(definition) ? definition.elements : [];
  const called = choices.filter(GrammarAST.isRuleCall).map((call) => call.rule.ref);
  const rules = called.filter(GrammarAST.isParserRule);
  return rules.length === 0 || rules.length < choices.length ? [rule] : rules.flatMap(formsOf);
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
