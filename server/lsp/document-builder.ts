/** Builds what is open before the rest of the workspace. */
import {
  type BuildOptions,
  Cancellation,
  DocumentState,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  OperationCancelled,
  type URI,
} from "langium";
import { type Diagnostic, DiagnosticSeverity } from "vscode-languageserver";
import { MISTAKE_SOURCE } from "../../language/checks/document-validator.ts";
import type { Document } from "../../language/generated/tree/ast.ts";
import { isLibraryUri } from "../../language/library/library.ts";
import { DrillwrightDocumentBuilder } from "../../language/names/document-builder.ts";
import { type EditorDocumentFactory, unreadDocument } from "./document-factory.ts";
import { isFile } from "./file-kinds.ts";
import type { UnreadFiles } from "./unread-files.ts";

/** Files that are read while those before them are parsed. */
const READ_AHEAD = 16;

/**
 * Open files, and the files that they see, go through every phase before any other file is even read: what somebody
 * looks at waits for nothing else. What is said of a name that is not known may hang on the rest, so it is looked at
 * again when the rest is known.
 */
export class EditorDocumentBuilder extends DrillwrightDocumentBuilder {
  private isAhead = false;
  /** Files with unknown names that were looked at before all files were read. */
  private readonly hasty = new Set<LangiumDocument>();
  private readonly unread: UnreadFiles;
  /** Who waits until all files have reached a state. */
  private readonly waiting = new Set<{ readonly state: DocumentState; readonly reached: () => void }>();
  /** Whether files have gone since listeners were last told that everything is checked. */
  private isAnyGone = false;

  constructor(services: LangiumSharedCoreServices, unread: UnreadFiles) {
    super(services);
    this.unread = unread;
    this.onUpdate((_changed, deleted) => {
      if (deleted.length > 0) this.isAnyGone = true;
    });
  }

  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    const open = await this.openAndSeen(documents, cancelToken);
    const first = new Set(await this.withUsed([...open], cancelToken));
    const rest = documents.filter((document) => !first.has(document));
    if (first.size > 0 && rest.length > 0) {
      await this.buildAhead([...first], options, cancelToken);
      if (rest.some(({ state }) => state < DocumentState.IndexedContent)) this.markHasty(first);
    }
    const all = rest.length > 0 ? await this.withUsed(rest, cancelToken) : [...first];
    await super.buildDocuments(all, options, cancelToken);
    const again = [...this.hasty].filter((document) => this.langiumDocuments.hasDocument(document.uri));
    for (const document of again) this.resetToState(document, DocumentState.IndexedReferences);
    this.hasty.clear();
    if (again.length > 0) await super.buildDocuments(again, options, cancelToken);
  }

  /** Nobody can change the library, and its checks are run by our own tests. */
  protected override async validate(
    document: LangiumDocument,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    if (isLibraryUri(document.uri)) {
      document.diagnostics = [];
      return;
    }
    await super.validate(document, cancelToken);
    const problem = this.unread.problemOf(document.uri.toString());
    // A file that is no text is empty here; one that is too long has that for a mistake.
    if (problem !== undefined && document.diagnostics?.length === 0)
      document.diagnostics = [unreadable(problem)];
  }

  /** A text that was opened a moment ago is known with the update it brings. */
  protected override async awaitDocumentState(
    state: DocumentState,
    uri: URI,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<URI> {
    const isAwaited = () =>
      this.textDocuments?.get(uri.toString()) !== undefined && !this.langiumDocuments.hasDocument(uri);
    if (this.serviceRegistry.hasServices(uri)) while (isAwaited()) await this.nextUpdate(cancelToken);
    return this.unlessGone(uri, cancelToken, (token) => super.awaitDocumentState(state, uri, token));
  }

  /** Whoever waits for a document waits no longer when it has gone: nothing more becomes of it. */
  private async unlessGone<Result>(
    uri: URI,
    cancelToken: Cancellation.CancellationToken,
    wait: (cancelToken: Cancellation.CancellationToken) => Promise<Result>,
  ): Promise<Result> {
    const waiting = new Cancellation.CancellationTokenSource();
    const { token } = waiting;
    if (cancelToken.isCancellationRequested) waiting.cancel();
    const cancelling = cancelToken.onCancellationRequested(() => waiting.cancel());
    const isIn = (uris: readonly URI[]) => uris.some((each) => each.toString() === uri.toString());
    const updating = this.onUpdate((changed, deleted) => {
      if (isIn(deleted) && !isIn(changed)) waiting.cancel();
    });
    try {
      return await wait(token);
    } finally {
      cancelling.dispose();
      updating.dispose();
    }
  }

  /** Whoever waits for the whole workspace goes on waiting. */
  protected override async runCancelable(
    ...[documents, state, cancelToken, work]: Parameters<DrillwrightDocumentBuilder["runCancelable"]>
  ): Promise<void> {
    await super.runCancelable(documents, state, cancelToken, work);
    if (this.isAhead) this.currentState = DocumentState.Changed;
    for (const each of this.waiting) if (each.state <= this.currentState) each.reached();
  }

  /**
   * The framework waits for the listeners of a phase to be called. They are not where a build has nothing to do, nor for
   * who begins to wait while they are being called: both would wait until somebody types again.
   */
  protected override awaitBuilderState(
    state: DocumentState,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    if (this.currentState >= state) return Promise.resolve();
    if (cancelToken.isCancellationRequested) return Promise.reject(OperationCancelled);
    return new Promise((resolve, reject) => {
      const end = (settle: () => void) => {
        this.waiting.delete(waiting);
        cancelling.dispose();
        settle();
      };
      const waiting = { state, reached: () => end(resolve) };
      const cancelling = cancelToken.onCancellationRequested(() => end(() => reject(OperationCancelled)));
      this.waiting.add(waiting);
    });
  }

  /** The framework tells nobody of a document if the build is cut short just then, and does not come back to it. */
  protected override async notifyDocumentPhase(
    document: LangiumDocument,
    state: DocumentState,
  ): Promise<void> {
    await super.notifyDocumentPhase(document, state, Cancellation.CancellationToken.None);
  }

  protected override async notifyBuildPhase(
    documents: LangiumDocument[],
    state: DocumentState,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    if (this.isAhead) return;
    await super.notifyBuildPhase(documents, state, cancelToken);
    // Where files have gone, and no other has to be looked at for that, the framework tells nobody.
    const isUntold = this.isAnyGone && documents.length === 0;
    if (state === DocumentState.Validated) this.isAnyGone = false;
    if (!isUntold) return;
    for (const listener of this.buildPhaseListeners.get(state).slice())
      await listener(documents, cancelToken);
  }

  private async buildAhead(
    documents: LangiumDocument[],
    options: BuildOptions,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    this.isAhead = true;
    try {
      await super.buildDocuments(documents, options, cancelToken);
    } finally {
      this.isAhead = false;
    }
  }

  /** The open ones of the documents, the library, and what they use, directly or over others. Reads what is not read yet. */
  private async openAndSeen(
    documents: readonly LangiumDocument[],
    cancelToken: Cancellation.CancellationToken,
  ): Promise<ReadonlySet<LangiumDocument>> {
    const open = documents.filter(({ uri }) => this.textDocuments?.get(uri.toString()) !== undefined);
    if (open.length === 0 || open.length === documents.length) return new Set(open);
    const buildable = new Set(documents);
    const found = new Set([...open, ...documents.filter(({ uri }) => isLibraryUri(uri))]);
    this.isAhead = true;
    try {
      // The set grows while it is walked.
      for (const document of found) {
        await this.read(document, cancelToken);
        for (const { document: used } of this.names.usedFiles(document as LangiumDocument<Document>)) {
          if (used !== undefined && buildable.has(used)) found.add(used);
        }
      }
    } finally {
      this.isAhead = false;
    }
    return found;
  }

  /** The documents, read, and those files that nobody looks for in a workspace, but that they use, directly or over others. */
  private async withUsed(
    documents: readonly LangiumDocument[],
    cancelToken: Cancellation.CancellationToken,
  ): Promise<LangiumDocument[]> {
    const found = [...documents];
    const factory = this.langiumDocumentFactory as EditorDocumentFactory;
    factory.readAhead([]); // what an earlier build began to read may have changed
    this.isAhead = true;
    try {
      // The list grows while it is walked.
      for (const [index, document] of found.entries()) {
        if (index % READ_AHEAD === 0) factory.readAhead(found.slice(index, index + 2 * READ_AHEAD));
        await this.read(document, cancelToken);
        for (const { uri, document: used } of this.names.usedFiles(document as LangiumDocument<Document>)) {
          if (used !== undefined || !(await isFile(this.fileSystemProvider, uri))) continue;
          const added = unreadDocument(this.langiumDocumentFactory, uri);
          this.langiumDocuments.addDocument(added);
          found.push(added);
        }
      }
    } finally {
      this.isAhead = false;
    }
    return found;
  }

  private read(document: LangiumDocument, cancelToken: Cancellation.CancellationToken): Promise<void> {
    return this.runCancelable([document], DocumentState.Parsed, cancelToken, (unread) =>
      this.langiumDocumentFactory.update(unread, cancelToken),
    );
  }

  private nextUpdate(cancelToken: Cancellation.CancellationToken): Promise<void> {
    return new Promise((resolve, reject) => {
      const updating = this.onUpdate(() => end(resolve));
      const cancelling = cancelToken.onCancellationRequested(() => end(() => reject(OperationCancelled)));
      const end = (settle: () => void) => {
        settle();
        // One that leaves the list of listeners while they are told makes the next one miss it.
        queueMicrotask(() => {
          updating.dispose();
          cancelling.dispose();
        });
      };
    });
  }

  private markHasty(documents: Iterable<LangiumDocument>): void {
    for (const document of documents) {
      if (document.references.some(({ error }) => error !== undefined)) this.hasty.add(document);
    }
  }
}

/** What the command line says of such a file. */
function unreadable(message: string): Diagnostic {
  const start = { line: 0, character: 0 };
  const range = { start, end: start };
  return { range, severity: DiagnosticSeverity.Error, code: "unreadable", source: MISTAKE_SOURCE, message };
}
