/** Knows which files declare a name or use a file, and finds who refers to something when somebody asks. */
import {
  type AstNode,
  AstUtils,
  CstUtils,
  DefaultIndexManager,
  type LangiumDocument,
  type ReferenceDescription,
  type Stream,
  stream,
  type URI,
} from "langium";
import type { Declaration, Document } from "../generated/tree/ast.ts";
import { FilesBy } from "./files-by.ts";
import { type NamedType, nameTableOf } from "./name-table.ts";
import { useTarget } from "./use-target.ts";

/**
 * The framework keeps a description of every reference of every file, made anew at each keystroke. Nothing here needs
 * them but "find all references" and rename, which look through the linked references instead.
 */
export class DrillwrightIndexManager extends DefaultIndexManager {
  /** By type, and by type and name. */
  private readonly declaring = new FilesBy();
  /** By the URI that is used. */
  private readonly using = new FilesBy();

  /** The files in which something of that type has that name. */
  filesDeclaring(type: NamedType, name: string): Iterable<LangiumDocument<Document>> {
    return this.declaring.get(nameKey(type, name));
  }

  /** The files in which something of that type is declared. */
  filesWith(type: Declaration["$type"]): Iterable<LangiumDocument<Document>> {
    return this.declaring.get(type);
  }

  /** The files that use the one with this URI, whether that is there or not. */
  filesUsing(uri: string): Iterable<LangiumDocument> {
    return this.using.get(uri);
  }

  override async updateContent(...args: Parameters<DefaultIndexManager["updateContent"]>): Promise<void> {
    await super.updateContent(...args);
    const document = args[0] as LangiumDocument<Document>;
    const { declarations, uses } = document.parseResult.value;
    const named = [...nameTableOf(document.parseResult.value).all()];
    this.declaring.note(document, [
      ...new Set(declarations.map(({ $type }) => $type)),
      ...named.map((node) => nameKey(node.$type, node.name)),
    ]);
    this.using.note(
      document,
      uses.flatMap((use) => useTarget(use, document.uri)?.toString() ?? []),
    );
  }

  override removeContent(uri: URI): void {
    super.removeContent(uri);
    this.declaring.forget(uri.toString());
    this.using.forget(uri.toString());
  }

  override async updateReferences(): Promise<void> {}

  /** Linear in the references of the workspace. */
  override findAllReferences(target: AstNode, targetPath: string): Stream<ReferenceDescription> {
    const targetUri = AstUtils.getDocument(target).uri;
    const found: ReferenceDescription[] = [];
    for (const document of this.documents.all) {
      for (const reference of document.references) {
        if (!("ref" in reference) || reference.ref !== target || reference.$refNode === undefined) continue;
        const { AstNodeLocator } = this.serviceRegistry.getServices(document.uri).workspace;
        found.push({
          sourceUri: document.uri,
          sourcePath: AstNodeLocator.getAstNodePath(reference.$refNode.astNode),
          targetUri,
          targetPath,
          segment: CstUtils.toDocumentSegment(reference.$refNode),
          local: document.uri.toString() === targetUri.toString(),
        });
      }
    }
    return stream(found);
  }
}

function nameKey(type: string, name: string): string {
  return `${type} ${name}`;
}
