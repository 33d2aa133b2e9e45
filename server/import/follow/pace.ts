/** How often tables that may be written are looked at, in milliseconds. */
export const PACE = 250;

/** After so many looks without a change nobody is writing any more, and a last row without a line end counts. */
export const SETTLED = 8;
