/**
 * How the parser goes on after a mistake: it gives up the statement, not the plan. What follows is skipped up to the
 * next line that starts a statement of the block or declaration at hand, or of one around it; braces on the way are
 * skipped in pairs. The framework's own way takes up at any token that could follow somewhere, which in a language of
 * small words (`at`, `of`, `in`) is mostly the wrong one, and reports what follows from that.
 */
import type { Grammar, LangiumParser } from "langium";
import { REPEATED_TO_BRACE, STARTING_WITH_BRACE } from "../generated/lookahead.ts";
import { type Engine, engineOf, type ParserError, type Repetition, type Round, ruleName } from "./engine.ts";
import type { GrammarWords, Slip } from "./slip.ts";
import { SLIP } from "./slip-tokens.ts";
import { isFile, namesOf, ruleWordsOf, type StatementLoop, statementLoopsOf } from "./statement-loops.ts";
import { firstOfLine, hasPlace, nameOf, startsLine, type Token, type TokenType } from "./tokens.ts";

/** The token types that could have followed, as starts of paths. */
export type ExpectedPaths = readonly (readonly TokenType[])[];

/** Tokens looked at for what could have followed. `at least 70 %` and `at least 7 of` differ in their fourth. */
const LOOKAHEAD = 4;

/** After so many errors a file is no plan, and nothing more of it is read: each takes time, and few are shown. */
const MOST_ERRORS = 1000;

const slips = new WeakMap<ParserError, Slip>();

/** What the parser saw when it made an error. */
export function slipOf(error: ParserError): Slip | undefined {
  return slips.get(error);
}

/** @param expected what could have followed at the last error. */
export function recoverByStatement(
  parser: LangiumParser,
  grammar: Grammar,
  expected: () => ExpectedPaths,
): void {
  new Recovery(engineOf(parser), grammar).install(expected);
}

class Recovery {
  private readonly engine: Engine;
  private readonly grammar: GrammarWords;
  /** The rules of statements. */
  private readonly items: ReadonlySet<string>;
  /** The statements of a rule, by the name that the parser has for it: this is asked at every step. */
  private readonly loopOf = new Map<string, StatementLoop | undefined>();
  /** The token with which a repetition last went round, by the depth of the rule it stands in. */
  private readonly rounds: number[] = [];
  private errors = 0;
  private readonly saveError: Engine["SAVE_ERROR"];

  constructor(engine: Engine, grammar: Grammar) {
    this.engine = engine;
    let rules: GrammarWords["rules"] | undefined;
    this.grammar = {
      loops: statementLoopsOf(grammar),
      names: namesOf(grammar),
      // A text without a mistake needs none, and reading them takes a tenth of what making the parser takes.
      get rules() {
        rules ??= ruleWordsOf(grammar);
        return rules;
      },
    };
    this.items = new Set([...this.grammar.loops.values()].flatMap((loop) => [...loop.items]));
    this.saveError = engine.SAVE_ERROR.bind(engine);
  }

  install(expected: () => ExpectedPaths): void {
    const { engine } = this;
    engine.maxLookahead = LOOKAHEAD;

    const reset = engine.reset.bind(engine);
    engine.reset = () => {
      this.rounds.length = 0;
      this.errors = 0;
      reset();
    };
    const option = engine.optionInternal.bind(engine);
    engine.optionInternal = (action, occurrence) => {
      if (this.hasWordsBeforeBrace() && this.isAmong(STARTING_WITH_BRACE, occurrence)) this.skipToBrace();
      if (this.lacksBrace() && this.isAmong(STARTING_WITH_BRACE, occurrence)) actionOf(action).call(engine);
      else if (!this.startsNameOnNewLine()) option(action, occurrence);
    };
    const once = engine.doSingleRepetition.bind(engine);
    engine.doSingleRepetition = (round) => {
      this.rounds[engine.RULE_STACK_IDX] = engine.currIdx + 1;
      return once(round);
    };
    engine.SAVE_ERROR = (error) => this.save(error, expected());
    engine.attemptInRepetitionRecovery = (...repetition) => this.afterRepetition(repetition);
    const recover = engine.tryInRuleRecovery.bind(engine);
    engine.tryInRuleRecovery = (type, following) => this.inHeader(type) ?? recover(type, following);
    // `7 of 10 shots` is no group without its brace: what might follow the brace proves nothing.
    engine.canTokenTypeBeInsertedInRecovery = (type) => nameOf(type) !== "{";
    // A statement is given up as a whole, by its own rule; the rule of the file must never pass an error on.
    engine.findReSyncTokenType = () => undefined;
    engine.isInCurrentRuleReSyncSet = () =>
      engine.RULE_STACK_IDX === 0 || this.items.has(this.ruleStack().at(-1) ?? "");
    engine.reSyncTo = () => {
      this.skip(0);
      return [];
    };
  }

  /**
   * A name on a new line is never what a statement could still go on with: a misspelt keyword behind `time 40 min` is no
   * direction of the 40 min.
   */
  private startsNameOnNewLine(): boolean {
    return this.grammar.names.has(this.next()) && this.startsLine();
  }

  /** Whether a line starts here that can only be one between braces that may be left out, and are. */
  private lacksBrace(): boolean {
    const own = this.ownLoop();
    if (own === undefined || isFile(own) || !own.anchors.has(this.next()) || !this.startsLine()) return false;
    return !this.loopsAround().some((loop) => loop !== own && loop.starters.has(this.next()));
  }

  /** Whether something stands here that is none of the block's header, on the line of the { that may follow it. */
  private hasWordsBeforeBrace(): boolean {
    const own = this.ownLoop();
    if (own === undefined || isFile(own) || this.next() === "{" || this.startsLine()) return false;
    const { input, currIdx } = this.engine;
    return input[endOfHeader(input, currIdx + 1, own) ?? input.length]?.image === "{";
  }

  /** Reports what stands before the {, as behind the end of a statement that has none. */
  private skipToBrace(): void {
    const around = this.loopsAround().at(-2);
    if (around !== undefined) this.reportNoStatement(around);
    while (this.next() !== "{") this.engine.SKIP_TOKEN();
  }

  /** Reads on behind statements that cannot be read, up to the end of their block or of the file. */
  private afterRepetition([, [, round], goesOn, , occurrence, , moved]: Repetition): void {
    const { engine } = this;
    const loop = this.ownLoop();
    if (loop === undefined) return;
    const isBlock = this.isAmong(REPEATED_TO_BRACE, occurrence);
    if (!isBlock && engine.RULE_STACK_IDX > 0) return; // a list of something within the header

    if (moved === false) this.skip(1); // a statement failed at its first token, and was reported there
    while (!this.atEndOfFile()) {
      if (isBlock && engine.LA(1).image === "}") return;
      if (goesOn.call(engine)) {
        if (!engine.doSingleRepetition(actionOf(round))) this.skip(1);
      } else if (this.startsLine() && this.startsOuterStatement()) {
        return; // the brace that closes this block is missing, and the parser will say so
      } else {
        this.reportNoStatement(loop);
        this.skip(1);
      }
    }
  }

  /**
   * Whether the next token starts a statement around the block at hand. One that stands further to the right than the line
   * that opens the block is meant to be in it, whatever its word.
   */
  private startsOuterStatement(): boolean {
    const { engine } = this;
    const outer = this.loopsAround().slice(0, -1);
    if (!outer.some(({ anchors }) => anchors.has(this.next()))) return false;
    const opening = latest(this.rounds.slice(0, engine.RULE_STACK_IDX));
    const column = engine.input[firstOfLine(engine.input, opening)]?.startColumn ?? 1;
    return (engine.LA(1).startColumn ?? 1) <= column;
  }

  /** The statements of the rule at hand. */
  private ownLoop(): StatementLoop | undefined {
    const rule = this.engine.getCurrRuleFullName();
    if (!this.loopOf.has(rule)) this.loopOf.set(rule, this.grammar.loops.get(ruleName(rule)));
    return this.loopOf.get(rule);
  }

  /** Whether something in the rule at hand is one of these places. */
  private isAmong(places: Readonly<Record<string, readonly number[]>>, occurrence: number): boolean {
    return places[ruleName(this.engine.getCurrRuleFullName())]?.includes(occurrence) ?? false;
  }

  private reportNoStatement(loop: StatementLoop): void {
    const { engine } = this;
    const error = { name: "MismatchedTokenException", message: "", token: engine.LA(1), resyncedTokens: [] };
    this.save({ ...error, previousToken: engine.LA(0) } as unknown as ParserError, [], loop);
  }

  private save(error: ParserError, paths: ExpectedPaths, loop?: StatementLoop): ParserError {
    const { input, currIdx } = this.engine;
    const saved = this.saveError(error);
    const rules = this.ruleStack();
    const start = this.startOfStatement(loop === undefined ? 0 : 1);
    slips.set(saved, { tokens: input, at: currIdx + 1, start, paths, rules, loop, grammar: this.grammar });
    if (++this.errors >= MOST_ERRORS) while (!this.atEndOfFile()) this.engine.SKIP_TOKEN();
    return saved;
  }

  /**
   * What does not fit between the opening word of a block and its { is skipped, so that the block itself is read.
   * Undefined where that is not what is wrong.
   */
  private inHeader(expected: TokenType): Token | undefined {
    const { engine } = this;
    const loop = this.grammar.loops.get(this.ruleStack().at(-1) ?? "");
    if (loop === undefined || nameOf(expected) === "}") return undefined;
    const end = endOfHeader(engine.input, engine.currIdx + 1, loop);
    if (end === undefined) return undefined;
    while (engine.currIdx + 1 < end) engine.SKIP_TOKEN();
    if (nameOf(expected) !== "{" || engine.LA(1).image !== "{") return engine.getTokenToInsert(expected);
    engine.SKIP_TOKEN();
    return engine.LA(0);
  }

  /**
   * Skips at least `least` tokens, and then up to the brace that closes the block, or to a line that starts a statement:
   * with one of their words, or no further to the right than the statement that is given up.
   */
  private skip(least: 0 | 1): void {
    const { engine } = this;
    const around = this.loopsAround();
    const isInBlock = around.some((loop) => !isFile(loop));
    const column = this.columnOfStatement(least);
    let depth = 0;
    for (let skipped = 0; !this.atEndOfFile(); skipped++) {
      const name = this.next();
      if (depth === 0 && skipped >= least) {
        if (name === "}" && isInBlock) return;
        const isLeft = (engine.LA(1).startColumn ?? 1) <= column;
        if (this.startsLine() && (isLeft || around.some(({ anchors }) => anchors.has(name)))) return;
      }
      if (name === "{" || opensWithoutBrace(engine.LA(1))) depth++;
      else if (name === "}") depth = Math.max(0, depth - 1);
      engine.SKIP_TOKEN();
    }
  }

  /** The column of the line on which the statement starts that is given up. */
  private columnOfStatement(least: 0 | 1): number {
    const { input } = this.engine;
    return input[firstOfLine(input, this.startOfStatement(least))]?.startColumn ?? 1;
  }

  /** The token with which the statement starts that is being read: the next one, where none could be. */
  private startOfStatement(least: 0 | 1): number {
    const { engine } = this;
    if (least === 1 && this.startsLine()) return engine.currIdx + 1;
    return latest(this.rounds.slice(0, engine.RULE_STACK_IDX + 1));
  }

  private ruleStack(): string[] {
    return this.engine.getHumanReadableRuleStack().map(ruleName);
  }

  /** The statements that the parser is among, from the file inwards. */
  private loopsAround(): StatementLoop[] {
    return this.ruleStack().flatMap((rule) => this.grammar.loops.get(rule) ?? []);
  }

  private next(): string {
    return nameOf(this.engine.LA(1).tokenType);
  }

  private startsLine(): boolean {
    return startsLine(this.engine.LA(1), this.engine.input[this.engine.currIdx]);
  }

  private atEndOfFile(): boolean {
    return !hasPlace(this.engine.LA(1));
  }
}

/** Rules without a repetition have no round. */
function latest(rounds: readonly (number | undefined)[]): number {
  return Math.max(0, ...rounds.filter((start) => start !== undefined));
}

function actionOf(round: Round): () => void {
  return typeof round === "function" ? round : round.DEF;
}

/** Where the statements of a block start: at the { on this line, or on the next line if one starts there. */
function endOfHeader(tokens: readonly Token[], index: number, loop: StatementLoop): number | undefined {
  if (isFile(loop)) return undefined;
  for (let at = index; hasPlace(tokens[at]); at++) {
    const token = tokens[at] as Token;
    if (token.image === "{") return at;
    if (opensWithoutBrace(token)) return at + 1;
    if (!startsLine(token, tokens[at - 1])) continue;
    // `7 of 10 shots` only looks like a group.
    const isHeader = at === index || loop.openers.length === 1;
    return isHeader && loop.starters.has(nameOf(token.tokenType)) ? at : undefined;
  }
  return undefined;
}

/** `plan "Gate {`: the { is there, in a text that is not closed. */
function opensWithoutBrace({ tokenType, image }: Token): boolean {
  return nameOf(tokenType) === SLIP.unclosedText && /\{\s*$/.test(image);
}
