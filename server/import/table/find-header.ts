/** Which line of a delimited table holds the column names, and what stands between them. */
import type { Source } from "../../../shared/plan-model.ts";
import { list, quote } from "../finding.ts";
import { gapsIn } from "./aligned.ts";
import { Header } from "./header.ts";
import { type Parting, recordReader, SEPARATORS, type SeparatorName } from "./separators.ts";

/** How many lines are searched for the header when it does not stand where the source says. */
const HEADER_SEARCH = 50;

export interface HeaderReading extends Parting {
  readonly header: Header;
  /** How many of the wanted headers are in it. */
  readonly found: number;
}

/** Every header the source speaks of, once. */
export function wantedHeaders(source: Source): string[] {
  const names = source.columns.flatMap(({ header, content }) =>
    content.kind === "metric" && content.sidesIn !== null ? [header, content.sidesIn] : [header],
  );
  return [...new Set(source.orderedBy === null ? names : [...names, source.orderedBy])];
}

/** The text from the given line on, from 1; undefined where there is no such line. */
export function fromLine(lines: string, line: number): string | undefined {
  let start = 0;
  for (let passed = 1; passed < line; passed++) {
    const end = lines.indexOf("\n", start);
    if (end < 0) return undefined;
    start = end + 1;
  }
  return lines.slice(start);
}

/** The header under the separator the source states, or the one under which most of its columns are found. */
export function likeliestHeader(body: string, source: Source, wanted: readonly string[]): HeaderReading {
  const readingBy = (separator: SeparatorName): HeaderReading => {
    const plain = { separator, gaps: separator === "spaces" ? gapsIn(body) : [], isWrapped: false };
    const [line = "", ...others] = firstRecord(body, plain);
    const isWrapped = others.length === 0 && separator !== "spaces" && line.includes(SEPARATORS[separator]);
    const parting = { ...plain, isWrapped };
    const header = new Header(firstRecord(body, parting));
    return { ...parting, header, found: wanted.filter((name) => header.find(name).length > 0).length };
  };
  if (source.separator !== null) return readingBy(source.separator);
  const marks = Object.keys(SEPARATORS) as (keyof typeof SEPARATORS)[];
  const best = marks.map(readingBy).reduce((best, next) => {
    const more = next.found - best.found || next.header.names.length - best.header.names.length;
    return more > 0 ? next : best;
  });
  if (best.found === wanted.length) return best;
  // Spaces stand in names and cells, too: they are the last to be thought of.
  const aligned = readingBy("spaces");
  return aligned.found > best.found ? aligned : best;
}

/** The first record of a text; none where a quotation mark is never closed: another separator may fit. */
function firstRecord(body: string, parting: Parting): string[] {
  let first: readonly string[] | undefined;
  const reader = recordReader(parting, 1, ({ cells }) => {
    first ??= cells;
  });
  for (let start = 0; first === undefined && start < body.length; ) {
    const feed = body.indexOf("\n", start);
    const end = feed < 0 ? body.length : feed + 1;
    reader.push(body.slice(start, end));
    start = end;
  }
  reader.end();
  return (first ?? []).map((name) => name.trim());
}

/** Why the line the source names holds no header, and where one is. `lines` is the beginning of the file. */
export function whyNoHeader(
  lines: string,
  header: Header,
  source: Source,
  wanted: readonly string[],
): string {
  const body = fromLine(lines, source.headerRow) ?? "";
  const expected = `Line ${source.headerRow} should hold the column names ${list(wanted)}`;
  const end = body.indexOf("\n");
  const line = end < 0 ? body : body.slice(0, end);
  const there =
    body === ""
      ? "the file ends before it"
      : line.trim() === ""
        ? "it is blank"
        : header.names.length > 1
          ? `it holds ${list(header.names)}`
          : `it reads ${quote(line)}`;
  return `${expected}, but ${there}. ${whereElse(lines, source, wanted)}`;
}

/** Looks for the column names on other lines. */
function whereElse(lines: string, source: Source, wanted: readonly string[]): string {
  let best = { line: 0, found: 0 };
  const candidates = lines.split("\n", HEADER_SEARCH);
  for (const [index, text] of candidates.entries()) {
    const { found } = likeliestHeader(text, source, wanted);
    if (found > best.found) best = { line: index + 1, found };
  }
  return best.found > 0
    ? `Line ${best.line} holds ${best.found === wanted.length ? "them" : `${best.found} of them`}: write \`header row ${best.line}\` in source ${quote(source.name)}.`
    : `Check that this file is the one source ${quote(source.name)} is for.`;
}
