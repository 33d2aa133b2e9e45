/** Which versions of the texts that are open the trees were made from. */
import {
  type AstNode,
  type Cancellation,
  DefaultLangiumDocumentFactory,
  type LangiumDocument,
  type LangiumSharedCoreServices,
} from "langium";

/** By the URIs of open files. The text itself may have gone on since: an editor does not wait for its server. */
export class TextVersions {
  private readonly versions = new Map<string, number>();

  /** Undefined for a file that was read from disk. */
  of(uri: string): number | undefined {
    return this.versions.get(uri);
  }

  /** Those of now, which stay as they are. */
  all(): ReadonlyMap<string, number> {
    return new Map(this.versions);
  }

  set(uri: string, version: number | undefined): void {
    if (version === undefined) this.versions.delete(uri);
    else this.versions.set(uri, version);
  }
}

/** Notes the version of each text that it parses. */
export class VersionNotingDocumentFactory extends DefaultLangiumDocumentFactory {
  private readonly versions: TextVersions;

  constructor(services: LangiumSharedCoreServices, versions: TextVersions) {
    super(services);
    this.versions = versions;
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
}
