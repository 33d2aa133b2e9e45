/** What a text may be at most to be read. */

/** Longest text, in UTF-16 code units. The syntax tree takes many times as much memory. */
export const LONGEST_TEXT = 1_000_000;

/** Most operators of one formula. Each makes the tree deeper, and looking up a name costs the depth it stands at. */
export const MOST_OPERATORS = 200;

/** Deepest nesting of rules. Only brackets in formulas nest, three rules each. */
export const DEEPEST = 200;

/** Thrown out of the parser where a text is more than it should take on. */
export class TooComplex extends Error {}
