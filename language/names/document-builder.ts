/** Rebuilds only what a change can touch. */
import { DefaultDocumentBuilder, type LangiumDocument, type LangiumSharedCoreServices } from "langium";
import type { Document } from "../generated/tree/ast.ts";
import { Names } from "./names.ts";

/**
 * A file depends on the files it uses, whether they exist or not, and on nothing else. The default would look at every
 * reference of every file, and relink each file with an unknown name at each keystroke in any other.
 */
export class DrillwrightDocumentBuilder extends DefaultDocumentBuilder {
  protected readonly names: Names;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.names = new Names(services);
  }

  protected override shouldRelink(document: LangiumDocument, changedUris: Set<string>): boolean {
    const uris = this.names.usedUris(document as LangiumDocument<Document>);
    return uris.some((uri) => changedUris.has(uri.toString()));
  }
}
