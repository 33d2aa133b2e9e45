/**
 * The parser library beneath the framework, as far as its recovery is replaced. What is used here is no part of its
 * published types: its version is pinned, and the tests of recovery would notice a change.
 */
import type { LangiumParser } from "langium";
import type { Token, TokenType } from "./tokens.ts";

/** An error of the parser. */
export type ParserError = ReturnType<LangiumParser["parse"]>["parserErrors"][number];

/** What is done in each round of a repetition. */
export type Round = (() => void) | { readonly DEF: () => void };

export interface Engine {
  /** The tokens of the text; the end of the file may stand behind them. */
  readonly input: readonly Token[];
  /** The token that was taken last. */
  readonly currIdx: number;
  /** How deep in rules the parser is; 0 in the rule of a whole file. */
  readonly RULE_STACK_IDX: number;
  maxLookahead: number;
  recoveryEnabled: boolean;
  /** The numbers of the rules, by their marked names. */
  readonly fullRuleNameToShort: Readonly<Record<string, number>>;
  LA(distance: number): Token;
  /** The same, no further than the end of the file. */
  LA_FAST(distance: number): Token;
  SKIP_TOKEN(): Token;
  getCurrRuleFullName(): string;
  getHumanReadableRuleStack(): string[];
  /** The grammar as the library has learnt it. */
  getGAstProductions(): Record<string, { readonly name: string }>;
  getTokenToInsert(type: TokenType): Token;
  /** All tokens by their names, the end of the file included. */
  readonly tokensMap: Readonly<Record<string, { readonly tokenTypeIdx?: number }>>;
  /** Works out how to decide at each place of the grammar where there are several ways on. */
  readonly lookaheadStrategy: Strategy;
  /** Whether the grammar was learnt. */
  selfAnalysisDone: boolean;

  /** The methods that rules call, each with a number that tells it from others of its kind in the rule. */
  consume(occurrence: number, type: TokenType, options: unknown): unknown;
  subrule(occurrence: number, rule: unknown, options: unknown): unknown;
  option(occurrence: number, action: Round): unknown;
  or(occurrence: number, alternatives: unknown): unknown;
  many(occurrence: number, action: Round): void;
  atLeastOne(occurrence: number, action: Round): void;
  /** What each of them does instead while the grammar is learnt. */
  consumeInternalRecord(type: TokenType, occurrence: number, options: unknown): unknown;
  subruleInternalRecord(rule: unknown, occurrence: number, options: unknown): unknown;
  optionInternalRecord(action: Round, occurrence: number): unknown;
  orInternalRecord(alternatives: unknown, occurrence: number): unknown;
  manyInternalRecord(occurrence: number, action: Round): void;
  atLeastOneInternalRecord(occurrence: number, action: Round): void;
  /** Called before and after that. */
  enableRecording(): void;
  disableRecording(): void;

  /** Called once, when all rules are known. */
  preComputeLookaheadFunctions(rules: readonly { readonly name: string }[]): void;
  /** Called for each place where there are several ways on: how to decide there. */
  setLaFuncCache(rule: number, place: number, decide: Decide): void;
  /** Called when a rule is entered. */
  ruleInvocationStateUpdate(rule: number, name: string, occurrence: number): void;
  /** Called before each text. */
  reset(): void;
  /** One of several. */
  orInternal(alternatives: unknown, occurrence: number): unknown;
  /** What may follow or not. */
  optionInternal(action: Round, occurrence: number): void;
  /** A repetition, and one round of it, which tells whether a token was taken. */
  manyInternal(occurrence: number, round: Round): void;
  doSingleRepetition(round: () => void): boolean;
  SAVE_ERROR(error: ParserError): ParserError;
  /** Called when a repetition has ended. */
  attemptInRepetitionRecovery(...repetition: Repetition): void;
  /** Called when a token is not the one that must follow. Gives one to go on with, or throws. */
  tryInRuleRecovery(expected: TokenType, following: TokenType[]): Token;
  canTokenTypeBeInsertedInRecovery(type: TokenType): boolean;
  /** Called for each rule around an error, inwards out, until one says that it goes on; then `reSyncTo` skips tokens. */
  findReSyncTokenType(): unknown;
  isInCurrentRuleReSyncSet(type: unknown): boolean;
  reSyncTo(type: unknown): Token[];
}

export interface Strategy {
  /** Called once, with all rules. */
  initialize(grammar: unknown): void;
}

/** Looks at the tokens ahead: the number of an alternative, whether to go in, or undefined where nothing fits. */
export type Decide = (this: Pick<Engine, "LA" | "LA_FAST">) => number | boolean | undefined;

export type Repetition = [
  again: unknown,
  args: readonly [occurrence: number, round: Round, ...unknown[]],
  goesOn: () => boolean,
  method: number,
  occurrence: number,
  Walker: new (rule: unknown, occurrence: number) => { startWalking(): { token?: TokenType } },
  moved?: boolean,
];

export function engineOf(parser: LangiumParser): Engine {
  return (parser as unknown as { wrapper: Engine }).wrapper;
}

/** The invisible character by which the framework marks the names of rules. */
const MARK = "\u200B";

/** The name of a rule as the parser has it. */
export function markedName(rule: string): string {
  return rule + MARK;
}

/** The name of a rule as the grammar has it. */
export function ruleName(marked: string): string {
  return marked.endsWith(MARK) ? marked.slice(0, -MARK.length) : marked;
}
