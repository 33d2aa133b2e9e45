/** What the framework wants to know of a node that a reference may point at, worked out when it is looked at. */
import {
  type AstNode,
  type AstNodeDescription,
  type AstNodeDescriptionProvider,
  AstUtils,
  type DocumentSegment,
} from "langium";

type Named = AstNode & { readonly name: string };

/** Descriptions by node: a metric that a file names a hundred times is described once. */
const descriptions = new WeakMap<AstNode, AstNodeDescription>();

/** Most references need no more than the node; its path and its places in the text are made on demand. */
export function describe(node: Named, provider: AstNodeDescriptionProvider): AstNodeDescription {
  let description = descriptions.get(node);
  if (description === undefined) {
    description = new LateDescription(node, provider);
    descriptions.set(node, description);
  }
  return description;
}

class LateDescription implements AstNodeDescription {
  readonly node: AstNode;
  readonly name: string;
  readonly type: string;
  readonly documentUri: AstNodeDescription["documentUri"];
  private readonly provider: AstNodeDescriptionProvider;
  private full: AstNodeDescription | undefined;

  constructor(node: Named, provider: AstNodeDescriptionProvider) {
    this.node = node;
    this.name = node.name;
    this.type = node.$type;
    this.documentUri = AstUtils.getDocument(node).uri;
    this.provider = provider;
  }

  get path(): string {
    return this.complete().path;
  }

  // Every node that has a name has been read from a text, and so has its places there.
  get nameSegment(): DocumentSegment {
    return this.complete().nameSegment as DocumentSegment;
  }

  get selectionSegment(): DocumentSegment {
    return this.complete().selectionSegment as DocumentSegment;
  }

  private complete(): AstNodeDescription {
    this.full ??= this.provider.createDescription(this.node, this.name);
    return this.full;
  }
}
