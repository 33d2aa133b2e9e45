/** How parts of a text are made to stand out. Never the only sign of anything: what matters is said in words too. */

type Paint = (text: string) => string;

export interface Palette {
  readonly strong: Paint;
  readonly faint: Paint;
  /** All is well. */
  readonly good: Paint;
  /** Something to look at, or not known yet. */
  readonly open: Paint;
  /** Something is wrong. */
  readonly bad: Paint;
}

const same: Paint = (text) => text;

/** Text as it is. */
export const PLAIN: Palette = { strong: same, faint: same, good: same, open: same, bad: same };

/** The terminal's own colours, by the codes of ECMA-48. */
export const TERMINAL: Palette = {
  strong: paint(1, 22),
  faint: paint(2, 22),
  good: paint(32, 39),
  open: paint(33, 39),
  bad: paint(31, 39),
};

function paint(on: number, off: number): Paint {
  return (text) => (text === "" ? "" : `\u001b[${on}m${text}\u001b[${off}m`);
}
