/** Finds who refers to something when somebody asks. */
import {
  type AstNode,
  AstUtils,
  CstUtils,
  DefaultIndexManager,
  type ReferenceDescription,
  type Stream,
  stream,
} from "langium";

/**
 * The framework keeps a description of every reference of every file, made anew at each keystroke. Nothing here needs
 * them but "find all references" and rename, which look through the linked references instead.
 */
export class DrillwrightIndexManager extends DefaultIndexManager {
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
