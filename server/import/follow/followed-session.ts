/** A session while its tables are being written. */
import type { ScoringInput } from "../../../shared/plan-model.ts";
import type { SessionData } from "../../../shared/session-data.ts";
import type { FileImport } from "../file-import.ts";
import { isPacked } from "../gunzip.ts";
import { SessionImport } from "../import-session.ts";
import { type GrowingFile, Tail } from "./tail.ts";

/** A table of the session. `path` is how findings and shots call it, `source` the name of the source that reads it. */
export interface FollowedTable {
  readonly path: string;
  readonly source: string;
  readonly file: GrowingFile;
}

/** SHA-256 of bytes that come one after the other. */
export interface Hash {
  update(bytes: Uint8Array): void;
  /** In lower-case hexadecimal, of what came so far; more may come. */
  soFar(): string;
}

interface Followed {
  readonly table: FollowedTable;
  readonly tail: Tail;
}

/**
 * Reads what is added to the tables of a session and nothing twice, as long as they only grow. A row counts when its line
 * has ended, so that half a number is never taken for a number. Where a table was emptied, rewritten or replaced,
 * everything is read again. A table that is not there yet has no shots.
 */
export class FollowedSession {
  readonly #input: ScoringInput;
  readonly #followed: readonly Followed[];
  readonly #newHash: () => Hash;
  #session: SessionImport;
  #files: readonly FileImport[] = [];
  #hashes: readonly Hash[] = [];

  constructor(input: ScoringInput, tables: readonly FollowedTable[], newHash: () => Hash) {
    this.#input = input;
    this.#newHash = newHash;
    this.#followed = tables.map((table) => ({ table, tail: new Tail(table.file) }));
    this.#session = new SessionImport(input);
    this.#begin();
  }

  /** Looks at all tables once. True where there is something new. */
  async look(): Promise<boolean> {
    const growths = await Promise.all(this.#followed.map(({ tail }) => tail.look()));
    if (growths.every(({ kind }) => kind === "unchanged")) return false;
    if (growths.some(({ kind }) => kind === "replaced" || kind === "gone")) {
      this.#begin();
      for (const [place, { tail }] of this.#followed.entries()) this.#push(place, await tail.whole());
    } else {
      for (const [place, growth] of growths.entries()) {
        if (growth.kind === "grown") this.#push(place, growth.added);
      }
    }
    return true;
  }

  /** The session as far as it was written. */
  data(): SessionData {
    for (const [place, file] of this.#files.entries()) file.hasHash(this.#hashes[place]?.soFar() ?? "");
    return this.#session.data();
  }

  /** The session as if nothing more would be written: a last row without a line end counts, too. */
  async settledData(): Promise<SessionData> {
    const session = new SessionImport(this.#input);
    for (const [place, { table, tail }] of this.#followed.entries()) {
      const file = session.open(table.path, table.source);
      const content = await tail.whole();
      if (content.length === 0) file.isMissing();
      else file.push(content);
      file.end(this.#hashes[place]?.soFar() ?? "");
    }
    return session.data();
  }

  #begin(): void {
    this.#session = new SessionImport(this.#input);
    this.#files = this.#followed.map(({ table }) =>
      this.#session.open(table.path, table.source, { isGrowing: true }),
    );
    this.#hashes = this.#followed.map(() => this.#newHash());
  }

  #push(place: number, bytes: Uint8Array): void {
    const file = this.#files[place];
    this.#hashes[place]?.update(bytes);
    if (isPacked(bytes)) {
      file?.isUnreadable(
        "A table that is packed cannot be followed while it is written. Score it without --follow.",
      );
    } else file?.push(bytes);
  }
}
