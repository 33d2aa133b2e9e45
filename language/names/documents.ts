/** Finds a file by its URI. */
import {
  DefaultLangiumDocuments,
  type LangiumDocument,
  type Stream,
  stream,
  type URI,
  UriTrie,
} from "langium";

/**
 * The framework takes a URI apart and walks from folder to folder. Every reference asks for the files that its own file
 * uses, so that here one look finds what has been added under just this URI; and every change asks for all files.
 */
export class DrillwrightDocuments extends DefaultLangiumDocuments {
  protected override readonly documentTrie = new RememberingTrie<LangiumDocument>();
  private readonly byUri = new Map<string, LangiumDocument>();

  /** Those of now, in the order in which they were added. */
  override get all(): Stream<LangiumDocument> {
    return stream([...this.byUri.values()]);
  }

  override addDocument(document: LangiumDocument): void {
    super.addDocument(document);
    this.byUri.set(document.uri.toString(), document);
  }

  override getDocument(uri: URI): LangiumDocument | undefined {
    return this.byUri.get(uri.toString()) ?? super.getDocument(uri);
  }

  override hasDocument(uri: URI): boolean {
    return this.getDocument(uri) !== undefined;
  }

  override deleteDocument(uri: URI): LangiumDocument | undefined {
    const document = super.deleteDocument(uri);
    this.forget(document);
    return document;
  }

  override deleteDocuments(folder: URI): LangiumDocument[] {
    const documents = super.deleteDocuments(folder);
    for (const document of documents) this.forget(document);
    return documents;
  }

  private forget(document: LangiumDocument | undefined): void {
    if (document !== undefined) this.byUri.delete(document.uri.toString());
  }
}

/** Whether a file is there is asked several times before it is added, and putting its URI in order takes as long as finding it. */
class RememberingTrie<T> extends UriTrie<T> {
  private asked: string | URI = "";
  private answer = "";

  protected override normalizeUri(uri: string | URI): string {
    if (uri !== this.asked) {
      this.answer = super.normalizeUri(uri);
      this.asked = uri;
    }
    return this.answer;
  }
}
