/** What stands between two cells. */

/**
 * In the order in which they are preferred where they fit equally well, which is all of them where there is one column: the
 * first, since no number holds it.
 */
export const SEPARATORS = { tab: "\t", semicolon: ";", comma: ",", pipe: "|" } as const;

export type SeparatorName = keyof typeof SEPARATORS;
