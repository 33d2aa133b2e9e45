/** Makes trees of the texts that are open, and of files as the command line reads them. */
import {
  type AstNode,
  type Cancellation,
  DefaultLangiumDocumentFactory,
  DocumentState,
  type LangiumDocument,
  type LangiumDocumentFactory,
  type LangiumSharedCoreServices,
  type TextDocument,
  type URI,
} from "langium";
import { Document } from "../../language/generated/tree/ast.ts";
import { tooLong } from "../../language/syntax/guarded-parser.ts";
import { planText } from "../node/plan-text.ts";
import { reasonOf } from "../node/system-errors.ts";
import type { TextVersions } from "./text-versions.ts";
import type { UnreadFiles } from "./unread-files.ts";

/** A document that is read when it is built. */
export function unreadDocument(factory: LangiumDocumentFactory, uri: URI): LangiumDocument {
  const unread: Document = { $type: Document.$type, uses: [], declarations: [] };
  const document = factory.fromModel(unread, uri);
  document.state = DocumentState.Changed;
  return document;
}

/** Notes the version of each open text that it parses, and which files cannot be read: those are empty here. */
export class EditorDocumentFactory extends DefaultLangiumDocumentFactory {
  private readonly versions: TextVersions;
  private readonly unread: UnreadFiles;
  /** By URI, what is being read already of files that come next. */
  private ahead = new Map<string, ReturnType<EditorDocumentFactory["contentOf"]>>();

  constructor(services: LangiumSharedCoreServices, versions: TextVersions, unread: UnreadFiles) {
    super(services);
    this.versions = versions;
    this.unread = unread;
  }

  override async update<Root extends AstNode = AstNode>(
    document: LangiumDocument<Root>,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<LangiumDocument<Root>> {
    const uri = document.uri.toString();
    // The text is taken before anything is waited for, and goes on under the same object.
    const version = this.textDocuments?.get(uri)?.version;
    const updated = await super.update(document, cancelToken);
    this.versions.set(uri, version);
    return updated;
  }

  /** Begins to read files, so that the disk works while others are parsed. What was begun before of others is forgotten. */
  readAhead(documents: Iterable<LangiumDocument>): void {
    const ahead: typeof this.ahead = new Map();
    for (const { uri, state } of documents) {
      const name = uri.toString();
      if (state > DocumentState.Changed || this.textDocuments?.get(name) !== undefined) continue;
      ahead.set(name, this.ahead.get(name) ?? this.contentOf(uri));
    }
    this.ahead = ahead;
  }

  protected override async getUpdatedText(
    { uri }: LangiumDocument,
    open: TextDocument | undefined,
  ): Promise<string> {
    if (open !== undefined) {
      this.unread.set(uri.toString(), undefined);
      return open.getText();
    }
    const content = await (this.ahead.get(uri.toString()) ?? this.contentOf(uri));
    this.ahead.delete(uri.toString());
    this.unread.set(uri.toString(), "text" in content ? tooLong(content.text) : content.problem);
    return "text" in content ? content.text : "";
  }

  private async contentOf(uri: URI): Promise<ReturnType<typeof planText>> {
    try {
      return planText(await this.fileSystemProvider.readBinary(uri));
    } catch (error) {
      return { problem: `This file cannot be read: ${reasonOf(error)}.` };
    }
  }
}
