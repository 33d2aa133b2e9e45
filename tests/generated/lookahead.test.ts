/** The table by which the parser decides, asked of the parser library. */
import { EmptyFileSystem } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import {
  type Decide,
  type Engine,
  engineOf,
  type Repetition,
  ruleName,
  type Strategy,
} from "../../language/syntax/engine.ts";
import type { StoredLook, StoredStep } from "../../language/syntax/lookahead.ts";
import { createRecoveringParser } from "../../language/syntax/recovering-parser.ts";
import { nameOf, type Token, type TokenType } from "../../language/syntax/tokens.ts";

/** Most tokens a place may need to decide. A grammar that needs more there is hard on readers, too. */
const DEEPEST = 8;

const engine = engineOf(createRecoveringParser(createCoreServices(EmptyFileSystem).drillwright));
const tokens = Object.entries(engine.tokensMap).map(
  ([name, type]) => ({ image: name, tokenType: type, tokenTypeIdx: type.tokenTypeIdx }) as Token,
);

interface Place {
  readonly rule: string;
  readonly number: number;
  readonly decide: Decide;
}

/** Each place of the grammar with the library's own way to decide there. The parser at hand was given the table instead. */
function places(): Place[] {
  const rules = Object.values(engine.getGAstProductions());
  const Strategy = engine.lookaheadStrategy.constructor as new (options: object) => Strategy;
  const lookaheadStrategy = new Strategy({ logging: () => {} });
  lookaheadStrategy.initialize({ rules });
  const names = new Map(Object.entries(engine.fullRuleNameToShort).map(([name, rule]) => [rule, name]));
  const found: Place[] = [];
  const setLaFuncCache: Engine["setLaFuncCache"] = (rule, number, decide) => {
    found.push({ rule: ruleName(names.get(rule) ?? expect.unreachable()), number, decide });
  };
  const asking: Engine = Object.assign(Object.create(engine), { lookaheadStrategy, setLaFuncCache });
  Object.getPrototypeOf(engine).preComputeLookaheadFunctions.call(asking, rules);
  return found;
}

/** For each rule that has any, the numbers of some of its parts. */
function partsOfRules(partsOf: (rule: Production) => number[]): Record<string, number[]> {
  const rules = Object.values(engine.getGAstProductions());
  const found = rules.map((rule) => [ruleName(rule.name), partsOf(rule as Production)] as const);
  return Object.fromEntries(found.filter(([, parts]) => parts.length > 0));
}

function startingWithBrace(rule: Production): number[] {
  return withinRule(rule).flatMap(({ idx, definition }) => {
    const first = definition?.[0]?.terminalType;
    return idx !== undefined && first !== undefined && nameOf(first) === "{" ? [idx] : [];
  });
}

function repeatedToBrace(rule: Production): number[] {
  const repetitions = withinRule(rule).filter((part) => part.constructor.name === "Repetition");
  return repetitions.flatMap(({ idx = 0 }) => {
    const { token } = new Walker(rule, idx).startWalking();
    return token !== undefined && nameOf(token) === "}" ? [idx] : [];
  });
}

const Walker = walkerOf();

/** What the library finds out with what follows a repetition: it hands it over where one has ended. */
function walkerOf(): Repetition[5] {
  const parser = createRecoveringParser(createCoreServices(EmptyFileSystem).drillwright);
  const other = engineOf(parser);
  let Walker: Repetition[5] | undefined;
  other.attemptInRepetitionRecovery = (...repetition) => {
    Walker = repetition[5];
  };
  parser.parse("");
  return Walker ?? expect.unreachable();
}

/** A part of a rule, as the library has it. */
interface Production {
  readonly idx?: number;
  readonly nonTerminalName?: string;
  readonly definition?: readonly Production[];
  readonly terminalType?: TokenType;
}

function withinRule(part: Production): Production[] {
  if (part.nonTerminalName !== undefined) return []; // another rule
  return [part, ...(part.definition ?? []).flatMap(withinRule)];
}

const TOO_FEW = new Error("This place wants to see more tokens.");

/** What is decided where these tokens are next. @throws TOO_FEW where that depends on what follows them */
function ask(decide: Decide, ahead: readonly Token[]): ReturnType<Decide> {
  const LA = (distance: number) => {
    const token = ahead[distance - 1];
    if (token !== undefined) return token;
    const last = ahead.at(-1);
    if (last?.image !== "EOF") throw TOO_FEW;
    return last; // behind the end of the file is its end
  };
  return decide.call({ LA, LA_FAST: LA });
}

function lookBehind(ahead: readonly Token[], decide: Decide): StoredLook {
  expect(ahead.length, ahead.map(({ image }) => image).join(" ")).toBeLessThan(DEEPEST);
  const tokensOf = new Map<string, number[]>();
  for (const [index, token] of tokens.entries()) {
    const step = JSON.stringify(stepBehind([...ahead, token], decide));
    tokensOf.set(step, [...(tokensOf.get(step) ?? []), index]);
  }
  const [most, ...others] = [...tokensOf].sort(([, some], [, more]) => more.length - some.length);
  return [JSON.parse(most?.[0] ?? "null"), ...others.map(([step, of]) => [JSON.parse(step), ...of] as const)];
}

function stepBehind(ahead: readonly Token[], decide: Decide): StoredStep {
  try {
    return ask(decide, ahead) ?? null;
  } catch (error) {
    if (error !== TOO_FEW) throw error;
    return lookBehind(ahead, decide);
  }
}

test("the table of lookahead is what the parser library decides", async () => {
  const table: Record<string, [number, StoredLook][]> = {};
  for (const { rule, number, decide } of places()) {
    table[rule] = [...(table[rule] ?? []), [number, lookBehind([], decide)]];
  }
  const module = [
    "// Written by tests/generated/lookahead.test.ts. Do not edit.",
    "",
    `export const TOKENS: readonly string[] = ${JSON.stringify(tokens.map(({ image }) => image))};`,
    "",
    "/** What starts with a brace, by the rules. */",
    ...placesModule("STARTING_WITH_BRACE", startingWithBrace),
    "/** The repetitions that a closing brace follows, by the rules. */",
    ...placesModule("REPEATED_TO_BRACE", repeatedToBrace),
    "/** JSON of `StoredLooks`. */",
    `export const DECISIONS =\n  ${JSON.stringify(JSON.stringify(table))};`,
    "",
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../language/generated/lookahead.ts");
});

function placesModule(name: string, partsOf: (rule: Production) => number[]): string[] {
  return [
    `export const ${name}: Readonly<Record<string, readonly number[]>> = {`,
    ...Object.entries(partsOfRules(partsOf)).map(([rule, parts]) => `  ${rule}: [${parts.join(", ")}],`),
    "};",
    "",
  ];
}
