/** What a refactoring is. Every other file in this folder is one; `refactorings.ts` lists them. */
import type { AstNode, LangiumDocument } from "langium";
import type { CodeActionKind } from "vscode-languageserver";
import type { Fix } from "../../checks/check.ts";
import type { Document } from "../../generated/tree/ast.ts";
import type { Names } from "../../names/names.ts";

export interface RefactoringContext {
  readonly document: LangiumDocument<Document>;
  readonly names: Names;
}

/** A change of the text that keeps what it means, or turns it into a like one. */
export interface Refactoring {
  /** A kind of the protocol: `refactor.extract`, `refactor.inline`, `refactor.rewrite`. */
  readonly kind: CodeActionKind;
  /** What can be done at a node, one of those around the cursor. Files with syntax errors are not asked for. */
  readonly offer: (node: AstNode, context: RefactoringContext) => readonly Fix[];
}
