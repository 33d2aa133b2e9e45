/** Where a line begins in the canonical layout: one statement a line. */
import type { AstNode } from "langium";
import type { Document } from "../generated/tree/ast.ts";

/** A statement, declaration, criterion or other part that has a line of its own. */
export interface Line {
  readonly end: number;
  /** Whether blank lines set it apart: a declaration or a block with braces. */
  readonly isRoomy: boolean;
  /** Whether it has a line of its own only behind a brace: a single criterion goes on in the line of `success`. */
  readonly needsBrace: boolean;
}

/** The properties whose members stand one on a line. */
const LISTS = ["uses", "declarations", "statements", "units", "steps", "criteria", "variants"] as const;

/** The types of statements that blank lines set apart. */
const ROOMY: ReadonlySet<string> = new Set(["Block", "Next"]);

/** Every part with a line of its own, by the offset of its first token. Cost: linear in these parts. */
export function linesOf(root: Document): Map<number, Line> {
  const lines = new Map<number, Line>();
  visit(root, lines, true);
  return lines;
}

function visit(node: AstNode, lines: Map<number, Line>, isFile: boolean): void {
  for (const list of LISTS) {
    const parts = (node as unknown as Record<string, unknown>)[list];
    if (!Array.isArray(parts)) continue;
    for (const [index, part] of (parts as AstNode[]).entries()) {
      const cst = part.$cstNode;
      if (cst !== undefined) {
        const isRoomy = (isFile || ROOMY.has(part.$type)) && cst.text.endsWith("}");
        lines.set(cst.offset, { end: cst.end, isRoomy, needsBrace: !isFile && index === 0 });
      }
      visit(part, lines, false);
    }
  }
  const { criterion } = node as { criterion?: AstNode };
  if (criterion !== undefined) visit(criterion, lines, false);
}
