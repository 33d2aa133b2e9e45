/**
 * The syntax tree of a text that never changes, kept as JSON: reading it back takes a fraction of parsing the text, for
 * which every start would wait. Where its nodes stand in the text is not kept: that is seldom asked for, by a hover or
 * a jump to a definition, and the first question has the text parsed.
 */
import {
  type AstNode,
  type CstNode,
  CstUtils,
  isAstNode,
  isCompositeCstNode,
  isReference,
  type Mutable,
  type Reference,
} from "langium";
import type { NotingLinker } from "../names/linker.ts";

/** A tree as JSON: the types and properties of its nodes, and the names that its references say. */
export function storeTree(root: AstNode): string {
  return JSON.stringify(root, (key, value) => {
    if (key.startsWith("$") && key !== "$type") return undefined;
    return isReference(value) ? ({ said: value.$refText } satisfies StoredReference) : value;
  });
}

interface StoredReference {
  readonly said: string;
}

/**
 * The tree that was stored. Its references are still to be linked, as in one from the parser. Linear in its nodes.
 * @param parse gives an equal tree, made from the text
 */
export function reviveTree(stored: string, linker: NotingLinker, parse: () => AstNode): AstNode {
  const root: AstNode = JSON.parse(stored);
  revive(root, linker, () => takePlaces(root, parse()));
  linker.claim(root);
  return root;
}

/** Makes nodes and references of what the properties of a node hold. */
function revive(node: AstNode, linker: NotingLinker, readPlaces: () => void): void {
  const revived = (value: unknown, property: string, index?: number): unknown => {
    if (typeof value !== "object" || value === null) return value;
    if ("said" in value) {
      const { said } = value as StoredReference;
      return later(linker.buildReference(node, property, undefined, said), "$refNode", readPlaces);
    }
    const child = value as Mutable<AstNode>;
    revive(child, linker, readPlaces);
    child.$container = node;
    child.$containerProperty = property;
    if (index !== undefined) child.$containerIndex = index;
    return child;
  };
  const properties = propertiesOf(node);
  for (const [property, value] of Object.entries(properties)) {
    properties[property] = Array.isArray(value)
      ? value.map((item, index) => revived(item, property, index))
      : revived(value, property);
  }
  later(node, "$cstNode", readPlaces);
}

/** Gives an object a property that `fill` puts in its place when it is read first. */
function later<T extends AstNode | Reference>(object: T, property: keyof T, fill: () => void): T {
  const get = () => {
    fill();
    return object[property];
  };
  return Object.defineProperty(object, property, { get, configurable: true });
}

/** Gives the nodes and references of a tree the places of those of an equal one, which is of no more use then. */
function takePlaces(root: AstNode, parsed: AstNode): void {
  const nodes = new Map<AstNode, AstNode>();
  pair(root, parsed, nodes);
  if (parsed.$cstNode === undefined) return;
  for (const place of CstUtils.streamCst(parsed.$cstNode)) {
    const node = isCompositeCstNode(place) && nodes.get(place.astNode);
    if (node) (place as Mutable<CstNode>).astNode = node;
  }
}

function pair(own: AstNode, parsed: AstNode, nodes: Map<AstNode, AstNode>): void {
  nodes.set(parsed, own);
  put(own, "$cstNode", parsed.$cstNode);
  const take = (value: unknown, from: unknown) => {
    if (isAstNode(value)) pair(value, from as AstNode, nodes);
    else if (isReference(value)) put(value, "$refNode", (from as Reference).$refNode);
  };
  const properties = propertiesOf(parsed);
  for (const [property, value] of Object.entries(propertiesOf(own))) {
    if (property.startsWith("$")) continue; // what is around it
    const from = properties[property];
    if (!Array.isArray(value)) take(value, from);
    else for (const [index, item] of value.entries()) take(item, (from as unknown[])[index]);
  }
}

function put<T extends AstNode | Reference>(object: T, property: keyof T, value: CstNode | undefined): void {
  Object.defineProperty(object, property, { value, writable: true });
}

function propertiesOf(node: AstNode): Record<string, unknown> {
  return node as unknown as Record<string, unknown>;
}
