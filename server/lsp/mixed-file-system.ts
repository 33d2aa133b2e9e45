/** Files on disk, and those that only the editor can reach. */
import type { FileSystemNode, FileSystemProvider, URI } from "langium";

export class MixedFileSystem implements FileSystemProvider {
  private readonly disk: FileSystemProvider;
  private readonly editor: FileSystemProvider;

  constructor(disk: FileSystemProvider, editor: FileSystemProvider) {
    this.disk = disk;
    this.editor = editor;
  }

  stat(uri: URI): Promise<FileSystemNode> {
    return this.of(uri).stat(uri);
  }

  statSync(uri: URI): FileSystemNode {
    return this.of(uri).statSync(uri);
  }

  exists(uri: URI): Promise<boolean> {
    return this.of(uri).exists(uri);
  }

  existsSync(uri: URI): boolean {
    return this.of(uri).existsSync(uri);
  }

  readBinary(uri: URI): Promise<Uint8Array> {
    return this.of(uri).readBinary(uri);
  }

  readBinarySync(uri: URI): Uint8Array {
    return this.of(uri).readBinarySync(uri);
  }

  readFile(uri: URI): Promise<string> {
    return this.of(uri).readFile(uri);
  }

  readFileSync(uri: URI): string {
    return this.of(uri).readFileSync(uri);
  }

  readDirectory(uri: URI): Promise<FileSystemNode[]> {
    return this.of(uri).readDirectory(uri);
  }

  readDirectorySync(uri: URI): FileSystemNode[] {
    return this.of(uri).readDirectorySync(uri);
  }

  private of({ scheme }: URI): FileSystemProvider {
    return scheme === "file" ? this.disk : this.editor;
  }
}
