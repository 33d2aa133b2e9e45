/** From the files a session points at to its shots: however large they are, packed or not. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { SessionData } from "../../shared/session-data.ts";
import type { FileImport } from "./file-import.ts";
import { DamagedPackingError, isPacked } from "./gunzip.ts";
import { SessionImport } from "./import-session.ts";
import { partsOf } from "./parts/table-parts.ts";
import { type Pieces, unpackedPieces, type Watcher, watched, whole } from "./pieces.ts";

/** What reading the tables of a session needs from the world outside. */
export interface DataFiles {
  /** The name under which reports speak of a data file, from its path as the session at `sessionFile` writes it. */
  locate(path: string, sessionFile: string): string;
  /** The bytes of a located file, at once or in pieces, or undefined where there is no such file. */
  read(file: string): Promise<Uint8Array | Pieces | undefined>;
  /** SHA-256 in lower-case hexadecimal. */
  sha256(content: Uint8Array): string;
}

/**
 * Reads the tables of a session. Holds no more of a file that comes in pieces than one of them, and the session's own shots.
 * @throws the reason of the signal where it is aborted.
 */
export async function importFiles(
  input: ScoringInput,
  dataFiles: DataFiles,
  watcher: Watcher = {},
): Promise<SessionData> {
  const found = await Promise.all(
    input.session.data.map(async ({ path, source, location }) => {
      const file = dataFiles.locate(path, location.file);
      return { file, source, content: await dataFiles.read(file) };
    }),
  );
  const session = new SessionImport(input);
  for (const { file, source, content } of found) {
    const isGrowing = content !== undefined && "isGrowing" in content && content.isGrowing === true;
    const reading = session.open(file, source, { isGrowing });
    if (content === undefined) {
      reading.isMissing();
      reading.end("");
    } else if (content instanceof Uint8Array) {
      const sha256 = dataFiles.sha256(content);
      if (isPacked(content)) await readPieces(whole(content, sha256), reading, watcher);
      else {
        watcher.signal?.throwIfAborted();
        reading.push(content);
        reading.end(sha256);
      }
    } else {
      const parts = await partsOf(content, input.sources.get(source), file, watcher);
      if (parts === undefined) await readPieces(content, reading, watcher);
      else await parts.readInto(reading, watcher);
    }
  }
  return session.data();
}

async function readPieces(pieces: Pieces, reading: FileImport, watcher: Watcher): Promise<void> {
  const raw = watched(pieces, reading.path, watcher);
  try {
    for await (const piece of unpackedPieces(raw)) {
      reading.push(piece);
      if (reading.hasFailed) break;
    }
  } catch (error) {
    if (!(error instanceof DamagedPackingError)) throw error;
    reading.isUnreadable(`The file is packed with gzip, but ${error.message}`);
  }
  while (!(await raw.next()).done); // what is left is part of the file's hash
  if (pieces.isGrowing === true) reading.hasHash(pieces.sha256());
  else reading.end(pieces.sha256());
}
