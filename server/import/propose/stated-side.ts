/** Which side a column's name calls positive, or negative: `+ = right`, `L-/R+`, `left is negative`, `open positive`. */

export interface StatedSide {
  /** The word for the side that is called positive, as it is written there: `right`, `r`, `in-to-out`. */
  readonly positive: string | undefined;
  /** The one that is called negative, where that is all that is said. */
  readonly negative: string | undefined;
}

const SIDE = String.raw`(?<side>(?<![\p{L}\p{N}]|\p{L}-)(?:in-to-out|out-to-in|in-out|out-in|left|right|up|down|in|out|open|closed|toe|heel|high|low|ahead|behind|before|after|draw|fade|push|pull|rechts|links|[lrudioc])(?![\p{L}\p{N}]|-\p{L}))`;
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

/** Sides and signs in pairs, each of one side and one sign; undefined where they cannot be paired in one way only. */
function pairsOf(tokens: readonly Token[]): { side: string; sign: "+" | "-" }[] | undefined {
  if (tokens.length !== 2 && tokens.length !== 4) return undefined;
  const pairs: { side: string; sign: "+" | "-" }[] = [];
  for (let at = 0; at < tokens.length; at += 2) {
    const both = tokens.slice(at, at + 2);
    const side = both.find((token) => token.side !== undefined)?.side;
    const sign = both.find((token) => token.sign !== undefined)?.sign;
    if (side === undefined || sign === undefined) return undefined;
    pairs.push({ side, sign });
  }
  const [one, other] = pairs;
  return other !== undefined && (one?.side === other.side || one?.sign === other.sign) ? undefined : pairs;
}

/** Whether nothing but a few small words stands between a side and another token: the side of `Low point + ahead` is ahead. */
function isBesideAny({ start, end }: Token, tokens: readonly Token[], text: string): boolean {
  return tokens.some((other) => {
    if (other.start === start) return false;
    const between = other.start >= end ? text.slice(end, other.start) : text.slice(other.end, start);
    return !/[\p{L}\p{N}]/u.test(between.replace(/\b(?:is|are|to|the)\b/gi, ""));
  });
}

/**
 * What a text says of sides; undefined where it says nothing, or nothing clear. In a remark of its own (`left -`) a dash is
 * a minus; in a name it is one only beside a plus, since it may part words (`Miss - left`).
 */
export function statedSide(text: string, isRemark: boolean): StatedSide | undefined {
  const tokens = tokensOf(text);
  const firm = tokens.filter(({ isDash }) => !isDash);
  const pairs =
    (isRemark || tokens.length === 4 ? pairsOf(tokens) : undefined) ??
    pairsOf(firm) ??
    pairsOf(firm.filter((token) => token.sign !== undefined || isBesideAny(token, firm, text)));
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
  const tokens = tokensOf(text).filter(
    (token, _, all) => token.sign !== undefined || isBesideAny(token, all, text),
  );
  return cut(text, tokens).replace(/\b(?:is|are|to the)\b/gi, " ");
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
