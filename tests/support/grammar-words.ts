/**
 * The words of the language by the part they play, as read from the grammar: nobody lists them a second time.
 */
import { AstUtils, GrammarAST } from "langium";
import { DrillwrightGrammar } from "../../language/generated/tree/grammar.ts";

export interface GrammarWords {
  /** Words that begin something with a name, and the terminal of the name: `plan` and STRING. */
  readonly declarations: ReadonlyMap<string, string>;
  /** Words that begin a statement, in full: `cue`, `leave out shots where`. */
  readonly statements: readonly string[];
  /** Words that are one choice of a fixed set: kinds of block, of change, of separator. */
  readonly choices: readonly string[];
  /** Words that always stand together: `at least`, `in a row`. */
  readonly phrases: readonly string[];
  /** Keywords that may also be the sign of a unit. */
  readonly units: readonly string[];
  /** Every keyword made of letters. */
  readonly all: readonly string[];
}

type Element = GrammarAST.AbstractElement;

/** Criteria are sentences: the words they begin with are the words they go on with. */
const SENTENCES = "criteria";

export function grammarWords(): GrammarWords {
  const rules = DrillwrightGrammar().rules.filter(GrammarAST.isParserRule);
  const choices = choiceWords(rules);
  const isChoice = (word: string) => choices.has(word);

  const declarations = new Map<string, string>();
  for (const { definition } of rules) {
    const [start, next] = [leadingPhrase(definition, isChoice), elementsOf(definition)[1]];
    if (start !== undefined && GrammarAST.isAssignment(next) && next.feature === "name") {
      declarations.set(start, terminalOf(next.terminal));
    }
  }

  const statements = rules
    .flatMap((rule) => [...AstUtils.streamAllContents(rule).filter(GrammarAST.isAssignment)])
    .filter(({ operator, feature }) => operator === "+=" && feature !== SENTENCES)
    .flatMap(({ terminal }) => calledRules(terminal))
    .map(({ definition }) => leadingPhrase(definition, isChoice))
    .filter(
      (phrase): phrase is string => phrase !== undefined && !declarations.has(phrase) && !isChoice(phrase),
    );

  const unitSign = rules.find(({ name }) => name === "UnitSign");
  return {
    declarations,
    statements: unique(statements),
    choices: [...choices].sort(),
    phrases: unique(rules.flatMap(({ definition }) => phrases(definition, isChoice))),
    units: unitSign === undefined ? [] : keywords(unitSign),
    all: unique(rules.flatMap(keywords).filter(isWord)),
  };
}

/**
 * Words that stand nowhere but among the alternatives of one another, as in `kind=('grip' | 'motion')`. A set of which few
 * have another part to play, as `baseline` has, is one for the others.
 */
function choiceWords(rules: readonly GrammarAST.ParserRule[]): Set<string> {
  const sets = rules
    .flatMap((rule) => [...AstUtils.streamAllContents(rule).filter(GrammarAST.isAlternatives)])
    .filter(({ elements }) => elements.every((each) => GrammarAST.isKeyword(each) && isWord(each.value)))
    .map(({ elements }) => elements.filter(GrammarAST.isKeyword).map(({ value }) => value));
  const uses = rules.flatMap(keywords);
  const isElsewhere = (word: string) =>
    uses.filter((use) => use === word).length > sets.filter((set) => set.includes(word)).length;
  const isMostlyFree = (set: readonly string[]) => set.filter(isElsewhere).length * 4 < set.length;
  return new Set(sets.filter(isMostlyFree).flatMap((set) => set.filter((word) => !isElsewhere(word))));
}

/** All runs of two or more words in a row, anywhere below an element. */
function phrases(element: Element, isChoice: (word: string) => boolean): string[] {
  const found: string[] = [];
  let run: string[] = [];
  const flush = () => {
    found.push(...run.filter((phrase) => phrase.includes(" ")));
    run = [];
  };
  for (const part of GrammarAST.isGroup(element) ? element.elements : [element]) {
    if (GrammarAST.isAction(part)) continue;
    const words = wordsAt(part, isChoice);
    if (words.length === 0) {
      flush();
      found.push(...phrasesBelow(part, isChoice));
    } else {
      run = run.length === 0 ? words : run.flatMap((phrase) => words.map((word) => `${phrase} ${word}`));
    }
  }
  flush();
  return found;
}

function phrasesBelow(element: Element, isChoice: (word: string) => boolean): string[] {
  if (GrammarAST.isGroup(element)) return phrases(element, isChoice);
  if (GrammarAST.isAlternatives(element)) return element.elements.flatMap((each) => phrases(each, isChoice));
  if (GrammarAST.isAssignment(element)) return phrasesBelow(element.terminal, isChoice);
  return [];
}

/** The run of words an element begins with; undefined where it may begin with something else. */
function leadingPhrase(element: Element, isChoice: (word: string) => boolean): string | undefined {
  const words: string[] = [];
  for (const part of elementsOf(element)) {
    const [word, ...others] = wordsAt(part, isChoice);
    if (word === undefined || others.length > 0) break;
    words.push(word);
  }
  return words.length === 0 ? undefined : words.join(" ");
}

/** The words of which one must stand here; none where the element may be left out or may be something else. */
function wordsAt(element: Element, isChoice: (word: string) => boolean): string[] {
  if (element.cardinality !== undefined) return [];
  if (GrammarAST.isKeyword(element))
    return isWord(element.value) && !isChoice(element.value) ? [element.value] : [];
  if (GrammarAST.isAssignment(element)) return wordsAt(element.terminal, isChoice);
  if (GrammarAST.isAlternatives(element)) {
    const words = element.elements.map((each) => wordsAt(each, isChoice));
    return words.every(({ length }) => length > 0) ? words.flat() : [];
  }
  return [];
}

function elementsOf(element: Element): readonly Element[] {
  return GrammarAST.isGroup(element) && element.cardinality === undefined
    ? element.elements.filter((each) => !GrammarAST.isAction(each))
    : [element];
}

/** The rules an element calls, and where such a rule is nothing but a list of rules, those. */
function calledRules(element: Element): GrammarAST.ParserRule[] {
  if (GrammarAST.isAlternatives(element)) return element.elements.flatMap(calledRules);
  if (!GrammarAST.isRuleCall(element)) return [];
  const rule = element.rule.ref;
  if (!GrammarAST.isParserRule(rule)) return [];
  const parts = calledRules(rule.definition);
  return parts.length > 0 ? parts : [rule];
}

/** The terminal behind a name: STRING, or WORD for every rule that is made of words. */
function terminalOf(element: Element): string {
  const rule = GrammarAST.isRuleCall(element) ? element.rule.ref : undefined;
  return GrammarAST.isTerminalRule(rule) ? rule.name : "WORD";
}

function keywords(rule: GrammarAST.ParserRule): string[] {
  return [...AstUtils.streamAllContents(rule).filter(GrammarAST.isKeyword)].map(({ value }) => value);
}

function isWord(text: string): boolean {
  return /^[a-z]/.test(text);
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)].sort();
}
