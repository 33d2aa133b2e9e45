/** Reads tables in memory as those on disk are read. */
import { SessionImport } from "../../server/import/import-session.ts";
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { SessionData } from "../../shared/session-data.ts";

/** A table as it was found where the session points. */
export interface ImportedFile {
  /** How findings and shots call the file. */
  readonly path: string;
  /** Name of the source that reads it. */
  readonly source: string;
  /** Bytes as stored, or text; undefined where there is no such file. */
  readonly content: Uint8Array | string | undefined;
  /** SHA-256 of the bytes, in hexadecimal digits. */
  readonly sha256: string;
}

/** The session of these tables, in the order of its `data` lines. */
export function importSession(input: ScoringInput, files: readonly ImportedFile[]): SessionData {
  const session = new SessionImport(input);
  for (const { path, source, content, sha256 } of files) {
    const file = session.open(path, source);
    if (content === undefined) file.isMissing();
    else file.push(content);
    file.end(sha256);
  }
  return session.data();
}
