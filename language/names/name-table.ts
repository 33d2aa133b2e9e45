/** The names one file declares. */
import type { AstNode } from "langium";
import {
  Club,
  Curriculum,
  Dimension,
  type Document,
  Drill,
  Finding,
  Instrument,
  isDimension,
  Metric,
  Plan,
  Player,
  Session,
  Source,
  UnitName,
  Window,
} from "../generated/tree/ast.ts";

/** The types of declaration that other places refer to by name. */
export const NAMED_TYPES = [
  Club.$type,
  Curriculum.$type,
  Dimension.$type,
  Drill.$type,
  Finding.$type,
  Instrument.$type,
  Metric.$type,
  Plan.$type,
  Player.$type,
  Session.$type,
  Source.$type,
  UnitName.$type,
  Window.$type,
] as const;

export type NamedType = (typeof NAMED_TYPES)[number];
export type NamedNode =
  | Club
  | Curriculum
  | Dimension
  | Drill
  | Finding
  | Instrument
  | Metric
  | Plan
  | Player
  | Session
  | Source
  | UnitName
  | Window;

/** Declarations by type and name, in the order they stand in the file; more than one where a name is declared twice. */
export class NameTable {
  private readonly byType = new Map<string, Map<string, NamedNode[]>>();

  add(node: NamedNode): void {
    let names = this.byType.get(node.$type);
    if (names === undefined) {
      names = new Map();
      this.byType.set(node.$type, names);
    }
    const nodes = names.get(node.name);
    if (nodes === undefined) names.set(node.name, [node]);
    else nodes.push(node);
  }

  get(type: string, name: string): readonly NamedNode[] {
    return this.byType.get(type)?.get(name) ?? [];
  }

  *all(type?: string): Iterable<NamedNode> {
    const maps = type === undefined ? this.byType.values() : [this.byType.get(type) ?? new Map()];
    for (const names of maps) for (const nodes of names.values()) yield* nodes;
  }
}

const tables = new WeakMap<AstNode, NameTable>();

/** The names of a parsed file. Built once for each parse; linear in the declarations. */
export function nameTableOf(root: Document): NameTable {
  let table = tables.get(root);
  if (table === undefined) {
    table = buildTable(root);
    tables.set(root, table);
  }
  return table;
}

function buildTable(root: Document): NameTable {
  const table = new NameTable();
  for (const declaration of root.declarations ?? []) {
    if (declaration.name) table.add(declaration);
    if (!isDimension(declaration)) continue;
    for (const unit of declaration.units) for (const name of unit.names) if (name.name) table.add(name);
  }
  return table;
}
