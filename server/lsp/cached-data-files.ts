/** The tables of sessions, read once until they change on disk. */
import { type FileSystemProvider, URI, UriUtils } from "langium";
import type { DataFiles, Pieces } from "../import/import-files.ts";

/** Tables of this many bytes and more are handed out in pieces, so that the server goes on answering meanwhile. */
const LARGE = 1_000_000;
/** Bytes of a piece. */
const PIECE = 1 << 18;

export class CachedDataFiles implements DataFiles {
  readonly sha256: (content: Uint8Array) => string;
  private readonly fileSystem: FileSystemProvider;
  private readonly contents = new Map<string, Promise<Uint8Array | Pieces | undefined>>();

  constructor(fileSystem: FileSystemProvider, sha256: (content: Uint8Array) => string) {
    this.fileSystem = fileSystem;
    this.sha256 = sha256;
  }

  /** The URI of a table, from its path as the session at `sessionFile` writes it. */
  locate(path: string, sessionFile: string): string {
    return UriUtils.resolvePath(UriUtils.dirname(URI.parse(sessionFile)), path).toString();
  }

  read(uri: string): Promise<Uint8Array | Pieces | undefined> {
    let content = this.contents.get(uri);
    if (content === undefined) {
      content = this.readNow(URI.parse(uri));
      this.contents.set(uri, content);
    }
    return content;
  }

  /** Forgets what a file held. False where it is not one that was read. */
  forget(uri: string): boolean {
    return this.contents.delete(uri);
  }

  forgetAll(): void {
    this.contents.clear();
  }

  private async readNow(uri: URI): Promise<Uint8Array | Pieces | undefined> {
    if (isElsewhere(uri)) return undefined;
    try {
      if (!(await this.fileSystem.exists(uri))) return undefined;
      const content = await this.fileSystem.readBinary(uri);
      return content.length < LARGE ? content : new HeldPieces(content, this.sha256);
    } catch {
      return undefined; // a folder, or a file nobody may read: as good as missing
    }
  }
}

/** The pieces of a table that is held. Can be read often; between two pieces others have their turn. */
class HeldPieces implements Pieces {
  readonly size: number;
  private readonly content: Uint8Array;
  private readonly hash: (content: Uint8Array) => string;
  private hashed: string | undefined;

  constructor(content: Uint8Array, hash: (content: Uint8Array) => string) {
    this.content = content;
    this.size = content.length;
    this.hash = hash;
  }

  async *[Symbol.asyncIterator](): AsyncGenerator<Uint8Array> {
    for (let start = 0; start < this.size; start += PIECE) {
      yield this.content.subarray(start, start + PIECE);
      await new Promise((resolve) => setTimeout(resolve));
    }
  }

  sha256(): string {
    this.hashed ??= this.hash(this.content);
    return this.hashed;
  }
}

/** A path such as `//server/share` would be fetched over the network, which nothing here may do. */
function isElsewhere(uri: URI): boolean {
  return uri.scheme === "file" && (uri.authority !== "" || uri.path.startsWith("//"));
}
