/** Says what is under the cursor: a declared name, a used file, a word of the grammar, or a goal. */
import {
  AstUtils,
  type CstNode,
  type DocumentationProvider,
  GrammarAST,
  GrammarUtils,
  type LangiumDocument,
  type References,
} from "langium";
import type { HoverProvider } from "langium/lsp";
import type { Hover, HoverParams } from "vscode-languageserver";
import { type Document, isCriterion, isUse } from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import { describeCriterion } from "./descriptions/criterion.ts";
import { describe } from "./descriptions/describe.ts";
import { keywordDocumentation } from "./descriptions/keyword.ts";
import { code, inWords } from "./descriptions/markdown.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";
import { leafAt } from "./words.ts";

/** How many of a used file's names are listed. */
const MOST_NAMES = 12;

export class DrillwrightHoverProvider implements HoverProvider {
  private readonly references: References;
  private readonly documentation: DocumentationProvider;
  private readonly names: Names;

  constructor(services: DrillwrightEditorServices) {
    this.references = services.references.References;
    this.documentation = services.documentation.DocumentationProvider;
    this.names = services.names.Names;
  }

  getHoverContent(document: LangiumDocument, { position }: HoverParams): Hover | undefined {
    const leaf = leafAt(document, position);
    if (leaf === undefined || leaf.hidden || leaf.end <= document.textDocument.offsetAt(position))
      return undefined;
    return (
      hover(this.declaration(leaf), leaf) ??
      hover(this.usedFile(leaf, document as LangiumDocument<Document>), leaf) ??
      keywordHover(leaf) ??
      criterionHover(leaf)
    );
  }

  private declaration(leaf: CstNode): string | undefined {
    const node = this.references.findDeclarations(leaf)[0];
    return node && describe(node, this.documentation.getDocumentation(node));
  }

  private usedFile(leaf: CstNode, document: LangiumDocument<Document>): string | undefined {
    const use = leaf.astNode;
    if (!isUse(use) || GrammarUtils.findAssignment(leaf)?.feature !== "path") return undefined;
    const used = this.names.usedFiles(document).find((file) => file.use === use)?.document;
    if (used === undefined) return "There is no such file in the workspace.";
    const declared = used.parseResult.value.declarations.flatMap(({ name }) => (name ? [code(name)] : []));
    if (declared.length === 0) return "Declares nothing.";
    const more = declared.length - MOST_NAMES;
    return `Declares ${inWords(more > 0 ? [...declared.slice(0, MOST_NAMES), `${more} more`] : declared)}.`;
  }
}

function hover(markdown: string | undefined, cst: CstNode): Hover | undefined {
  return markdown ? { contents: { kind: "markdown", value: markdown }, range: cst.range } : undefined;
}

function criterionHover(leaf: CstNode): Hover | undefined {
  const criterion = AstUtils.getContainerOfType(leaf.astNode, isCriterion);
  return criterion?.$cstNode && hover(describeCriterion(criterion), criterion.$cstNode);
}

function keywordHover(leaf: CstNode): Hover | undefined {
  const keyword = leaf.grammarSource;
  if (!GrammarAST.isKeyword(keyword) || !/\p{L}/u.test(keyword.value)) return undefined;
  return hover(keywordDocumentation(keyword), leaf);
}
