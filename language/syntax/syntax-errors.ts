/** The mistakes of a text that keep it from being read, each once. */
import type { ParseResult } from "langium";
import { explain } from "./explain.ts";
import { slipOf } from "./recovery.ts";
import { type Explanation, misfitOf } from "./slip.ts";
import { SLIP } from "./slip-tokens.ts";
import { hasPlace } from "./tokens.ts";

/** How much of a file that is no plan is explained. */
export const MOST_SYNTAX_ERRORS = 50;

/**
 * One explanation for each statement that could not be read: what else is wrong on its line follows from that.
 * Cost: linear in the errors; each explanation at most linear in the tokens.
 */
export function syntaxErrors({ parserErrors }: ParseResult): Explanation[] {
  const errors: Explanation[] = [];
  let lastToken: unknown;
  for (const error of parserErrors) {
    if (errors.length === MOST_SYNTAX_ERRORS) break;
    const slip = slipOf(error);
    if (slip === undefined) {
      errors.push({ message: error.message, range: START });
      continue;
    }
    const { token, index } = misfitOf(slip);
    if (index === lastToken) continue;
    lastToken = index;
    const explanation = explain(slip);
    const last = errors.at(-1);
    const isSameLine = last?.range.end.line === explanation.range.start.line;
    const isSameBrace = last?.follows === true && explanation.follows === true;
    if ((!isSameLine && !isSameBrace) || token === undefined) errors.push(explanation);
    if (token?.tokenType.name === SLIP.unclosedComment) break; // it reaches to the end of the file
  }
  return errors;
}

/** A place in the text that could not be read. */
export interface BrokenPlace {
  readonly offset: number;
  /** The line it is on, from 0. */
  readonly line: number;
  /** The rules that were being read there, from the file inwards. */
  readonly rules: readonly string[];
}

/** Every place that could not be read, whether it is explained or follows from another, in the order of the text. */
export function brokenPlaces({ parserErrors }: ParseResult): BrokenPlace[] {
  const places: BrokenPlace[] = [];
  for (const error of parserErrors) {
    const slip = slipOf(error);
    if (slip === undefined) continue;
    // Where no statement starts, it is the token that is wrong; else what was being read ends before it.
    const token = slip.tokens[slip.loop === undefined ? Math.max(0, slip.at - 1) : slip.at];
    if (!hasPlace(token)) continue;
    places.push({ offset: token.startOffset, line: (token.startLine ?? 1) - 1, rules: slip.rules });
  }
  return places.sort((one, other) => one.offset - other.offset);
}

/** Where the text as a whole is refused. */
const START = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
