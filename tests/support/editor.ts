/**
 * An editor without a window: the language's editor services over a few files in memory. Texts may hold a cursor `<|>`;
 * it is taken out, and the questions below are asked at its place.
 */
import {
  EmptyFileSystemProvider,
  type FileSystemNode,
  type FileSystemProvider,
  type LangiumDocument,
  TextDocument,
  URI,
} from "langium";
import type {
  CodeAction,
  CompletionItem,
  CompletionList,
  Diagnostic,
  DocumentHighlight,
  DocumentSymbol,
  FoldingRange,
  Hover,
  Location,
  LocationLink,
  Position,
  Range,
  WorkspaceEdit,
} from "vscode-languageserver";
import { createEditorServices, type DrillwrightEditorServices } from "../../language/editor/editor-module.ts";

const ROOT = "file:///coach/";
const CURSOR = "<|>";

/** What an editor of today says of itself. */
const CAPABILITIES = {
  workspace: { workspaceEdit: { documentChanges: true } },
  textDocument: { completion: { completionItem: { snippetSupport: true, insertReplaceSupport: true } } },
};

interface Running {
  readonly services: DrillwrightEditorServices;
  /** The addresses of all files of the folder, whatever is in them. */
  readonly disk: { files: readonly string[] };
}

let running: Promise<Running> | undefined;

async function start(): Promise<Running> {
  const disk: Running["disk"] = { files: [] };
  const readDirectory = async (folder: URI) => entriesOf(folder, disk.files);
  const fileSystem: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), { readDirectory });
  const { shared, drillwright } = createEditorServices({ fileSystemProvider: () => fileSystem });
  await shared.lsp.LanguageServer.initialize({ processId: null, rootUri: null, capabilities: CAPABILITIES });
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  return { services: drillwright, disk };
}

function entriesOf(folder: URI, files: readonly string[]): FileSystemNode[] {
  const prefix = folder.toString().replace(/\/?$/, "/");
  const below = files.filter((file) => file.startsWith(prefix)).map((file) => file.slice(prefix.length));
  const names = new Set(below.map((path) => path.split("/")[0] ?? ""));
  return [...names].map((name) => ({
    isFile: below.includes(name),
    isDirectory: !below.includes(name),
    uri: URI.parse(prefix + name),
  }));
}

/** Opens these files, by their path in the folder, in place of those that were open before; checks them where asked. */
export async function openEditor(
  files: Readonly<Record<string, string>>,
  { validation = true } = {},
): Promise<TestEditor> {
  running ??= start();
  const { services, disk } = await running;
  const { workspace } = services.shared;
  const before = workspace.LangiumDocuments.all
    .filter(({ uri }) => uri.scheme === "file")
    .map(({ uri }) => uri);
  await workspace.DocumentBuilder.update([], before.toArray());
  disk.files = Object.keys(files).map((path) => ROOT + path);

  let cursor: Cursor | undefined;
  const documents: LangiumDocument[] = [];
  for (const [path, marked] of Object.entries(files)) {
    if (!path.endsWith(".drill")) continue;
    const offset = marked.indexOf(CURSOR);
    const document = workspace.LangiumDocumentFactory.fromString(
      marked.replace(CURSOR, ""),
      URI.parse(ROOT + path),
    );
    workspace.LangiumDocuments.addDocument(document);
    documents.push(document);
    if (offset >= 0) cursor = { document, offset };
  }
  await workspace.DocumentBuilder.build(documents, { validation });
  return new TestEditor(services, cursor ?? { document: documents[0] as LangiumDocument, offset: 0 });
}

interface Cursor {
  readonly document: LangiumDocument;
  readonly offset: number;
}

export class TestEditor {
  readonly services: DrillwrightEditorServices;
  readonly document: LangiumDocument;
  private readonly offset: number;

  constructor(services: DrillwrightEditorServices, { document, offset }: Cursor) {
    this.services = services;
    this.document = document;
    this.offset = offset;
  }

  /** Where the cursor is. */
  get position(): Position {
    return this.document.textDocument.positionAt(this.offset);
  }

  /** The same files, the cursor elsewhere. */
  at(path: string, offset: number): TestEditor {
    return new TestEditor(this.services, { document: this.file(path), offset });
  }

  file(path: string): LangiumDocument {
    const document = this.services.shared.workspace.LangiumDocuments.getDocument(URI.parse(ROOT + path));
    if (document === undefined) throw new Error(`There is no file ${path}.`);
    return document;
  }

  get diagnostics(): readonly Diagnostic[] {
    return this.document.diagnostics ?? [];
  }

  async hover(): Promise<Hover | undefined> {
    return this.services.lsp.HoverProvider?.getHoverContent(this.document, this.params);
  }

  /** The text of the hover; empty where there is none. */
  async hoverText(): Promise<string> {
    const contents = (await this.hover())?.contents;
    return typeof contents === "object" && "value" in contents ? contents.value : "";
  }

  async completion(): Promise<CompletionList> {
    const list = await this.services.lsp.CompletionProvider?.getCompletion(this.document, this.params);
    if (list === undefined) throw new Error("The provider offers no list.");
    return list;
  }

  /** The labels in the order in which an editor lists them. */
  async offers(): Promise<string[]> {
    const { items } = await this.completion();
    return items
      .toSorted((a, b) => ((a.sortText ?? a.label) < (b.sortText ?? b.label) ? -1 : 1))
      .map(({ label }) => label);
  }

  /** The file after an offer has been taken, by the part of the edit that replaces the word at the cursor. */
  async accept(label: string): Promise<string> {
    const { items } = await this.completion();
    const item = items.find((candidate) => candidate.label === label);
    if (item === undefined)
      throw new Error(`Not offered: ${label}. Offered: ${items.map((i) => i.label).join(", ")}`);
    return apply(this.document, editsOf(item));
  }

  async definitions(): Promise<readonly LocationLink[]> {
    return (await this.services.lsp.DefinitionProvider?.getDefinition(this.document, this.params)) ?? [];
  }

  /** Where the definition stands: `plans/gate.drill: "Gate"`. */
  async definition(): Promise<string | undefined> {
    const [link] = await this.definitions();
    return link && this.placeName(link.targetUri, link.targetSelectionRange);
  }

  async references(): Promise<string[]> {
    const params = { ...this.params, context: { includeDeclaration: true } };
    const found: readonly Location[] =
      (await this.services.lsp.ReferencesProvider?.findReferences(this.document, params)) ?? [];
    return found.map(({ uri, range }) => this.placeName(uri, range)).sort();
  }

  async highlights(): Promise<readonly DocumentHighlight[]> {
    return (
      (await this.services.lsp.DocumentHighlightProvider?.getDocumentHighlight(this.document, this.params)) ??
      []
    );
  }

  /** The text that an editor lets the user overwrite. */
  async renamed(): Promise<string | undefined> {
    const range = await this.services.lsp.RenameProvider?.prepareRename(this.document, this.params);
    return range && this.document.textDocument.getText(range);
  }

  /** The files that change, with their text after the change. */
  async rename(newName: string): Promise<Record<string, string>> {
    const edit = await this.services.lsp.RenameProvider?.rename(this.document, { ...this.params, newName });
    return edit === undefined ? {} : this.apply(edit);
  }

  async symbols(): Promise<readonly DocumentSymbol[]> {
    return (await this.services.lsp.DocumentSymbolProvider?.getSymbols(this.document, this.params)) ?? [];
  }

  async foldings(): Promise<readonly FoldingRange[]> {
    return (await this.services.lsp.FoldingRangeProvider?.getFoldingRanges(this.document, this.params)) ?? [];
  }

  /** What is offered for all that is reported in the file. */
  async codeActions(only?: string[]): Promise<readonly CodeAction[]> {
    const diagnostics = [...this.diagnostics];
    const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
    const context = { diagnostics, ...(only === undefined ? {} : { only }) };
    const actions = await this.services.lsp.CodeActionProvider?.getCodeActions(this.document, {
      ...this.params,
      range,
      context,
    });
    return (actions ?? []) as CodeAction[];
  }

  apply(edit: WorkspaceEdit): Record<string, string> {
    const changed: Record<string, string> = {};
    const take = (uri: string, edits: readonly { range: Range; newText: string }[]) => {
      changed[relative(uri)] = apply(this.file(relative(uri)), edits);
    };
    for (const [uri, edits] of Object.entries(edit.changes ?? {})) take(uri, edits);
    for (const change of edit.documentChanges ?? []) {
      if ("edits" in change)
        take(change.textDocument.uri, change.edits as { range: Range; newText: string }[]);
    }
    return changed;
  }

  get params() {
    const { textDocument } = this.document;
    return { textDocument: { uri: textDocument.uri }, position: textDocument.positionAt(this.offset) };
  }

  private placeName(uri: string, range: Range): string {
    const document = this.services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
    return `${relative(uri)}: ${document?.textDocument.getText(range) ?? "?"}`;
  }
}

function relative(uri: string): string {
  return uri.startsWith(ROOT) ? uri.slice(ROOT.length) : uri;
}

function editsOf({
  textEdit,
  additionalTextEdits = [],
}: CompletionItem): { range: Range; newText: string }[] {
  if (textEdit === undefined) return additionalTextEdits;
  const range = "range" in textEdit ? textEdit.range : textEdit.replace;
  return [{ range, newText: textEdit.newText }, ...additionalTextEdits];
}

function apply(
  { textDocument }: LangiumDocument,
  edits: readonly { range: Range; newText: string }[],
): string {
  return TextDocument.applyEdits(textDocument, [...edits]);
}
