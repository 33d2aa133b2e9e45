/** What a project declares already, so that a proposal refers to it and declares nothing twice. */

import { fold, foldNumbered } from "../../../shared/fold.ts";
import type { Hand } from "../../../shared/plan-model.ts";
import type { ProposedColumn } from "./columns.ts";
import type { Form } from "./form.ts";

export interface ProjectDeclarations {
  readonly plans: readonly DeclaredPlan[];
  readonly players: readonly DeclaredPlayer[];
  readonly sources: readonly DeclaredSource[];
}

interface Declared {
  readonly name: string;
  /** Its file, as a `use` line of the proposal writes it. */
  readonly use: string;
}

export interface DeclaredPlan extends Declared {
  /** Names of its blocks. */
  readonly blocks: readonly string[];
}

export interface DeclaredPlayer extends Declared {
  readonly hand: Hand | null;
}

export interface DeclaredSource extends Declared {
  /** Null: found from the header. */
  readonly separator: Form["separator"];
  readonly decimal: Form["decimal"];
  readonly headerRow: number;
  readonly columns: readonly {
    readonly header: string;
    /** What it says of the column, as it is written: `club-path in ° positive right`. */
    readonly says: string;
  }[];
}

export const NOTHING_DECLARED: ProjectDeclarations = { plans: [], players: [], sources: [] };

/** The player of the project who is called so in a table. */
export function playerCalled(text: string, { players }: ProjectDeclarations): DeclaredPlayer | undefined {
  return players.find(({ name }) => foldNumbered(name) === foldNumbered(text));
}

/** The plans that have every block that a table names. Numbers name none: every plan has a first block. */
export function plansWith(blocks: Iterable<string>, { plans }: ProjectDeclarations): DeclaredPlan[] {
  const wanted = new Set([...blocks].map(foldNumbered));
  if (![...wanted].some((name) => /\p{L}/u.test(name))) return [];
  return plans.filter(({ blocks: declared }) => {
    const names = new Set(declared.map(foldNumbered));
    return [...wanted].every((name) => names.has(name));
  });
}

/**
 * The source that reads such a table: written in the same way, with all its columns there, and no more columns of the table
 * understood than twice as many. Undefined where there is none, or several read as much.
 */
export function sourceOf(
  form: Pick<Form, "separator" | "decimal" | "headerRow" | "names">,
  columns: readonly ProposedColumn[],
  { sources }: ProjectDeclarations,
): DeclaredSource | undefined {
  const headers = new Set(form.names.map(fold));
  const understood = columns.filter(({ meaning }) => meaning !== null && meaning.kind !== "order").length;
  const fitting = sources.filter(
    (source) =>
      (source.separator === null || source.separator === form.separator) &&
      source.decimal === form.decimal &&
      source.headerRow === form.headerRow &&
      source.columns.length > 0 &&
      source.columns.every(({ header }) => headers.has(fold(header))) &&
      2 * source.columns.length >= understood,
  );
  const most = Math.max(...fitting.map((source) => source.columns.length));
  const best = fitting.filter((source) => source.columns.length === most);
  return best.length === 1 ? best[0] : undefined;
}

/** Whether a source reads the columns of these headers. */
export function readsColumns(source: DeclaredSource, headers: readonly string[]): boolean {
  const read = new Set(source.columns.map(({ header }) => fold(header)));
  return headers.every((header) => read.has(fold(header)));
}

/** What a source of the project makes of the columns of a table. */
export function columnsBy(source: DeclaredSource, columns: readonly ProposedColumn[]): ProposedColumn[] {
  const says = new Map(source.columns.map((column) => [fold(column.header), column.says]));
  return columns.map(({ header, samples, meaning }) => {
    const said = says.get(fold(header)) ?? null;
    return {
      header,
      samples,
      says: said,
      meaning: said === null ? null : meaning,
      confidence: "sure",
      reasons: said === null ? [] : [`the source "${source.name}" says so`],
      settle: [],
      signs: [],
      units: [],
      sideTexts: [],
      foreignSides: new Map(),
      sidesIn: null,
      minus: null,
    };
  });
}
