/** The words, numbers and signs of a text, as the lexer of the framework finds them. */
import { TOKENS } from "../../generated/lookahead.ts";
import { DrillwrightTerminals } from "../../generated/tree/ast.ts";

/** Tokens in the order of the text, each with an entry in every list. */
export interface Tokens {
  /** What they are: places in `TOKENS`. */
  readonly kinds: number[];
  /** Offsets of their first characters. */
  readonly starts: number[];
  /** Offsets behind their last characters. */
  readonly ends: number[];
}

export interface Scan {
  /** The end of the file stands behind them. */
  readonly tokens: Tokens;
  readonly comments: Tokens;
}

/** What a text is made of; undefined where something in it is no part of the language. Linear in the text. */
export function scan(text: string): Scan | undefined {
  const tokens: Tokens = { kinds: [], starts: [], ends: [] };
  const comments: Tokens = { kinds: [], starts: [], ends: [] };
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === SPACE || code === LINE_FEED) {
      at++;
      continue;
    }
    const mark = MARKS[code];
    if (mark !== undefined) {
      add(tokens, mark, at, at + 1);
      at++;
      continue;
    }
    const terminal = code >= SMALL_A && code <= SMALL_Z ? matching(WORD, text, at) : terminalAt(text, at);
    const end = terminal === undefined ? at + signAt(text, at).length : terminal.pattern.lastIndex;
    if (end === at) return undefined;
    if (terminal === WORD) add(tokens, KEYWORDS.get(text.slice(at, end)) ?? WORD.kind, at, end);
    else if (terminal === undefined) add(tokens, KEYWORDS.get(text.slice(at, end)) as number, at, end);
    else if (terminal.isComment) add(comments, terminal.kind, at, end);
    else if (!terminal.isSpace) add(tokens, terminal.kind, at, end);
    at = end;
  }
  add(tokens, END_OF_FILE, text.length, text.length);
  return { tokens, comments };
}

function add({ kinds, starts, ends }: Tokens, kind: number, start: number, end: number): void {
  kinds.push(kind);
  starts.push(start);
  ends.push(end);
}

interface Terminal {
  readonly kind: number;
  /** Tried at one place, and left behind what it matched. */
  readonly pattern: RegExp;
  readonly isSpace: boolean;
  readonly isComment: boolean;
}

/** In the order in which they are tried. */
const TERMINALS: readonly Terminal[] = Object.entries(DrillwrightTerminals).map(([name, { source }]) => ({
  kind: TOKENS.indexOf(name),
  pattern: new RegExp(source, "y"),
  isSpace: name === "WHITE_SPACE",
  isComment: name.endsWith("COMMENT"),
}));

const WORD = TERMINALS[0] as Terminal;

/** The words and signs of the grammar. */
const KEYWORDS = new Map(TOKENS.slice(0, WORD.kind).map((keyword, kind) => [keyword, kind] as const));

/** The longer ones first. */
const SIGNS = [...KEYWORDS.keys()].filter((keyword) => matching(WORD, keyword, 0) === undefined);

const COMMENT = "/*";

/** The kinds of signs of one character that nothing longer begins with, by their codes. */
const MARKS: readonly (number | undefined)[] = marks();

function marks(): (number | undefined)[] {
  const found: (number | undefined)[] = Array.from({ length: 256 });
  for (const sign of SIGNS) {
    const isAlone = sign.length === 1 && !COMMENT.startsWith(sign);
    if (isAlone && !SIGNS.some((other) => other !== sign && other.startsWith(sign))) {
      found[sign.charCodeAt(0)] = KEYWORDS.get(sign);
    }
  }
  return found;
}

const END_OF_FILE = TOKENS.indexOf("EOF");
const SPACE = 32;
const LINE_FEED = 10;
const SMALL_A = 97;
const SMALL_Z = 122;

function matching(terminal: Terminal, text: string, at: number): Terminal | undefined {
  terminal.pattern.lastIndex = at;
  return terminal.pattern.test(text) ? terminal : undefined;
}

function terminalAt(text: string, at: number): Terminal | undefined {
  for (const terminal of TERMINALS) if (matching(terminal, text, at) !== undefined) return terminal;
  return undefined;
}

/** Empty where there is none. */
function signAt(text: string, at: number): string {
  if (text.startsWith(COMMENT, at)) return ""; // it is not closed, and reaches to the end
  for (const sign of SIGNS) if (text.startsWith(sign, at)) return sign;
  return "";
}
