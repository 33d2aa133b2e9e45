/** How the rules of the grammar are shown to readers: words as they are typed, and what stands between them. */
import { GrammarAST, GrammarUtils } from "langium";
import { DrillwrightGrammar } from "../../language/generated/tree/grammar.ts";

const grammar = DrillwrightGrammar();
export const rules = new Map(grammar.rules.filter(GrammarAST.isParserRule).map((rule) => [rule.name, rule]));

/** What a reader puts for a terminal. */
const TERMINALS: Readonly<Record<string, string>> = {
  NUMBER: "number",
  DATE: "date",
  TIME: "time",
  STRING: '"…"',
  WORD: "name",
};

/** What a reader puts for a rule that is explained elsewhere. */
const NAMED: Readonly<Record<string, string>> = {
  Quantity: "amount",
  Count: "number",
  Condition: "condition",
  Range: "limit or range",
  Criterion: "goal",
  Confidence: "[at ⟨number⟩ % confidence]",
  Subject: '(on target | with ⟨condition⟩ | (inside | outside) "window")',
  Expression: "formula",
  BlockKind: "[kind]",
};

/** Types of what is referred to, where their names are not what a reader would say. */
const READABLE: Readonly<Record<string, string>> = {
  UnitName: "unit",
  ClubOrParameter: "club",
  SideOrCategory: "direction or name",
};

/** The syntax of a rule: words, `name`s in angle brackets, optional parts in square ones. */
export function syntaxOf(name: string): string {
  const rule = rules.get(name);
  if (rule === undefined) throw new Error(`The grammar has no rule ${name}.`);
  return tidy(render(rule.definition));
}

/** The rules that a rule chooses between, as in `Declaration: Plan | Player`. */
export function alternativesOf(name: string): string[] {
  const definition = rules.get(name)?.definition;
  const elements = GrammarAST.isAlternatives(definition) ? definition.elements : [definition];
  return elements.flatMap((element) => (GrammarAST.isRuleCall(element) ? [element.rule.$refText] : []));
}

function tidy(text: string): string {
  return text
    .replace(/\s+/g, " ")
    .replace(/\[… …\]/g, "…")
    .replace(/ ([,:)])/g, "$1")
    .replace(/([(±]) /g, "$1")
    .replace(/\[ /g, "[")
    .replace(/ \]/g, "]")
    .trim();
}

function render(element: GrammarAST.AbstractElement): string {
  const text = once(element);
  switch (element.cardinality) {
    case "?":
      return text === "" || text.startsWith("[") ? text : `[${text}]`;
    case "*":
      return text === "" ? "" : `[${text} …]`;
    case "+":
      return `${text} …`;
    default:
      return text;
  }
}

function once(element: GrammarAST.AbstractElement): string {
  if (GrammarAST.isGroup(element)) return group(element.elements);
  if (GrammarAST.isAlternatives(element)) return choice(element.elements.map(render));
  if (GrammarAST.isKeyword(element)) return element.value;
  if (GrammarAST.isAssignment(element)) return assigned(element);
  if (GrammarAST.isRuleCall(element)) return called(element.rule.$refText);
  if (GrammarAST.isCrossReference(element)) return referred(element);
  return "";
}

/** `x (',' x)*` is shown as `x, …`. */
function group(elements: readonly GrammarAST.AbstractElement[]): string {
  return elements
    .map((element, index) => {
      const before = elements[index - 1];
      const isList =
        element.cardinality === "*" &&
        GrammarAST.isGroup(element) &&
        before !== undefined &&
        element.elements.length === 2 &&
        render({ ...element.elements[1], cardinality: undefined } as never) ===
          render({ ...before, cardinality: undefined } as never);
      const separator = isList ? element.elements[0] : undefined;
      if (isList && GrammarAST.isKeyword(separator)) return `[${separator.value} …]`;
      return render(element);
    })
    .filter((text) => text !== "")
    .join(" ");
}

function choice(texts: readonly string[]): string {
  const some = [...new Set(texts.filter((text) => text !== ""))];
  return some.length > 1 ? `(${some.join(" | ")})` : (some[0] ?? "");
}

function assigned({ feature, terminal }: GrammarAST.Assignment): string {
  if (feature === "statements" || feature === "criteria" || feature === "variants" || feature === "steps")
    return "…";
  return once(terminal);
}

function referred({ type, terminal }: GrammarAST.CrossReference): string {
  const name = READABLE[type.$refText] ?? type.$refText;
  const word = `⟨${name.toLowerCase()}⟩`;
  return GrammarAST.isRuleCall(terminal) && terminal.rule.$refText === "STRING"
    ? `"${name.toLowerCase()}"`
    : word;
}

function called(name: string): string {
  const terminal = TERMINALS[name];
  if (terminal !== undefined) return terminal === '"…"' ? terminal : `⟨${terminal}⟩`;
  const named = NAMED[name];
  if (named !== undefined) return named.startsWith("[") || named.includes("|") ? named : `⟨${named}⟩`;
  const rule = rules.get(name);
  if (rule === undefined) return `⟨${name.toLowerCase()}⟩`;
  if (name === "Word" || name === "UnitSign") return "⟨name⟩";
  return GrammarUtils.isDataTypeRule(rule) ? choice([render(rule.definition)]) : render(rule.definition);
}
