/** Findings about one data file, collected while it is read. */
import { plural } from "../../shared/plural.ts";
import type { DataFinding } from "../../shared/session-data.ts";

/** A finding before the file it is in is known. What it is not about may be left out. */
export interface Problem {
  readonly code: DataFinding["code"];
  readonly severity: DataFinding["severity"];
  readonly line?: number;
  readonly column?: string;
  readonly text?: string;
  readonly message: string;
  /** How many findings this stands for, of which nothing more than the number is wanted; left out, it is one. */
  readonly times?: number;
}

/** Takes note of a problem; reading goes on. */
export type Report = (problem: Problem) => void;

/** How many findings of one kind about one column are listed; the others are counted. */
export const MOST_LISTED = 200;

/** Collects what is found in the files of a session, and keeps the list bounded whatever is in them. */
export class Findings {
  readonly #listed: DataFinding[] = [];
  /** The files in the order in which they were spoken of first. */
  readonly #files = new Set<string>();
  readonly #counts = new Map<string, { readonly first: DataFinding; count: number }>();

  /** The same findings, to be added to without changing these. */
  copy(): Findings {
    const copy = new Findings();
    copy.#listed.push(...this.#listed);
    for (const file of this.#files) copy.#files.add(file);
    for (const [key, counted] of this.#counts) copy.#counts.set(key, { ...counted });
    return copy;
  }

  /** A report about this file. */
  about(file: string): Report {
    this.#files.add(file);
    return (problem) => this.#add(problem, file);
  }

  /** File after file, all that is listed, and for each kind that had more than that how many there are. */
  list(): DataFinding[] {
    const counted = [...this.#counts.values()].filter(({ count }) => count > MOST_LISTED);
    const summaries = counted.map(({ first, count }) => summary(first, count - MOST_LISTED));
    const byFile = Map.groupBy([...this.#listed, ...summaries], ({ file }) => file);
    return [...this.#files].flatMap((file) => byFile.get(file) ?? []);
  }

  #add({ code, severity, line, column, text, message, times = 1 }: Problem, file: string): void {
    const key = JSON.stringify([file, code, column]);
    const counted = this.#counts.get(key);
    if (counted !== undefined && severity !== "error") {
      counted.count += times;
      if (counted.count > MOST_LISTED) return;
    }
    const finding: DataFinding = {
      code,
      severity,
      file,
      line: line ?? null,
      column: column ?? null,
      text: text === undefined ? null : clip(text),
      message,
    };
    if (counted === undefined) this.#counts.set(key, { first: finding, count: times });
    this.#listed.push(finding);
  }
}

function summary({ code, severity, file, column }: DataFinding, more: number): DataFinding {
  const where = column === null ? "" : ` in column ${quote(column)}`;
  const message = `${plural(more, "more finding")} like the ${MOST_LISTED} listed (${code})${where} ${more === 1 ? "is" : "are"} not listed.`;
  return { code, severity, file, line: null, column, text: null, message, count: more };
}

const LONGEST_TEXT = 60;
const LONGEST_LIST = 12;

/** The text on one line, cut to a length that fits into a message. */
export function clip(text: string): string {
  const start = text.slice(0, 4 * LONGEST_TEXT).replace(/\s+/g, " ");
  return start.length <= LONGEST_TEXT ? start : `${start.slice(0, LONGEST_TEXT - 1)}…`;
}

/** The text in quotation marks, cut. */
export function quote(text: string): string {
  return `"${clip(text)}"`;
}

/** Names for a message: `"Carry", "Side" and 3 more`. Empty names are left out. */
export function list(names: readonly string[]): string {
  const stated = names.filter((name) => name.trim() !== "");
  const shown = stated.slice(0, LONGEST_LIST).map(quote);
  const rest = stated.length - shown.length;
  return rest > 0 ? `${shown.join(", ")} and ${rest} more` : shown.join(", ");
}
