/**
 * An extension of the tests' own: a folder that exists only in memory, under the scheme `vscode-vfs`.
 * It stands for what an editor in a browser opens, such as a repository on a server: no file has a path on a
 * disk. The scheme is the one such folders have, and the only virtual one that the editor does not trust unasked.
 */
import {
  Disposable,
  EventEmitter,
  type ExtensionContext,
  type FileChangeEvent,
  FileChangeType,
  type FileStat,
  FileSystemError,
  type FileSystemProvider,
  FileType,
  Uri,
  workspace,
} from "vscode";

/** Address of the folder; put in when this is bundled. */
declare const ROOT: string;

/** Path and content (base64) of each file; put in when this is bundled. */
declare const FILES: { readonly [path: string]: string };

class MemoryFolder implements FileSystemProvider {
  readonly #files = new Map<string, Uint8Array>();
  readonly #folders = new Set<string>(["/"]);
  readonly #changes = new EventEmitter<FileChangeEvent[]>();
  readonly onDidChangeFile = this.#changes.event;

  constructor(files: typeof FILES) {
    for (const [path, content] of Object.entries(files)) {
      this.#files.set(
        path,
        Uint8Array.from(atob(content), (character) => character.charCodeAt(0)),
      );
      for (let end = path.lastIndexOf("/"); end > 0; end = path.lastIndexOf("/", end - 1))
        this.#folders.add(path.slice(0, end));
    }
  }

  watch(): Disposable {
    return new Disposable(() => {});
  }

  stat(uri: Uri): FileStat {
    const content = this.#files.get(uri.path);
    if (content) return { type: FileType.File, ctime: 0, mtime: 0, size: content.length };
    if (this.#folders.has(uri.path)) return { type: FileType.Directory, ctime: 0, mtime: 0, size: 0 };
    throw FileSystemError.FileNotFound(uri);
  }

  readDirectory(uri: Uri): [string, FileType][] {
    if (!this.#folders.has(uri.path)) throw FileSystemError.FileNotFound(uri);
    const prefix = uri.path === "/" ? "/" : `${uri.path}/`;
    const inside = (path: string): boolean =>
      path !== "/" && path.startsWith(prefix) && !path.slice(prefix.length).includes("/");
    const entries = (paths: Iterable<string>, type: FileType): [string, FileType][] =>
      [...paths].filter(inside).map((path) => [path.slice(prefix.length), type]);
    return [...entries(this.#folders, FileType.Directory), ...entries(this.#files.keys(), FileType.File)];
  }

  readFile(uri: Uri): Uint8Array {
    const content = this.#files.get(uri.path);
    if (!content) throw FileSystemError.FileNotFound(uri);
    return content;
  }

  writeFile(uri: Uri, content: Uint8Array): void {
    const type = this.#files.has(uri.path) ? FileChangeType.Changed : FileChangeType.Created;
    this.#files.set(uri.path, content);
    this.#changes.fire([{ type, uri }]);
  }

  createDirectory(uri: Uri): void {
    this.#folders.add(uri.path);
    this.#changes.fire([{ type: FileChangeType.Created, uri }]);
  }

  delete(uri: Uri): void {
    const gone = (path: string): boolean => path === uri.path || path.startsWith(`${uri.path}/`);
    for (const path of [...this.#files.keys()].filter(gone)) this.#files.delete(path);
    for (const path of [...this.#folders].filter(gone)) this.#folders.delete(path);
    this.#changes.fire([{ type: FileChangeType.Deleted, uri }]);
  }

  /** All files; the editor picks those that match. */
  provideFileSearchResults(): Uri[] {
    return [...this.#files.keys()].map((path) => Uri.parse(ROOT).with({ path }));
  }

  rename(from: Uri, to: Uri): void {
    this.writeFile(to, this.readFile(from));
    this.delete(from);
  }
}

/** Searching such a folder is the provider's work, through an interface that the editor still calls a proposal. */
type FileSearch = {
  registerFileSearchProvider(
    scheme: string,
    provider: Pick<MemoryFolder, "provideFileSearchResults">,
  ): Disposable;
};

export function activate(context: ExtensionContext): void {
  const folder = new MemoryFolder(FILES);
  const { scheme } = Uri.parse(ROOT);
  context.subscriptions.push(
    workspace.registerFileSystemProvider(scheme, folder, { isCaseSensitive: true }),
    (workspace as typeof workspace & FileSearch).registerFileSearchProvider(scheme, folder),
  );
}
