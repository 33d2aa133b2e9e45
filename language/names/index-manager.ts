/** Knows which files declare a name, and finds who refers to something when somebody asks. */
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
import type { Document } from "../generated/tree/ast.ts";
import { type NamedType, nameTableOf } from "./name-table.ts";

/**
 * The framework keeps a description of every reference of every file, made anew at each keystroke. Nothing here needs
 * them but "find all references" and rename, which look through the linked references instead.
 */
export class DrillwrightIndexManager extends DefaultIndexManager {
  /** The URIs of the files that declare a name, by its type and itself. */
  private readonly declaring = new Map<string, Set<string>>();
  /** What each file declares, by its URI. */
  private readonly declared = new Map<string, readonly string[]>();

  /** The URIs of the files in which something of that type has that name. */
  filesDeclaring(type: NamedType, name: string): Iterable<string> {
    return this.declaring.get(nameKey(type, name)) ?? [];
  }

  override async updateContent(...args: Parameters<DefaultIndexManager["updateContent"]>): Promise<void> {
    await super.updateContent(...args);
    const [document] = args;
    const uri = document.uri.toString();
    this.forgetNames(uri);
    const table = nameTableOf((document as LangiumDocument<Document>).parseResult.value);
    const keys = [...new Set([...table.all()].map((node) => nameKey(node.$type, node.name)))];
    this.declared.set(uri, keys);
    for (const key of keys) {
      const files = this.declaring.get(key) ?? new Set();
      this.declaring.set(key, files.add(uri));
    }
  }

  override removeContent(uri: URI): void {
    super.removeContent(uri);
    this.forgetNames(uri.toString());
  }

  private forgetNames(uri: string): void {
    for (const key of this.declared.get(uri) ?? []) {
      const files = this.declaring.get(key);
      files?.delete(uri);
      if (files?.size === 0) this.declaring.delete(key);
    }
    this.declared.delete(uri);
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
