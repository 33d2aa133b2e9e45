/** Which side a column's name calls positive, or negative: `+ = right`, `L-/R+`, `left is negative`, `open positive`. */

export interface StatedSide {
  /** The word for the side that is called positive, as it is written there: `right`, `r`, `in-to-out`. */
  readonly positive: string | undefined;
  /** The one that is called negative, where that is all that is said. */
  readonly negative: string | undefined;
}

const SIDE = String.raw`(?<side>(?<![\p{L}\p{N}]|\p{L}-)(?:in-to-out|out-to-in|in-out|out-in|left|right|up|down|in|out|open|closed|toe|heel|high|low|ahead|behind|before|after|draw|fade|push|pull|rechts|links|re|li|[lrudiocthab])(?![\p{L}\p{N}]|-\p{L}))`;
const PLUS = String.raw`(?<plus>\+(?:ve\b)?(?!\s*\d)|\bpos(?:itive\b|\.|\b)|\bplus\b)`;
const MINUS = String.raw`(?<minus>[-−–](?:ve\b|(?=\s*(?:=|is\b)))|(?<=(?:=|\bis)\s*)[-−–]|\bneg(?:ative\b|\.|\b)|\bminus\b)`;
/** A dash may be a sign, or part the words of a name; one between two letters is a hyphen. */
const DASH = String.raw`(?<dash>(?<![\p{L}\p{N}])[-−–](?!\s*\d)|[-−–](?![\p{L}\p{N}]))`;
const TOKENS = new RegExp([MINUS, SIDE, PLUS, DASH].join("|"), "giu");

/** Other words for the sides than the language has. */
const SAME_SIDES: Readonly<Record<string, string>> = {
  before: "behind",
  after: "ahead",
  rechts: "right",
  links: "left",
  re: "right",
  li: "left",
  "in-out": "in-to-out",
  "out-in": "out-to-in",
};

interface Token {
  readonly side: string | undefined;
  readonly sign: "+" | "-" | undefined;
  readonly isDash: boolean;
  readonly start: number;
  readonly end: number;
}

function tokensOf(text: string): Token[] {
  return [...text.matchAll(TOKENS)].map(({ 0: found, index, groups = {} }) => ({
    side: groups.side?.toLowerCase(),
    sign: groups.plus !== undefined ? "+" : groups.side === undefined ? "-" : undefined,
    isDash: groups.dash !== undefined,
    start: index,
    end: index + found.length,
  }));
}

/** Sides and signs in pairs, each of one side beside one sign; undefined where they cannot be paired in one way only. */
function pairsOf(tokens: readonly Token[], text: string): { side: string; sign: "+" | "-" }[] | undefined {
  if (tokens.length !== 2 && tokens.length !== 4) return undefined;
  const pairs: { side: string; sign: "+" | "-" }[] = [];
  for (let at = 0; at < tokens.length; at += 2) {
    const both = tokens.slice(at, at + 2);
    const side = both.find((token) => token.side !== undefined)?.side;
    const sign = both.find((token) => token.sign !== undefined)?.sign;
    if (side === undefined || sign === undefined || !areBeside(both, text)) return undefined;
    pairs.push({ side, sign });
  }
  const [one, other] = pairs;
  return other !== undefined && (one?.side === other.side || one?.sign === other.sign) ? undefined : pairs;
}

/** Words that may stand between a side and its sign. */
const SMALL_WORDS = /\b(?:is|are|to|the|means?|values?|numbers?|when|if|for|of|ball|target)\b/gi;

/** Whether nothing that means something stands between two tokens: of `+H -L`, L is not beside the plus. */
function areBeside([one, other]: readonly Token[], text: string): boolean {
  if (one === undefined || other === undefined) return false;
  const between =
    one.end <= other.start ? text.slice(one.end, other.start) : text.slice(other.end, one.start);
  return !/[\p{L}\p{N}]/u.test(between.replace(SMALL_WORDS, ""));
}

/** Without the sides that stand alone: the side of `Low point + ahead` is ahead. */
function withoutNames(tokens: readonly Token[], text: string): Token[] {
  const isBeside = (token: Token) =>
    tokens.some((other) => other !== token && areBeside([token, other], text));
  return tokens.filter((token) => token.sign !== undefined || isBeside(token));
}

/**
 * What a text says of sides; undefined where it says nothing, or nothing clear. In a remark of its own (`left -`) a dash is
 * a minus; in a name it is one only beside a plus, since it may part words (`Miss - left`).
 */
export function statedSide(text: string, isRemark: boolean): StatedSide | undefined {
  const all = tokensOf(text);
  const tokens = withoutNames(all, text);
  const pairs =
    (isRemark || tokens.length === 4 ? pairsOf(tokens, text) : undefined) ??
    pairsOf(
      withoutNames(
        all.filter(({ isDash }) => !isDash),
        text,
      ),
      text,
    );
  if (pairs === undefined) return undefined;
  const called = (sign: "+" | "-") => {
    const side = pairs.find((pair) => pair.sign === sign)?.side;
    return side === undefined ? undefined : (SAME_SIDES[side] ?? side);
  };
  return { positive: called("+"), negative: called("-") };
}

/** The text without what it says of sides. */
export function withoutSides(text: string, isRemark: boolean): string {
  if (statedSide(text, isRemark) === undefined) return text;
  return cut(text, withoutNames(tokensOf(text), text)).replace(/\b(?:is|are|to the)\b/gi, " ");
}

/** The text without signs: a name that is nothing but sides, such as `High+ / Low-`, is named for them. */
export function withoutSigns(text: string): string {
  return cut(
    text,
    tokensOf(text).filter(({ sign }) => sign !== undefined),
  );
}

function cut(text: string, tokens: readonly Token[]): string {
  return tokens.reduceRight((rest, { start, end }) => `${rest.slice(0, start)} ${rest.slice(end)}`, text);
}
