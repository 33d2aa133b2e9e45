/** The tables of sessions, read once until they change on disk. */
import { type FileSystemProvider, URI, UriUtils } from "langium";
import { savedUri } from "../../language/names/saved-uri.ts";
import { FollowedTable } from "../import/follow/followed-table.ts";
import type { GrowingFile } from "../import/follow/tail.ts";
import type { DataFiles } from "../import/import-files.ts";
import type { Pieces } from "../import/pieces.ts";

/** Tables of this many bytes and more are handed out in pieces, so that the server goes on answering meanwhile. */
const LARGE = 1_000_000;
/** Bytes of a piece. */
const PIECE = 1 << 18;

/** Files that can be looked at again and again; undefined for those that cannot. */
export type GrowingFiles = (uri: URI) => GrowingFile | undefined;

export class CachedDataFiles implements DataFiles {
  readonly sha256: (content: Uint8Array) => string;
  private readonly fileSystem: FileSystemProvider;
  private readonly growingFiles: GrowingFiles;
  private readonly contents = new Map<string, Promise<Uint8Array | Pieces | undefined>>();
  /** The tables among them that are followed while they are written. */
  private readonly followed = new Map<string, FollowedTable>();
  private changesSeen = 0;

  constructor(
    fileSystem: FileSystemProvider,
    sha256: (content: Uint8Array) => string,
    growingFiles: GrowingFiles = () => undefined,
  ) {
    this.fileSystem = fileSystem;
    this.sha256 = sha256;
    this.growingFiles = growingFiles;
  }

  /** How often what was read has turned out to be another, or was forgotten. */
  get changes(): number {
    return this.changesSeen;
  }

  /** The URI of a table, from its path as the session at `sessionFile` writes it. */
  locate(path: string, sessionFile: string): string {
    return UriUtils.resolvePath(UriUtils.dirname(savedUri(URI.parse(sessionFile))), path).toString();
  }

  read(uri: string): Promise<Uint8Array | Pieces | undefined> {
    let content = this.contents.get(uri);
    if (content === undefined) {
      content = this.readNow(uri);
      this.contents.set(uri, content);
    }
    return content;
  }

  /** Looks whether a table that was read has changed, and reads what is new. */
  async look(uri: string, closely = false): Promise<boolean> {
    const table = this.followed.get(uri);
    if (table === undefined || !(await table.look(closely))) return false;
    this.changesSeen++;
    if (this.followed.get(uri) === table) this.contents.set(uri, Promise.resolve(this.held(table)));
    return true;
  }

  /** Somebody says that a file has changed. False where it is not one that was read, or it reads as before. */
  async changed(uri: string): Promise<boolean> {
    if (this.followed.has(uri)) return this.look(uri, true);
    const wasRead = this.contents.delete(uri);
    if (wasRead) this.changesSeen++;
    return wasRead;
  }

  forgetAll(): void {
    this.changesSeen++;
    this.contents.clear();
    this.followed.clear();
  }

  private async readNow(uri: string): Promise<Uint8Array | Pieces | undefined> {
    const address = URI.parse(uri);
    if (isElsewhere(address)) return undefined;
    const file = this.growingFiles(address);
    if (file === undefined) return this.readOnce(address);
    const table = new FollowedTable(file);
    this.followed.set(uri, table);
    await table.look();
    return this.held(table);
  }

  private async readOnce(uri: URI): Promise<Uint8Array | Pieces | undefined> {
    try {
      if (!(await this.fileSystem.exists(uri))) return undefined;
      return this.inPieces(await this.fileSystem.readBinary(uri), false);
    } catch {
      return undefined; // a folder, or a file nobody may read: as good as missing
    }
  }

  private held({ content, isGrowing }: FollowedTable): Uint8Array | Pieces | undefined {
    return content === undefined ? undefined : this.inPieces(content, isGrowing);
  }

  private inPieces(content: Uint8Array, isGrowing: boolean): Uint8Array | Pieces {
    return content.length < LARGE && !isGrowing ? content : new HeldPieces(content, isGrowing, this.sha256);
  }
}

/** The pieces of a table that is held. Can be read often; between two pieces others have their turn. */
class HeldPieces implements Pieces {
  readonly size: number;
  readonly isGrowing: boolean;
  private readonly content: Uint8Array;
  private readonly hash: (content: Uint8Array) => string;
  private hashed: string | undefined;

  constructor(content: Uint8Array, isGrowing: boolean, hash: (content: Uint8Array) => string) {
    this.content = content;
    this.isGrowing = isGrowing;
    this.size = content.length;
    this.hash = hash;
  }

  async *[Symbol.asyncIterator](): AsyncGenerator<Uint8Array> {
    for (let start = 0; start < this.size; start += PIECE) {
      yield this.content.subarray(start, start + PIECE);
      await new Promise((resolve) => setTimeout(resolve));
    }
  }

  async between(start: number, end: number): Promise<Uint8Array> {
    return this.content.subarray(start, end);
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
