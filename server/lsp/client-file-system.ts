/** Files that only the editor can reach, read through it. */
import { type FileSystemNode, type FileSystemProvider, type URI, UriUtils } from "langium";
import type { Connection } from "vscode-languageserver";
import {
  type FileKind,
  type FileParams,
  fileKind,
  readFile,
  readFolder,
} from "../../shared/protocol/files.ts";
import type { RequestMessage } from "../../shared/protocol/message.ts";

export class ClientFileSystem implements FileSystemProvider {
  private readonly connection: Connection;

  constructor(connection: Connection) {
    this.connection = connection;
  }

  async exists(uri: URI): Promise<boolean> {
    return (await this.ask(fileKind, uri)) !== null;
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    return node(uri, found(await this.ask(fileKind, uri), uri));
  }

  async readBinary(uri: URI): Promise<Uint8Array> {
    const content = atob(found(await this.ask(readFile, uri), uri));
    return Uint8Array.from(content, (character) => character.charCodeAt(0));
  }

  async readFile(uri: URI): Promise<string> {
    return new TextDecoder().decode(await this.readBinary(uri));
  }

  async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    const entries = found(await this.ask(readFolder, uri), uri);
    return entries.map(({ name, kind }) => node(UriUtils.joinPath(uri, name), kind));
  }

  statSync(): never {
    throw new Error("The editor answers later, so that nothing can be read at once.");
  }

  existsSync(): boolean {
    return this.statSync();
  }

  readBinarySync(): Uint8Array {
    return this.statSync();
  }

  readFileSync(): string {
    return this.statSync();
  }

  readDirectorySync(): FileSystemNode[] {
    return this.statSync();
  }

  private ask<Result>({ method }: RequestMessage<FileParams, Result>, uri: URI): Promise<Result> {
    return this.connection.sendRequest<Result>(method, { file: uri.toString() } satisfies FileParams);
  }
}

function node(uri: URI, kind: FileKind): FileSystemNode {
  return { uri, isFile: kind === "file", isDirectory: kind === "folder" };
}

function found<T>(answer: T | null, uri: URI): T {
  if (answer === null) throw new Error(`There is no ${uri.path}.`);
  return answer;
}
