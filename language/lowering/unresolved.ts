/** Lowering is for texts without mistakes. */
import type { AstNode, Reference } from "langium";

/** Thrown when a text that has mistakes is lowered: the caller must check it first. */
export class IncompleteError extends Error {
  override readonly name = "IncompleteError";
}

/** The node a reference points at. @throws IncompleteError */
export function resolved<T extends AstNode>(reference: Reference<T>): T {
  const node = reference.ref;
  if (node === undefined)
    throw new IncompleteError(`Nothing is known by the name ${JSON.stringify(reference.$refText)}.`);
  return node;
}
