/**
 * Random programs made from the grammar itself: every text it gives can be read, whatever it says. Names are drawn from a
 * few words, so that most references lead somewhere.
 */
import fc from "fast-check";
import { GrammarAST } from "langium";
import { services } from "../checks/checked-files.ts";

/** A token of a program, or the start of a part that has a line of its own. */
export type Piece = string;

/** Marks the start of a statement, after which a name may stand first in a line. */
export const LINE = "\n";

const TERMINALS: Readonly<Record<string, fc.Arbitrary<string>>> = {
  WORD: fc.constantFrom("carry", "club-path", "7-iron", "°", "m", "yd", "open", "draw", "width", "länge"),
  STRING: fc.constantFrom('"Gate"', '"Prove it"', '"a \\" b"', '"// no comment"', '"{"', '""'),
  NUMBER: fc.constantFrom("0", "7", "12", "2.5", "80"),
  DATE: fc.constantFrom("2026-10-12", "2026-02-28"),
  TIME: fc.constantFrom("10:42", "9:05:30"),
};

/** The rules whose nodes have a line of their own. */
const LINES = new Set(
  [
    "Use Declaration PlanStatement BlockStatement PlayerStatement SourceStatement SessionStatement MetricStatement Unit",
    "FindingStatement CurriculumStatement CurriculumStepStatement InstrumentStatement WindowVariant NextStep Criterion",
  ].flatMap((line) => line.split(" ")),
);

const { Grammar } = services;
const rules = new Map(Grammar.rules.filter(GrammarAST.isParserRule).map((rule) => [rule.name, rule]));

/** Tokens of a program, with `LINE` before each part that may have a line of its own. */
export const program: fc.Arbitrary<readonly Piece[]> = fc
  .array(fc.noShrink(ruleText("Declaration", 0)), { minLength: 1, maxLength: 4 })
  .map((declarations) => declarations.flat());

function ruleText(name: string, depth: number): fc.Arbitrary<Piece[]> {
  const rule = rules.get(name);
  if (rule === undefined) {
    const infix = Grammar.rules.find((candidate) => candidate.name === name);
    if (GrammarAST.isInfixRule(infix)) return infixText(infix, depth);
    return (TERMINALS[name] ?? fc.constant(name)).map((text) => [text]);
  }
  const text = fc.constant(undefined).chain(() => elementText(rule.definition, depth));
  return LINES.has(name) ? text.map((pieces) => [LINE, ...pieces]) : text;
}

function infixText(rule: GrammarAST.InfixRule, depth: number): fc.Arbitrary<Piece[]> {
  const operand = fc.constant(undefined).chain(() => ruleText(rule.call.rule.$refText, depth + 1));
  const more = fc.tuple(fc.constantFrom("+", "-", "*", "/"), operand).map(([sign, text]) => [sign, ...text]);
  return fc
    .tuple(operand, depth > DEEP ? fc.constant([]) : fc.array(more, { maxLength: 2 }))
    .map(([first, rest]) => [...first, ...rest.flat()]);
}

/** Below this depth nothing is repeated or optional any more. */
const DEEP = 9;

function elementText(element: GrammarAST.AbstractElement, depth: number): fc.Arbitrary<Piece[]> {
  const once = onceText(element, depth + 1);
  const isDeep = depth > DEEP;
  switch (element.cardinality) {
    case "?":
      return isDeep ? fc.constant([]) : fc.boolean().chain((is) => (is ? once : fc.constant([])));
    case "*":
      return isDeep ? fc.constant([]) : repeated(once, 0);
    case "+":
      return isDeep ? once : repeated(once, 1);
    default:
      return once;
  }
}

function repeated(once: fc.Arbitrary<Piece[]>, minLength: number): fc.Arbitrary<Piece[]> {
  return fc.array(once, { minLength, maxLength: 3 }).map((texts) => texts.flat());
}

function onceText(element: GrammarAST.AbstractElement, depth: number): fc.Arbitrary<Piece[]> {
  if (GrammarAST.isGroup(element)) {
    return fc.tuple(...element.elements.map((part) => elementText(part, depth))).map((texts) => texts.flat());
  }
  if (GrammarAST.isAlternatives(element)) {
    return fc.oneof(
      ...element.elements.map((part) => fc.constant(undefined).chain(() => elementText(part, depth))),
    );
  }
  if (GrammarAST.isAssignment(element)) return elementText(element.terminal, depth);
  if (GrammarAST.isCrossReference(element)) {
    return element.terminal === undefined ? fc.constant([]) : elementText(element.terminal, depth);
  }
  if (GrammarAST.isKeyword(element)) return fc.constant([element.value]);
  if (GrammarAST.isRuleCall(element)) return ruleText(element.rule.$refText, depth);
  return fc.constant([]);
}

/** White space and comments between two tokens. `mayBreak`: before the start of a statement, where a line may end. */
const inLine = fc.constantFrom(" ", "  ", "\t", " /* aside */ ");
const betweenLines = fc.constantFrom(
  "\n",
  "\n\n",
  "\n\n\n\n",
  " \n  ",
  "\n// note  \n",
  " // behind\n",
  "\n/**\n* more\n */\n",
);

/** A program as somebody untidy writes it. */
export const untidy: fc.Arbitrary<string> = program.chain((pieces) =>
  fc
    .tuple(...pieces.map((piece) => (piece === LINE ? betweenLines : inLine.map((white) => piece + white))))
    .map((texts) => texts.join("")),
);
