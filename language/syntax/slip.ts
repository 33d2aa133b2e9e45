/** A place where the parser could not go on, and what is said about it. */
import type { Fix, TextRange } from "../checks/check.ts";
import type { RuleWords, StatementLoop, StatementLoops } from "./statement-loops.ts";
import { hasPlace, nameOf, startsLine, type Token, type TokenType } from "./tokens.ts";

/** What the parser saw. */
export interface Slip {
  /** All tokens of the file. */
  readonly tokens: readonly Token[];
  /** Where in them it stopped; their number at the end of the file. */
  readonly at: number;
  /** Where in them the statement starts that was being read. */
  readonly start: number;
  /** What could have followed there, as starts of paths. Empty where a statement was expected. */
  readonly paths: readonly (readonly TokenType[])[];
  /** The rules it was in, from the file inwards. */
  readonly rules: readonly string[];
  /** The statements that were expected, where none of them starts here. */
  readonly loop: StatementLoop | undefined;
  readonly grammar: GrammarWords;
}

/** What has to be known of the grammar to say what somebody meant. */
export interface GrammarWords {
  readonly loops: StatementLoops;
  /** What each rule writes down. */
  readonly rules: ReadonlyMap<string, RuleWords>;
  /** The tokens that can be a name. */
  readonly names: ReadonlySet<string>;
}

/** The token that does not fit, and what would. */
export interface Misfit {
  readonly slip: Slip;
  /** Undefined at the end of the file. */
  readonly token: Token | undefined;
  readonly index: number;
  /** Keywords and names of terminals. */
  readonly expected: readonly string[];
}

/** What is said, about which place, and how to put it right. */
export interface Explanation {
  readonly message: string;
  readonly range: TextRange;
  readonly fixes?: readonly Fix[];
  /** It may come from a brace that is wrong before it, and others of its kind from the same brace. */
  readonly follows?: boolean;
}

/** Knows one kind of slip by sight. */
export type Recogniser = (misfit: Misfit) => Explanation | undefined;

/** The parser stops where it has to choose; the token that does not fit can come later, on a path it could have taken. */
export function misfitOf(slip: Slip): Misfit {
  const { tokens, at, paths, loop } = slip;
  let furthest = 0;
  let expected = new Set<string>(loop?.starters);
  for (const path of paths) {
    let length = 0;
    while (length < path.length && tokens[at + length]?.tokenType === path[length]) length++;
    const next = path[length];
    if (next === undefined || length < furthest) continue;
    if (length > furthest) {
      furthest = length;
      expected = new Set();
    }
    expected.add(nameOf(next));
  }
  const index = Math.min(at + furthest, tokens.length);
  return { slip, token: tokens[index], index, expected: [...expected] };
}

/** The statements among which the parser was, whether one of them was being read or expected. */
export function loopAround({ loop, rules, grammar }: Slip): StatementLoop | undefined {
  return loop ?? rules.map((rule) => grammar.loops.get(rule)).findLast((known) => known !== undefined);
}

/**
 * The start of the statement, as what does not fit there, where it is a name or a number and hardly anything behind it
 * could be read. Undefined elsewhere.
 */
export function startOfStatement({ slip, index }: Misfit): (Misfit & { readonly token: Token }) | undefined {
  const { tokens, start, grammar, rules } = slip;
  const token = tokens[start];
  if (slip.loop !== undefined || !hasPlace(token) || index > start + 2) return undefined;
  const name = nameOf(token.tokenType);
  if (name !== "NUMBER" && !grammar.names.has(name)) return undefined;
  const loop = rules.map((rule) => grammar.loops.get(rule)).findLast((around) => around?.starters.has(name));
  if (loop === undefined) return undefined;
  return { slip: { ...slip, at: start, paths: [], loop }, token, index: start, expected: [...loop.starters] };
}

/** The token before the one that does not fit, where the statement could have gone on behind it. */
export function brokenOff({ slip, token, index }: Misfit): Token | undefined {
  const before = slip.tokens[index - 1];
  if (slip.loop !== undefined || !hasPlace(before)) return undefined;
  const isEnd =
    token === undefined || startsLine(token, before) || token.image === "{" || token.image === "}";
  return isEnd ? before : undefined;
}
