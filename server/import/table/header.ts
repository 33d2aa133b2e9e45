/** The column names of a table, and where they stand. */

/** Finds columns by name: as written, else whatever the case, the spaces around and between, marks nobody sees, and the Unicode form. */
export class Header {
  readonly names: readonly string[];
  readonly #exact = new Map<string, number[]>();
  readonly #tolerant = new Map<string, number[]>();

  constructor(names: readonly string[]) {
    this.names = names;
    for (const [index, name] of names.entries()) {
      note(this.#exact, name, index);
      note(this.#tolerant, tolerant(name), index);
    }
  }

  /** Positions of the columns of that name, from 0: none, one, or several where the name stands more than once. */
  find(name: string): readonly number[] {
    return this.#exact.get(name) ?? this.#tolerant.get(tolerant(name)) ?? [];
  }
}

function note(positions: Map<string, number[]>, name: string, index: number): void {
  const known = positions.get(name);
  if (known === undefined) positions.set(name, [index]);
  else known.push(index);
}

function tolerant(name: string): string {
  return name
    .replace(/\p{Cf}/gu, "")
    .normalize("NFC")
    .trim()
    .replace(/\s+/g, " ")
    .toLowerCase();
}
