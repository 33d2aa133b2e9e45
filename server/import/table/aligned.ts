/** Tables whose cells stand under each other, with spaces between them, as terminals and mails show them. */

/** Between two columns: from the place `start`, from 0, to before `end`. */
export interface Gap {
  readonly start: number;
  readonly end: number;
}

const RULE = /^[-=_+|─━═\s]*$/;

/** How many lines under the column names are looked at, and how many of them may cross a gap. */
const MOST_LINES = 200;
const CROSSING = 0.05;

/**
 * The gaps between the columns of the table whose names stand in the first line: where there is a space in that line and,
 * narrower, in those under it. One space in the first line may stand in the middle of a name: it parts two columns where
 * something stands under both of them. None where there is one column, or another mark parts the names.
 */
export function gapsIn(text: string): Gap[] {
  const [header = "", ...under] = text.split("\n", MOST_LINES).map((line) => plainSpaces(line).trimEnd());
  if (header.includes("\t")) return [];
  const rows = rowsUnder(header, under);
  const gaps = spacesIn(header).flatMap((space) => {
    const gap = widest(space, rows);
    const isBetween = space.start > 0 || hasNumbersOfRows(rows, gap);
    if (gap === undefined) return space.end - space.start > 1 && space.start > 0 ? space : [];
    return isBetween ? gap : [];
  });
  const between = gaps.filter(
    (gap, at) =>
      headerSpace(header, gap) > 1 ||
      (isFilled(rows, gaps[at - 1]?.end ?? 0, gap.start) && isFilled(rows, gap.end, gaps[at + 1]?.start)),
  );
  const isMarked = between.some(({ start }) => /[,;|]\s*$/.test(header.slice(0, start)));
  return isMarked ? [] : between;
}

/** How many parts a line has that are more than one space apart: prose is of one. */
function partsIn(line: string): number {
  return line.trim().split(/ {2,}/).length;
}

/**
 * The cells of a line. Where it crosses most of the gaps, or one without leaving one place for a cut, or is prose, and two
 * spaces or more part it into as many cells as there are columns, those; else, and where only the first says anything, it is
 * one cell: a remark, or nobody can tell what stands where.
 */
export function cellsIn(line: string, gaps: readonly Gap[]): string[] {
  const cells: string[] = [];
  let start = 0;
  let crossed = 0;
  const isProse = partsIn(plainSpaces(line)) === 1;
  for (const gap of gaps) {
    const cut = cutIn(line, gap);
    if (line.slice(gap.start, gap.end).trim() !== "") crossed++;
    if (cut === undefined || crossed > (isProse ? 0 : gaps.length / 2))
      return byWideSpaces(line, gaps.length + 1);
    cells.push(line.slice(start, cut).trim());
    start = cut;
  }
  cells.push(line.slice(start).trim());
  return cells.slice(1).every((cell) => cell === "") ? cells.slice(0, 1) : cells;
}

/** A line of more dashes than columns that hold no reading would have: it parts, and is no row. */
export function isRuleAcross(line: string, gaps: readonly Gap[]): boolean {
  if (!RULE.test(line)) return false;
  const columns = gaps.map(({ start }, at) => start - (gaps[at - 1]?.end ?? 0));
  const width = columns.reduce((sum, column) => sum + column, 0);
  return line.replace(/\s+/g, "").length > Math.max(2, width);
}

/** The lines that may be rows: up to a blank one all, and beyond it those of about as many parts; where names are wide apart, no prose. */
function rowsUnder(header: string, under: readonly string[]): string[] {
  const blank = under.indexOf("");
  const width = partsIn(header);
  return under.filter((line, at) => {
    if (RULE.test(line) || line === header) return false;
    if (width > 1 && partsIn(line) === 1) return false;
    return blank < 0 || at < blank || (width > 1 && Math.abs(partsIn(line) - width) <= 1);
  });
}

function plainSpaces(text: string): string {
  return text.replace(/[^\S\t]/g, " ");
}

/** Where spaces stand in the names, those in front of them included. */
function spacesIn(header: string): Gap[] {
  return [...header.trimEnd().matchAll(/ +/g)].map(({ 0: spaces, index }) => ({
    start: index,
    end: index + spaces.length,
  }));
}

/** The widest part of a space in which there is one in the rows, too; undefined where there is none. */
function widest({ start, end }: Gap, rows: readonly string[]): Gap | undefined {
  let best: Gap | undefined;
  let from = start;
  for (let at = start; at <= end; at++) {
    const crossing = at === end ? rows.length + 1 : rows.filter((line) => (line[at] ?? " ") !== " ").length;
    if (crossing <= CROSSING * rows.length) continue;
    if (at > from && at - from > (best === undefined ? 0 : best.end - best.start))
      best = { start: from, end: at };
    from = at + 1;
  }
  return best;
}

/** Whether what stands left of the first name is another on every row, as numbers of rows are. */
function hasNumbersOfRows(rows: readonly string[], gap: Gap | undefined): boolean {
  const numbers = rows.map((line) => line.slice(0, gap?.start ?? 0).trim());
  return rows.length > 1 && numbers.every((text) => text !== "") && new Set(numbers).size === rows.length;
}

function headerSpace(header: string, { start, end }: Gap): number {
  const before = header.slice(0, start).trimEnd().length;
  return header.length - header.slice(end).trimStart().length - before;
}

function isFilled(rows: readonly string[], start: number, end: number | undefined): boolean {
  return rows.some((line) => line.slice(start, end).trim() !== "");
}

/** Where in a gap the line may be cut: undefined where it has no space there, or several. */
function cutIn(line: string, { start, end }: Gap): number | undefined {
  const between = plainSpaces(line.slice(start, end));
  if (between.trim() === "") return start;
  const spaces = [...between.matchAll(/ +/g)];
  const [space] = spaces;
  return spaces.length === 1 && space !== undefined ? start + space.index : undefined;
}

function byWideSpaces(line: string, columns: number): string[] {
  const cells = plainSpaces(line).trim().split(/ {2,}/);
  return cells.length === columns ? cells : [line.trim()];
}
