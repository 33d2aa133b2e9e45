/** Looking through the grammar, as every start does. */
import { type AstNode, isAstNode } from "langium";

/**
 * Visits a node and all within it, from the root down. The framework's streams make several objects at each step, which
 * is much in code that is still cold.
 */
export function walk(node: AstNode, visit: (node: AstNode) => void): void {
  visit(node);
  for (const property in node) {
    if (property.startsWith("$")) continue; // what is around it
    const value: unknown = node[property as keyof AstNode];
    if (Array.isArray(value)) {
      for (const item of value) if (isAstNode(item)) walk(item, visit);
    } else if (isAstNode(value)) walk(value, visit);
  }
}
