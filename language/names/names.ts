/** What a name means in a file: its own declarations, those of the files it uses, and the built-in library. */
import {
  DocumentState,
  type LangiumDocument,
  type LangiumDocuments,
  type LangiumSharedCoreServices,
  type URI,
} from "langium";
import { type Document, isSession, Session, type Use } from "../generated/tree/ast.ts";
import { isLibraryUri } from "../library/library.ts";
import type { DrillwrightIndexManager } from "./index-manager.ts";
import { type NamedNode, type NamedType, nameTableOf } from "./name-table.ts";
import { useTarget } from "./use-target.ts";

/** A `use` statement and the file it reaches; no document where there is no such file. */
export interface UsedFile {
  readonly use: Use;
  readonly uri: URI;
  readonly document: LangiumDocument<Document> | undefined;
}

export class Names {
  private readonly documents: LangiumDocuments;
  private readonly index: () => DrillwrightIndexManager;
  private libraryDocuments: readonly LangiumDocument<Document>[] | undefined;

  constructor(services: LangiumSharedCoreServices) {
    this.documents = services.workspace.LangiumDocuments;
    this.index = () => services.workspace.IndexManager as DrillwrightIndexManager;
  }

  /** The URIs of the files that `document` brings in, in order, whether there are such files or not. */
  usedUris(document: LangiumDocument<Document>): readonly URI[] {
    const uses = document.parseResult.value.uses ?? [];
    return uses.flatMap((use) => useTarget(use, document.uri) ?? []);
  }

  /** The files that bring in the one with this URI, whether that is there or not. */
  users(uri: string): Iterable<LangiumDocument> {
    return this.index().filesUsing(uri);
  }

  /** The files that `document` brings in, in order. Not transitive: a file says itself what it relies on. */
  usedFiles(document: LangiumDocument<Document>): readonly UsedFile[] {
    const files: UsedFile[] = [];
    for (const use of document.parseResult.value.uses ?? []) {
      const uri = useTarget(use, document.uri);
      if (uri !== undefined) files.push({ use, uri, document: this.fileAt(uri) });
    }
    return files;
  }

  /** Everything of that type and name that can be meant in `document`: its own first, then used files, then the library. */
  find(document: LangiumDocument<Document>, type: NamedType, name: string): readonly NamedNode[] {
    const found: NamedNode[] = [];
    for (const visible of this.visibleDocuments(document)) {
      found.push(...nameTableOf(visible.parseResult.value).get(type, name));
    }
    return found;
  }

  /** The first of these, which a reference means. */
  first(document: LangiumDocument<Document>, type: NamedType, name: string): NamedNode | undefined {
    for (const { parseResult } of this.seenFrom(document)) {
      const [found] = nameTableOf(parseResult.value).get(type, name);
      if (found !== undefined) return found;
    }
    return undefined;
  }

  /** Everything of that type that can be meant in `document`. */
  *visible(document: LangiumDocument<Document>, type: NamedType): Iterable<NamedNode> {
    for (const visible of this.visibleDocuments(document)) {
      yield* nameTableOf(visible.parseResult.value).all(type);
    }
  }

  /** The files of the workspace. */
  *files(): Iterable<LangiumDocument<Document>> {
    for (const document of this.documents.all) {
      if (!isLibraryUri(document.uri)) yield document as LangiumDocument<Document>;
    }
  }

  /** The sessions of the workspace, as far as it is read. Linear in the files that have some. */
  sessions(): Session[] {
    return [...this.index().filesWith(Session.$type)]
      .filter(({ state }) => state >= DocumentState.ComputedScopes)
      .flatMap(({ parseResult }) => parseResult.value.declarations.filter(isSession));
  }

  /** The declarations of that type and name in files that `document` does not see, in the order of the files' URIs. */
  elsewhere(document: LangiumDocument<Document>, type: NamedType, name: string): readonly NamedNode[] {
    const seen = new Set(this.visibleDocuments(document));
    return [...this.index().filesDeclaring(type, name)]
      .filter((other) => !seen.has(other))
      .sort((one, other) => (one.uri.toString() < other.uri.toString() ? -1 : 1))
      .flatMap((other) => nameTableOf(other.parseResult.value).get(type, name));
  }

  /** The file itself, the files it uses, and the library. */
  visibleDocuments(document: LangiumDocument<Document>): readonly LangiumDocument<Document>[] {
    return [...new Set(this.seenFrom(document))];
  }

  /** The same one by one, as far as they are asked for; a file that is used twice comes twice. */
  private *seenFrom(document: LangiumDocument<Document>): Iterable<LangiumDocument<Document>> {
    yield document;
    for (const { document: used } of this.usedFiles(document)) if (used !== undefined) yield used;
    yield* this.library();
  }

  /** The built-in vocabulary. Known once the workspace is loaded, and never changed. */
  library(): readonly LangiumDocument<Document>[] {
    if (this.libraryDocuments === undefined || this.libraryDocuments.length === 0) {
      this.libraryDocuments = this.documents.all
        .filter((document) => isLibraryUri(document.uri))
        .map((document) => document as LangiumDocument<Document>)
        .toArray();
    }
    return this.libraryDocuments;
  }

  /** Undefined where there is no such file. */
  fileAt(uri: URI): LangiumDocument<Document> | undefined {
    return this.documents.getDocument(uri) as LangiumDocument<Document> | undefined;
  }
}
