/** Places in files as people read and editors open them. */
import type { Location } from "../../shared/plan-model.ts";
import type { Row } from "../../shared/session-data.ts";

/** `plans/irons.drill:14` */
export function placeOf({ file, range }: Location): string {
  return `${file}:${range.start.line + 1}`;
}

/** `line 14` for a place in the file that is spoken of, else with the file it is in. */
export function placeIn(file: string, location: Location): string {
  return location.file === file ? `line ${location.range.start.line + 1}` : placeOf(location);
}

/**
 * Rows of data files in the order given, at most so many stretches: `data/p-07.csv:14, 17–19, 22 and 5 more`. Rows that
 * follow each other are one stretch, and a file is named where its rows begin. Empty for no rows.
 */
export function rowsText(rows: readonly Row[], most: number): string {
  const all = stretches(rows);
  const shown = all.slice(0, most);
  const texts = shown.map(({ file, first, last }, index) => {
    const lines = first === last ? `${first}` : `${first}–${last}`;
    return shown[index - 1]?.file === file ? lines : `${file}:${lines}`;
  });
  const more = all.slice(most).reduce((sum, { first, last }) => sum + Math.abs(last - first) + 1, 0);
  return more > 0 ? `${texts.join(", ")} and ${more} more` : texts.join(", ");
}

/** Lines from `first` to `last` of a file. Where the last shot comes first, the lines count down. */
interface Stretch {
  readonly file: string;
  readonly first: number;
  last: number;
}

function stretches(rows: readonly Row[]): Stretch[] {
  const found: Stretch[] = [];
  for (const { file, line } of rows) {
    const current = found.at(-1);
    if (current !== undefined && current.file === file && continues(current, line)) current.last = line;
    else found.push({ file, first: line, last: line });
  }
  return found;
}

/** Whether a line goes on in the direction of the stretch; one line alone goes either way. */
function continues({ first, last }: Stretch, line: number): boolean {
  const step = line - last;
  return Math.abs(step) === 1 && (first === last || Math.sign(last - first) === step);
}
