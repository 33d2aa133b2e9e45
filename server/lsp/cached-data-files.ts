/** The tables of sessions, read once until they change on disk. */
import { type FileSystemProvider, URI, UriUtils } from "langium";
import type { DataFiles } from "../scoring/run-session.ts";

export class CachedDataFiles implements DataFiles {
  readonly sha256: (content: Uint8Array) => string;
  private readonly fileSystem: FileSystemProvider;
  private readonly contents = new Map<string, Promise<Uint8Array | undefined>>();

  constructor(fileSystem: FileSystemProvider, sha256: (content: Uint8Array) => string) {
    this.fileSystem = fileSystem;
    this.sha256 = sha256;
  }

  /** The URI of a table, from its path as the session at `sessionFile` writes it. */
  locate(path: string, sessionFile: string): string {
    return UriUtils.resolvePath(UriUtils.dirname(URI.parse(sessionFile)), path).toString();
  }

  read(uri: string): Promise<Uint8Array | undefined> {
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

  private async readNow(uri: URI): Promise<Uint8Array | undefined> {
    if (isElsewhere(uri)) return undefined;
    try {
      return (await this.fileSystem.exists(uri)) ? await this.fileSystem.readBinary(uri) : undefined;
    } catch {
      return undefined; // a folder, or a file nobody may read: as good as missing
    }
  }
}

/** A path such as `//server/share` would be fetched over the network, which nothing here may do. */
function isElsewhere(uri: URI): boolean {
  return uri.scheme === "file" && (uri.authority !== "" || uri.path.startsWith("//"));
}
