/** Where the columns that a source speaks of stand in a table. */

import { nearest } from "../../shared/nearest.ts";
import type { Column, ScoringInput, Source } from "../../shared/plan-model.ts";
import { list, quote, type Report } from "./finding.ts";
import { wantedHeaders } from "./table/find-header.ts";
import type { Header } from "./table/header.ts";

type Content<Kind> = Extract<Column["content"], { kind: Kind }>;

/** A column of the source with its place in the rows, from 0. `header` is its name as the table writes it. */
export interface Bound<Kind extends Column["content"]["kind"]> {
  readonly index: number;
  readonly header: string;
  readonly content: Content<Kind>;
}

/** `side` is the place of the column that names the side of each reading; null where there is none. */
export interface BoundMetric extends Bound<"metric"> {
  readonly side: number | null;
}

export interface Columns {
  readonly metrics: readonly BoundMetric[];
  readonly categories: readonly Bound<"category">[];
  readonly clubs: readonly Bound<"club">[];
  readonly blocks: readonly Bound<"block">[];
  readonly players: readonly Bound<"player">[];
  readonly dates: readonly Bound<"date">[];
  readonly sessions: readonly Bound<"session">[];
  readonly times: readonly Bound<"time">[];
  readonly exclusions: readonly Bound<"exclusion">[];
  /** The column that gives the order of the shots. */
  readonly order: { readonly index: number; readonly header: string } | null;
}

/** Whose shots are read. */
type Owner = Pick<ScoringInput["player"], "name" | "hand">;

/**
 * Finds every column of the source in the header. Undefined where that cannot be done: each name that is missing or
 * stands more than once is reported as an error, and so is a column whose sign depends on a hand nobody stated.
 */
export function bindColumns(
  header: Header,
  source: Source,
  player: Owner,
  report: Report,
): Columns | undefined {
  const names = wantedHeaders(source);
  const places = new Map(names.map((name) => [name, placeOf(name, header, source, report)]));
  const handed = source.columns.filter(
    ({ content }) => content.kind === "metric" && content.positive?.handed === true,
  );
  if (player.hand === null && handed.length > 0) {
    report({
      code: "hand-missing",
      severity: "error",
      ...(handed.length === 1 && handed[0] ? { column: handed[0].header } : {}),
      message: `What is positive in ${list(handed.map((column) => column.header))} depends on the side the player swings from. ${stateHand(player)}`,
    });
    return undefined;
  }
  const bound = source.columns.flatMap(({ header: name, content }) => {
    const place = places.get(name);
    return place === undefined ? [] : [{ ...place, content }];
  });
  const order = source.orderedBy === null ? null : places.get(source.orderedBy);
  if ([...places.values()].includes(undefined) || order === undefined) return undefined;
  return {
    metrics: bound.filter(isBound("metric")).map((column) => {
      const { sidesIn } = column.content;
      return { ...column, side: sidesIn === null ? null : (places.get(sidesIn)?.index ?? null) };
    }),
    categories: bound.filter(isBound("category")),
    clubs: bound.filter(isBound("club")),
    blocks: bound.filter(isBound("block")),
    players: bound.filter(isBound("player")),
    dates: bound.filter(isBound("date")),
    sessions: bound.filter(isBound("session")),
    times: bound.filter(isBound("time")),
    exclusions: bound.filter(isBound("exclusion")),
    order,
  };
}

/** What to write so that readings whose sign depends on the hand can be read. */
export function stateHand(player: Owner): string {
  return `Write \`right-handed\` or \`left-handed\` in player ${quote(player.name)}.`;
}

function isBound<Kind extends Column["content"]["kind"]>(kind: Kind) {
  return (column: { content: Column["content"] }): column is Bound<Kind> => column.content.kind === kind;
}

function placeOf(
  name: string,
  header: Header,
  source: Source,
  report: Report,
): { index: number; header: string } | undefined {
  const [index, second] = header.find(name);
  if (index === undefined) {
    const meant = nearest(name, header.names)[0] ?? longer(name, header.names);
    const advice = `${meant === undefined ? "" : `Did you mean ${quote(meant)}? `}It has ${list(header.names)}.`;
    report({
      code: "column-missing",
      severity: "error",
      line: source.headerRow,
      column: name,
      message: `The table has no column ${quote(name)}, which source ${quote(source.name)} reads. ${advice}`,
    });
    return undefined;
  }
  if (second !== undefined) {
    const count = header.find(name).length;
    report({
      code: "column-ambiguous",
      severity: "error",
      line: source.headerRow,
      column: name,
      message: `The table has ${count} columns named ${quote(name)}, so which of them source ${quote(source.name)} means cannot be told. Rename one, or export the table without it.`,
    });
    return undefined;
  }
  return { index, header: header.names[index] ?? name };
}

/** A name with something added, as a unit in brackets. */
function longer(name: string, names: readonly string[]): string | undefined {
  const start = name.trim().toLowerCase();
  return names.find((candidate) => candidate.trim().toLowerCase().startsWith(start));
}
