/** The tables of a session, as places in the order of its shots. */
import type { Session } from "../../../shared/plan-model.ts";
import type { Hit } from "../cells/hits.ts";

/** A shot by its line in the table and its place among all shots, from 0. */
export interface TableShot {
  readonly line: number;
  readonly position: number;
}

export class Tables {
  /** For each table that has shots, in the order the session names them, its shots from the top of the file. */
  readonly shots: readonly (readonly TableShot[])[];
  readonly #places = new Map<string, number>();
  readonly #written: ReadonlyMap<string, string>;
  readonly #located: ReadonlyMap<string, string>;

  constructor(hits: readonly Hit[], { data }: Pick<Session, "data">, files: readonly string[]) {
    const shots: TableShot[][] = [];
    for (const [position, { row }] of hits.entries()) {
      let place = this.#places.get(row.file);
      if (place === undefined) {
        place = shots.length;
        this.#places.set(row.file, place);
        shots.push([]);
      }
      shots[place]?.push({ line: row.line, position });
    }
    for (const lines of shots) lines.sort((one, other) => one.line - other.line);
    this.shots = shots;
    const pairs = data.flatMap(({ path }, place) => {
      const file = files[place];
      return file === undefined ? [] : [[path, file] as const];
    });
    this.#located = new Map(pairs);
    this.#written = new Map(pairs.map(([path, file]) => [file, path]));
  }

  /** The place in `shots` of the table that the session writes so; undefined where it has no shots, or is none. */
  placeOf(written: string): number | undefined {
    return this.#places.get(this.#located.get(written) ?? written);
  }

  /** Whether the session has one table, which nobody need name. */
  get isOne(): boolean {
    return this.shots.length <= 1 && this.#written.size <= 1;
  }

  /** How the session writes the path of a file. */
  writtenPath(file: string): string {
    return this.#written.get(file) ?? file;
  }
}
