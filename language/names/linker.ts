/** Resolves the references of a file without looking for them: they are noted while the file is parsed. */
import {
  type AstNode,
  AstUtils,
  Cancellation,
  type CstNode,
  DefaultLinker,
  interruptAndCheck,
  type LangiumDocument,
  type Reference,
  type ReferenceInfo,
} from "langium";

/** References resolved between two chances to be interrupted. */
const REFERENCES_A_SLICE = 500;

/** What the framework's references hold. */
interface Found {
  _ref: unknown;
  _nodeDescription: unknown;
}

/**
 * The framework's linker walks over every node of a tree to find its references, which at some thousand lines takes
 * longer than resolving them. Cost here: linear in the references.
 */
export class NotingLinker extends DefaultLinker {
  private built: ReferenceInfo[] = [];
  private readonly byRoot = new WeakMap<AstNode, readonly ReferenceInfo[]>();

  override buildReference(
    node: AstNode,
    property: string,
    cst: CstNode | undefined,
    text: string,
  ): Reference {
    const reference = super.buildReference(node, property, cst, text);
    this.built.push({ reference, container: node, property });
    return reference;
  }

  /** The framework deletes properties, which makes every reference slow of a tree that is mostly given up anyway. */
  override unlink(document: LangiumDocument): void {
    for (const reference of document.references as unknown as Found[]) {
      reference._ref = undefined;
      reference._nodeDescription = undefined;
    }
    document.references = [];
  }

  /** Gives the references built since the last call to the tree they were built for. */
  claim(root: AstNode): void {
    this.byRoot.set(root, this.built);
    this.built = [];
  }

  /** Drops them: the tree was given up. */
  forget(): void {
    this.built = [];
  }

  override async link(
    document: LangiumDocument,
    cancelToken = Cancellation.CancellationToken.None,
  ): Promise<void> {
    const root = document.parseResult.value;
    const references = this.byRoot.get(root);
    if (references === undefined) return super.link(document, cancelToken);
    let linked = 0;
    for (const reference of references) {
      if (++linked % REFERENCES_A_SLICE === 0) await interruptAndCheck(cancelToken);
      // The parser gives up nodes when it recovers from a mistake; what they refer to is nobody's concern.
      if (AstUtils.findRootNode(reference.container) === root) this.doLink(reference, document);
    }
  }
}
