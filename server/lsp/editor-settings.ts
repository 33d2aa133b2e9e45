/** The settings of the editor, which may differ from folder to folder. */
import type { Connection, InitializeParams, WorkspaceFolder } from "vscode-languageserver";
import { DEFAULT_SETTINGS, type Settings, settingsFrom } from "../../shared/settings.ts";

const SECTION = "drillwright";

export class EditorSettings {
  private readonly connection: Connection;
  private readonly listeners: (() => void)[] = [];
  private folders: readonly WorkspaceFolder[] = [];
  /** Whether the editor is asked, or tells by itself. */
  private isAsked = false;
  private everywhere: Settings = DEFAULT_SETTINGS;
  private byFolder: ReadonlyMap<string, Settings> = new Map();

  /** Nothing may be shown before the settings are known: what they hide must not flash up first. */
  isKnown = false;

  constructor(connection: Connection) {
    this.connection = connection;
    connection.onDidChangeConfiguration(({ settings }) => {
      if (this.isAsked) this.read();
      else this.use(settingsFrom((settings as { [SECTION]?: unknown } | undefined)?.[SECTION]), []);
    });
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** Those of the innermost folder that a file is in. */
  of(uri: string): Settings {
    const folders = this.folders.filter((folder) => uri.startsWith(`${folder.uri}/`));
    const innermost = folders.toSorted((a, b) => b.uri.length - a.uri.length)[0];
    return (innermost && this.byFolder.get(innermost.uri)) ?? this.everywhere;
  }

  /** All of them, as a text that changes when one does. */
  get state(): string {
    return JSON.stringify([this.everywhere, ...this.byFolder]);
  }

  initialize({ capabilities, workspaceFolders }: InitializeParams): void {
    this.isAsked = capabilities.workspace?.configuration ?? false;
    this.isKnown = !this.isAsked;
    this.folders = workspaceFolders ?? [];
  }

  /** Asks the editor, if it can be asked. */
  read(): void {
    if (!this.isAsked) return;
    const { folders } = this;
    const items = [{}, ...folders.map(({ uri }) => ({ scopeUri: uri }))];
    this.connection.workspace.getConfiguration(items.map((item) => ({ ...item, section: SECTION }))).then(
      ([everywhere, ...ofFolders]: unknown[]) => {
        this.use(settingsFrom(everywhere), ofFolders.map(settingsFrom), folders);
      },
      (error: unknown) => {
        this.connection.console.warn(
          `The settings could not be read, so the defaults are used: ${String(error)}`,
        );
        this.use(DEFAULT_SETTINGS, []);
      },
    );
  }

  foldersChanged(added: readonly WorkspaceFolder[], removed: readonly WorkspaceFolder[]): void {
    const gone = new Set(removed.map(({ uri }) => uri));
    this.folders = [...this.folders.filter(({ uri }) => !gone.has(uri)), ...added];
    this.read();
  }

  private use(everywhere: Settings, ofFolders: readonly Settings[], folders = this.folders): void {
    this.everywhere = everywhere;
    this.byFolder = new Map(
      ofFolders.flatMap((settings, index) => {
        const folder = folders[index];
        return folder === undefined ? [] : [[folder.uri, settings]];
      }),
    );
    this.isKnown = true;
    for (const listener of this.listeners) listener();
  }
}
