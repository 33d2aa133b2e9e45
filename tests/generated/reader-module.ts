/** Writes the reader of texts without a mistake from the grammar: a method for each rule, a line for each part of it. */
import { type AstReflection, AstUtils, type Grammar, GrammarAST, GrammarUtils } from "langium";
import { expect } from "vitest";
import { DECISIONS, TOKENS } from "../../language/generated/lookahead.ts";
import type { StoredLook, StoredLooks, StoredStep } from "../../language/syntax/lookahead.ts";
import { partsOf } from "../../language/syntax/reader/grammar-parts.ts";
import { walk } from "../../language/syntax/walk.ts";

type Lines = string[];
type Rule = GrammarAST.ParserRule | GrammarAST.InfixRule;

/** The text of `language/generated/reader.ts`. */
export function readerModule(grammar: Grammar, reflection: AstReflection): string {
  const properties = propertiesByType(grammar, reflection);
  const parts = new Map(partsOf(grammar).map((part, number) => [part, number]));
  const methods = grammar.rules
    .filter((rule) => GrammarAST.isParserRule(rule) || GrammarAST.isInfixRule(rule))
    .map((rule) => new RuleWriter(rule, parts, properties).write());
  return [
    "// Written by tests/generated/reader.test.ts. Do not edit.",
    'import { GIVEN_UP, type Made, type Reading, TreeReader } from "../syntax/reader/tree-reader.ts";',
    "",
    "export class Reader extends TreeReader {",
    methods.map((lines) => lines.map((line) => (line === "" ? "" : `  ${line}`)).join("\n")).join("\n\n"),
    "}",
    "",
  ].join("\n");
}

/** The text of `language/generated/part-properties.ts`. */
export function partPropertiesModule(grammar: Grammar): string {
  const properties = partsOf(grammar).map(
    (part) => AstUtils.getContainerOfType(part, GrammarAST.isAssignment)?.feature,
  );
  return [
    "// Written by tests/generated/reader.test.ts. Do not edit.",
    "",
    "/** What each part of the grammar is read for, by the numbers of the parts: a property of a node, or nothing. */",
    `export const PART_PROPERTIES: readonly string[] = ${JSON.stringify(properties.map((name) => name ?? ""))};`,
    "",
  ].join("\n");
}

/** The properties of each type, in the order in which its rules give them. */
function propertiesByType(grammar: Grammar, reflection: AstReflection): ReadonlyMap<string, Lines> {
  const order = new Map<string, Set<string>>();
  for (const rule of grammar.rules.filter(GrammarAST.isParserRule)) {
    const names = order.get(typeOf(rule)) ?? new Set();
    order.set(typeOf(rule), names);
    walk(rule.definition, (part) => {
      if (GrammarAST.isAssignment(part)) names.add(part.feature);
    });
  }
  return new Map(
    [...order].map(([type, names]) => {
      const { properties } = reflection.getTypeMetaData(type);
      const initial = (name: string) => JSON.stringify(properties[name]?.defaultValue) ?? "undefined";
      return [type, [...names].map((name) => `${name}: ${initial(name)},`)];
    }),
  );
}

/** The type of the nodes that a rule gives. */
function typeOf(rule: GrammarAST.ParserRule): string {
  const actions = new Set<string>();
  walk(rule.definition, (part) => {
    if (GrammarAST.isAction(part)) actions.add(GrammarUtils.getTypeName(part));
  });
  expect(actions.size, rule.name).toBeLessThan(2);
  const [action] = actions;
  return action ?? GrammarUtils.getTypeName(rule);
}

/** How the parser library numbers the places of a rule where there are several ways on. */
const CHOICE = 256;
const OPTION = 512;
const REPETITION = 768;

class RuleWriter {
  private readonly rule: Rule;
  private readonly looks: ReadonlyMap<number, StoredLook>;
  private readonly parts: ReadonlyMap<unknown, number>;
  private readonly properties: ReadonlyMap<string, Lines>;
  /** Methods for decisions that look at more than one token. */
  private readonly decisions: Lines[] = [];
  private choices = 0;
  private options = 0;
  private repetitions = 0;

  constructor(rule: Rule, parts: ReadonlyMap<unknown, number>, properties: ReadonlyMap<string, Lines>) {
    this.rule = rule;
    this.parts = parts;
    this.properties = properties;
    this.looks = new Map((JSON.parse(DECISIONS) as StoredLooks)[rule.name] ?? []);
  }

  write(): Lines {
    const method = GrammarAST.isInfixRule(this.rule) ? this.chain(this.rule) : this.method(this.rule);
    return [...method, ...this.decisions.flatMap((lines) => ["", ...lines])];
  }

  private method(rule: GrammarAST.ParserRule): Lines {
    if (GrammarUtils.isDataTypeRule(rule)) {
      return [
        `private read${rule.name}(reading: Reading): string {`,
        '  let text = "";',
        ...indented(this.lines(rule.definition)),
        "  this.close(reading);",
        "  return text;",
        "}",
      ];
    }
    const lines = this.lines(rule.definition);
    const referring = lines.some((line) => line.includes("(at = "));
    return [
      `${rule.entry ? "protected" : "private"} read${rule.name}(reading: Reading): Made {`,
      ...(referring ? ["  let at: Reading;"] : []),
      ...indented(isChoiceOfRules(rule) ? ["let node: Made;"] : this.node(rule)),
      ...indented(lines),
      "  this.close(reading);",
      "  return node;",
      "}",
    ];
  }

  /** A new node, with all its properties from the start: nodes of a type have one shape. */
  private node(rule: GrammarAST.ParserRule): Lines {
    const type = typeOf(rule);
    const around = ["$container", "$containerProperty", "$containerIndex", "$cstNode"];
    return [
      "const node: Made = {",
      `  $type: ${JSON.stringify(type)},`,
      ...around.map((property) => `  ${property}: undefined,`),
      ...indented(this.properties.get(type) ?? []),
      "};",
    ];
  }

  private chain(rule: GrammarAST.InfixRule): Lines {
    const { precedences } = rule.operators;
    expect(precedences.filter(({ associativity }) => associativity === "right")).toEqual([]);
    const signs = precedences.flatMap(({ operators }, level) =>
      operators.map(({ value }) => [value, level] as const),
    );
    // Of a chain there are two parts: the operands, and the operators behind them.
    const isOperands = ([part]: [unknown, number]) => (part as { terminal?: unknown }).terminal === rule.call;
    const [, operand] = [...this.parts].find(isOperands) ?? expect.unreachable(rule.name);
    const operator = operand + 1;
    const read = `this.read${rule.call.rule.$refText}(this.open(reading, ${operand}))`;
    const take = signs.map(([value]) => [`this.take(${kindOf(value)}, reading, ${operator});`]);
    const another = this.condition(this.look(REPETITION));
    return [
      `private read${rule.name}(reading: Reading): Made {`,
      `  const operands = [this.linked(${read})];`,
      "  const operators: string[] = [];",
      `  while (${another}) {`,
      ...indented(indented(this.choose(this.look(CHOICE), take))),
      "    operators.push(this.taken());",
      `    operands.push(this.linked(${read}));`,
      "  }",
      `  return this.chain(${JSON.stringify(rule.name)}, operands, operators, ${JSON.stringify(Object.fromEntries(signs))}, reading);`,
      "}",
    ];
  }

  /** What reads a part of the rule, with how often it may stand there. */
  private lines(part: GrammarAST.AbstractElement, assign?: GrammarAST.Assignment): Lines {
    const once = this.once(part, assign);
    switch (part.cardinality) {
      case undefined:
        return once;
      case "?": {
        const may = this.condition(this.look(OPTION + ++this.options));
        return [`if (${may} && !this.startsNameOnNewLine()) {`, ...indented(once), "}"];
      }
      case "*": {
        const again = this.condition(this.look(REPETITION + ++this.repetitions));
        return [`while (${again}) {`, ...indented(once), "}"];
      }
      default:
        return expect.unreachable(`${this.rule.name}: ${part.cardinality}`);
    }
  }

  private once(part: GrammarAST.AbstractElement, assign?: GrammarAST.Assignment): Lines {
    if (GrammarAST.isGroup(part)) return part.elements.flatMap((each) => this.lines(each));
    if (GrammarAST.isAlternatives(part)) {
      const ways = part.elements.map((each) => this.lines(each, assign));
      return this.choose(this.look(CHOICE + ++this.choices), ways);
    }
    if (GrammarAST.isAction(part)) return [];
    if (GrammarAST.isAssignment(part)) return this.lines(part.terminal, part);
    const number = this.parts.get(part) as number;
    if (GrammarAST.isKeyword(part)) {
      return [`this.take(${kindOf(part.value)}, reading, ${number});`, ...this.give("this.taken()", assign)];
    }
    if (GrammarAST.isCrossReference(part)) return this.referring(part, number, assign);
    if (GrammarAST.isRuleCall(part)) return this.calling(part, number, assign);
    return expect.unreachable(`${this.rule.name}: ${part.$type}`);
  }

  private calling(
    { rule: { ref } }: GrammarAST.RuleCall,
    number: number,
    assign?: GrammarAST.Assignment,
  ): Lines {
    if (GrammarAST.isTerminalRule(ref)) {
      return [`this.take(${kindOf(ref.name)}, reading, ${number});`, ...this.give(takenAs(ref), assign)];
    }
    const read = `this.read${ref?.name}(this.open(reading, ${number}))`;
    if (GrammarAST.isParserRule(ref) && GrammarUtils.isDataTypeRule(ref)) return this.give(read, assign);
    if (assign === undefined) return [`node = ${read};`];
    const property = JSON.stringify(assign.feature);
    return assign.operator === "+="
      ? [`this.adoptOneOf(${read}, node, ${property}, node.${assign.feature});`]
      : [`node.${assign.feature} = this.adopt(${read}, node, ${property});`];
  }

  private referring(part: GrammarAST.CrossReference, number: number, assign?: GrammarAST.Assignment): Lines {
    const rule = GrammarAST.isRuleCall(part.terminal) ? part.terminal.rule.ref : undefined;
    const name = JSON.stringify(assign?.feature);
    const [place, text] = GrammarAST.isTerminalRule(rule)
      ? [`this.take(${kindOf(rule.name)}, reading, ${number})`, takenAs(rule)]
      : [`(at = this.open(reading, ${number}))`, `this.read${rule?.name}(at)`];
    return this.give(`this.reference(node, ${name}, ${place}, ${text})`, assign);
  }

  /** Gives a value to the node, or to the text that a rule of words reads. */
  private give(value: string, assign?: GrammarAST.Assignment): Lines {
    if (assign === undefined) return this.isOfWords() ? [`text += ${value};`] : [];
    const property = `node.${assign.feature}`;
    if (assign.operator === "+=") return [`${property}.push(${value});`];
    return [`${property} = ${assign.operator === "?=" ? "true" : value};`];
  }

  private isOfWords(): boolean {
    return GrammarAST.isParserRule(this.rule) && GrammarUtils.isDataTypeRule(this.rule);
  }

  private look(place: number): StoredLook {
    return this.looks.get(place) ?? expect.unreachable(`${this.rule.name} at ${place}`);
  }

  /** Goes one of several ways. */
  private choose(look: StoredLook, ways: readonly Lines[]): Lines {
    const [otherwise, ...others] = look;
    const isShallow = typeof otherwise !== "object" || otherwise === null;
    if (isShallow && others.every(([step]) => typeof step === "number")) {
      return [
        "switch (this.kinds[this.at]) {",
        ...others.flatMap(([step, ...kinds]) => [
          `  ${cases(kinds)}`,
          ...indented(indented([...(ways[step as number] ?? []), "break;"])),
        ]),
        "  default:",
        ...indented(indented(otherwise === null ? ["throw GIVEN_UP;"] : (ways[otherwise as number] ?? []))),
        "}",
      ];
    }
    return [
      `switch (${this.decision(look, "number", "-1")}) {`,
      ...ways.flatMap((way, index) => [`  case ${index}:`, ...indented(indented([...way, "break;"]))]),
      "  default:",
      "    throw GIVEN_UP;",
      "}",
    ];
  }

  /** Whether to take what is optional. */
  private condition(look: StoredLook): string {
    const [otherwise, ...others] = look;
    const [first] = others;
    if (otherwise === false && others.length === 1 && first?.[0] === true && first.length < 5) {
      const kinds = first.slice(1).map((kind) => `this.kinds[this.at] === ${kind}`);
      return kinds.length === 1 ? kinds.join("") : `(${kinds.join(" || ")})`;
    }
    return this.decision(look, "boolean", "false");
  }

  /** A call of a method that looks at tokens. */
  private decision(look: StoredLook, type: string, none: string): string {
    const name = `decide${this.rule.name}${this.decisions.length + 1}`;
    this.decisions.push([
      `private ${name}(): ${type} {`,
      "  const { kinds, at } = this;",
      ...indented(steps(look, 0, none)),
      "}",
    ]);
    return `this.${name}()`;
  }
}

function steps([otherwise, ...others]: StoredLook, distance: number, none: string): Lines {
  const step = (stored: StoredStep): Lines => {
    if (stored === null) return [`return ${none};`];
    return typeof stored === "object" ? steps(stored, distance + 1, none) : [`return ${stored};`];
  };
  return [
    `switch (kinds[at${distance > 0 ? ` + ${distance}` : ""}]) {`,
    ...others.flatMap(([stored, ...kinds]) => [`  ${cases(kinds)}`, ...indented(indented(step(stored)))]),
    "  default:",
    ...indented(indented(step(otherwise))),
    "}",
  ];
}

function cases(kinds: readonly number[]): string {
  return kinds.map((kind) => `case ${kind}:`).join(" ");
}

/** Whether a rule does nothing but choose from others, whose nodes it gives on. */
function isChoiceOfRules(rule: GrammarAST.ParserRule): boolean {
  let assigns = false;
  let calls = false;
  walk(rule.definition, (part) => {
    if (GrammarAST.isAssignment(part) || GrammarAST.isAction(part)) assigns = true;
    if (GrammarAST.isRuleCall(part) && GrammarAST.isAbstractParserRule(part.rule.ref)) {
      calls ||= AstUtils.getContainerOfType(part, GrammarAST.isAssignment) === undefined;
    }
  });
  expect(assigns && calls, `${rule.name} both gives nodes on and has properties`).toBe(false);
  return calls;
}

/** The value of a token that a terminal has read. */
function takenAs(rule: GrammarAST.TerminalRule): string {
  if (rule.type?.name === "number") return "this.takenNumber()";
  return rule.name === "STRING" ? "this.takenText()" : "this.taken()";
}

function kindOf(token: string): number {
  const kind = TOKENS.indexOf(token);
  expect(kind, token).toBeGreaterThanOrEqual(0);
  return kind;
}

function indented(lines: Lines): Lines {
  return lines.map((line) => `  ${line}`);
}
