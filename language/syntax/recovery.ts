/**
 * How the parser goes on after a mistake: it gives up the statement, not the plan. What follows is skipped up to the
 * next line that starts a statement of the block or declaration at hand, or of one around it; braces on the way are
 * skipped in pairs. The framework's own way takes up at any token that could follow somewhere, which in a language of
 * small words (`at`, `of`, `in`) is mostly the wrong one, and reports what follows from that.
 */
import type { Grammar, LangiumParser } from "langium";
import type { GrammarWords, Slip } from "./slip.ts";
import { keywordsOf, type StatementLoop, statementLoopsOf } from "./statement-loops.ts";
import { firstOfLine, hasPlace, nameOf, startsLine, type Token, type TokenType } from "./tokens.ts";

/** An error of the parser. */
export type ParserError = ReturnType<LangiumParser["parse"]>["parserErrors"][number];

/** The token types that could have followed, each as the start of a path. */
export type ExpectedPaths = readonly (readonly TokenType[])[];

/**
 * What is used of the parser library beneath the framework. It is not part of its published types, so that its version
 * is pinned, and the tests of recovery would notice a change.
 */
interface Engine {
  readonly input: readonly Token[];
  readonly currIdx: number;
  readonly RULE_STACK_IDX: number;
  maxLookahead: number;
  reset(): void;
  LA(distance: number): Token;
  SKIP_TOKEN(): Token;
  getHumanReadableRuleStack(): string[];
  getGAstProductions(): Record<string, unknown>;
  doSingleRepetition(action: () => void): boolean;
  SAVE_ERROR(error: ParserError): ParserError;
  attemptInRepetitionRecovery(...repetition: Repetition): void;
  findReSyncTokenType(): unknown;
  isInCurrentRuleReSyncSet(type: unknown): boolean;
  reSyncTo(type: unknown): Token[];
  getTokenToInsert(type: TokenType): Token;
  tryInRuleRecovery(expected: TokenType, following: TokenType[]): Token;
}

/** What the library hands over when a repetition of the grammar has ended. */
type Repetition = [
  again: unknown,
  args: readonly unknown[],
  goesOn: () => boolean,
  method: number,
  occurrence: number,
  Walker: new (rule: unknown, occurrence: number) => { startWalking(): { token?: TokenType } },
  moved: boolean | undefined,
];

/** Tokens looked at for what could have followed. `at least 70 %` and `at least 7 of` differ in their fourth. */
const LOOKAHEAD = 4;

/** @param expected the paths that the last error message was asked for. */
export function recoverByStatement(
  parser: LangiumParser,
  grammar: Grammar,
  expected: () => ExpectedPaths,
): void {
  const engine = (parser as unknown as { wrapper: Engine }).wrapper;
  const loops = statementLoopsOf(grammar);
  const words: GrammarWords = { loops, keywords: keywordsOf(grammar) };
  const items = new Set([...loops.values()].flatMap((loop) => [...loop.items]));
  engine.maxLookahead = LOOKAHEAD;

  const ruleStack = () => engine.getHumanReadableRuleStack().map(withoutSuffix);
  const previous = () => engine.input[engine.currIdx];
  const atEndOfFile = () => !hasPlace(engine.LA(1));

  // The token with which a repetition last went round, by the depth of the rule it stands in.
  const rounds: number[] = [];
  const reset = engine.reset;
  engine.reset = () => {
    rounds.length = 0;
    reset.call(engine);
  };
  const once = engine.doSingleRepetition;
  engine.doSingleRepetition = (action) => {
    rounds[engine.RULE_STACK_IDX] = engine.currIdx + 1;
    return once.call(engine, action);
  };
  const statementStart = () => Math.max(0, ...rounds.slice(0, engine.RULE_STACK_IDX + 1).filter(Boolean));

  /**
   * Skips at least `least` tokens, and then up to the brace that closes the block, or to a line that starts a statement:
   * with one of their words, or no further to the right than the one that is given up.
   */
  const skip = (least: 0 | 1): void => {
    const around = ruleStack().flatMap((rule) => loops.get(rule) ?? []);
    const isClosed = around.some(({ opener }) => opener !== undefined);
    const ownLine = least === 1 && startsLine(engine.LA(1), previous());
    const first = firstOfLine(engine.input, ownLine ? engine.currIdx + 1 : statementStart());
    const column = engine.input[first]?.startColumn ?? 1;
    let depth = 0;
    for (let skipped = 0; !atEndOfFile(); skipped++) {
      const token = engine.LA(1);
      const name = nameOf(token.tokenType);
      if (depth === 0 && skipped >= least) {
        if (name === "}" && isClosed) return;
        const isStatement =
          (token.startColumn ?? 1) <= column || around.some(({ starters }) => starters.has(name));
        if (isStatement && startsLine(token, previous())) return;
      }
      if (name === "{") depth++;
      else if (name === "}") depth = Math.max(0, depth - 1);
      engine.SKIP_TOKEN();
    }
  };

  const repeat = (loop: StatementLoop, isBlock: boolean, repetition: Repetition): void => {
    const [, args, goesOn, , , , moved] = repetition;
    const action = args[1] as (() => void) | { DEF: () => void };
    const statement = typeof action === "function" ? action : action.DEF;
    const outer = ruleStack()
      .slice(0, -1)
      .flatMap((rule) => loops.get(rule) ?? []);
    if (moved === false) skip(1); // a statement failed at its first token, and was reported there
    while (!atEndOfFile()) {
      const token = engine.LA(1);
      const name = nameOf(token.tokenType);
      if (isBlock && name === "}") return;
      if (goesOn.call(engine)) {
        if (!engine.doSingleRepetition(statement)) skip(1);
      } else if (startsLine(token, previous()) && outer.some(({ starters }) => starters.has(name))) {
        return; // the brace that closes this block is missing, and the parser will say so
      } else {
        const error = { name: "MismatchedTokenException", message: "", token, previousToken: previous() };
        const saved = saveError.call(engine, { ...error, resyncedTokens: [] } as unknown as ParserError);
        attach(saved, [], loop);
        skip(1);
      }
    }
  };

  const attach = (error: ParserError, paths: ExpectedPaths, loop?: StatementLoop): void => {
    const { input, currIdx } = engine;
    const slip: Slip = { tokens: input, at: currIdx + 1, paths, rules: ruleStack(), loop, grammar: words };
    slips.set(error, slip);
  };

  const saveError = engine.SAVE_ERROR;
  engine.SAVE_ERROR = (error) => {
    const saved = saveError.call(engine, error);
    attach(saved, expected());
    return saved;
  };

  engine.attemptInRepetitionRecovery = (...repetition) => {
    const rules = engine.getHumanReadableRuleStack();
    const rule = rules.at(-1) ?? "";
    const loop = loops.get(withoutSuffix(rule));
    if (loop === undefined) return;
    const [, , , , occurrence, Walker] = repetition;
    const { token } = new Walker(engine.getGAstProductions()[rule], occurrence).startWalking();
    const isBlock = token !== undefined && nameOf(token) === "}";
    if (isBlock || engine.RULE_STACK_IDX === 0) repeat(loop, isBlock, repetition);
  };

  // What does not fit between the opening word of a block and its { is skipped, so that the block itself is read.
  const recoverInRule = engine.tryInRuleRecovery;
  engine.tryInRuleRecovery = (type, following) => {
    const loop = loops.get(ruleStack().at(-1) ?? "");
    const end = nameOf(type) === "}" ? undefined : endOfHeader(engine.input, engine.currIdx + 1, loop);
    if (end === undefined) return recoverInRule.call(engine, type, following);
    while (engine.currIdx + 1 < end) engine.SKIP_TOKEN();
    if (nameOf(type) !== "{" || engine.LA(1).image !== "{") return engine.getTokenToInsert(type);
    engine.SKIP_TOKEN();
    return engine.LA(0);
  };

  // A statement is given up as a whole, by the rule that is repeated; the entry rule must never pass an error on.
  engine.findReSyncTokenType = () => undefined;
  engine.isInCurrentRuleReSyncSet = () => engine.RULE_STACK_IDX === 0 || items.has(ruleStack().at(-1) ?? "");
  engine.reSyncTo = () => {
    skip(0);
    return [];
  };
}

/** Where the statements of a loop start: at the { on this line, or on the next line if one starts there. */
function endOfHeader(
  tokens: readonly Token[],
  index: number,
  loop: StatementLoop | undefined,
): number | undefined {
  if (loop?.opener === undefined || !hasPlace(tokens[index])) return undefined;
  for (let at = index; hasPlace(tokens[at]); at++) {
    const token = tokens[at] as Token;
    if (token.image === "{") return at;
    if (startsLine(token, tokens[at - 1])) return loop.starters.has(nameOf(token.tokenType)) ? at : undefined;
  }
  return undefined;
}

const slips = new WeakMap<ParserError, Slip>();

/** What the parser saw when it made an error. */
export function slipOf(error: ParserError): Slip | undefined {
  return slips.get(error);
}

/** The framework marks its rules with an invisible character. */
function withoutSuffix(rule: string): string {
  return rule.replace(/\u200B$/, "");
}
