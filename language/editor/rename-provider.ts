/** Renames a declaration and all that refer to it, or says why not. */
import {
  type AstNode,
  AstUtils,
  type CstNode,
  GrammarAST,
  GrammarUtils,
  type LangiumDocument,
  type LangiumDocuments,
  type Lexer,
  type NameProvider,
  type References,
  UriUtils,
  ValueConverter,
} from "langium";
import type { RenameProvider } from "langium/lsp";
import {
  LSPErrorCodes,
  type Position,
  type Range,
  type RenameParams,
  ResponseError,
  type TextDocumentPositionParams,
  TextEdit,
  type WorkspaceEdit,
} from "vscode-languageserver";
import {
  Block,
  type Document,
  isBlock,
  isCategory,
  isDirection,
  isMetric,
  isParameter,
  isPlan,
} from "../generated/tree/ast.ts";
import { isLibraryUri } from "../library/library.ts";
import { NAMED_TYPES, type NamedType } from "../names/name-table.ts";
import type { Names } from "../names/names.ts";
import { directionsOf } from "../types/directions.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";
import { leafAt } from "./words.ts";

type Named = AstNode & { readonly name: string };
type File = LangiumDocument<Document>;

export class DrillwrightRenameProvider implements RenameProvider {
  private readonly references: References;
  private readonly nameProvider: NameProvider;
  private readonly lexer: Lexer;
  private readonly names: Names;
  private readonly documents: LangiumDocuments;
  private readonly version: (uri: string) => number | null;
  private hasVersionedEdits = false;

  constructor(services: DrillwrightEditorServices) {
    this.references = services.references.References;
    this.nameProvider = services.references.NameProvider;
    this.lexer = services.parser.Lexer;
    this.names = services.names.Names;
    this.documents = services.shared.workspace.LangiumDocuments;
    this.version = (uri) => services.shared.workspace.TextDocuments.get(uri)?.version ?? null;
    services.shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
      this.hasVersionedEdits = capabilities.workspace?.workspaceEdit?.documentChanges ?? false;
    });
  }

  /** The name at this place, without its quotation marks. @throws ResponseError where it is not one to rename. */
  prepareRename(document: LangiumDocument, { position }: TextDocumentPositionParams): Range | undefined {
    const target = this.targetAt(document, position);
    if (target === undefined) return undefined;
    const { start, end } = target.leaf.range;
    if (!target.isText) return { start, end };
    return {
      start: { line: start.line, character: start.character + 1 },
      end: { line: end.line, character: end.character - 1 },
    };
  }

  /** @throws ResponseError where the name is not to be renamed, or the new one will not do. */
  rename(document: LangiumDocument, { position, newName }: RenameParams): WorkspaceEdit | undefined {
    const target = this.targetAt(document, position);
    if (target === undefined) return undefined;
    const newText = target.isText ? asText(newName) : this.asWord(newName, target.nameCst);
    this.refuseTaken(target.node, target.isText ? ValueConverter.convertString(newText) : newText);

    const changes: Record<string, TextEdit[]> = {};
    for (const { sourceUri, segment } of this.references.findReferences(target.node, {
      includeDeclaration: true,
    })) {
      const uri = sourceUri.toString();
      changes[uri] = [...(changes[uri] ?? []), TextEdit.replace(segment.range, newText)];
    }
    if (!this.hasVersionedEdits) return { changes };
    return {
      documentChanges: Object.entries(changes).map(([uri, edits]) => ({
        textDocument: { uri, version: this.version(uri) },
        edits,
      })),
    };
  }

  private targetAt(document: LangiumDocument, position: Position) {
    const leaf = leafAt(document, position);
    const node = leaf && (this.references.findDeclarations(leaf)[0] as Named | undefined);
    const nameCst = node && this.nameProvider.getNameNode(node);
    if (leaf === undefined || node === undefined || nameCst === undefined) return undefined;
    if (isLibraryUri(AstUtils.getDocument(node).uri)) {
      throw refusal(
        `\`${node.name}\` belongs to the built-in library and keeps its name. Declare one of your own, and rename that.`,
      );
    }
    return { leaf, node, nameCst, isText: nameCst.text.startsWith('"') };
  }

  /** A name that stands without quotation marks must be read as one word, and not as a word of the grammar. */
  private asWord(newName: string, nameCst: CstNode): string {
    const name = newName.trim();
    const { tokens, errors } = this.lexer.tokenize(name);
    const [token] = tokens;
    const isOneWord = errors.length === 0 && tokens.length === 1 && token?.image === name;
    if (isOneWord && (token.tokenType.name === "WORD" || keywordsAllowedAs(nameCst).has(name))) return name;
    if (isOneWord && /^\p{L}/u.test(name)) {
      throw refusal(`\`${name}\` is a word of the language and cannot be a name.`);
    }
    throw refusal(
      `\`${name}\` cannot be a name: it needs letters first, then letters, digits and _, with parts joined by - or /, as in \`start-line\` or \`7-iron\`.`,
    );
  }

  /** @throws ResponseError where the new name would mean something else, or something else would come to mean it. */
  private refuseTaken(node: Named, name: string): void {
    if (name === node.name) return;
    const taken = this.holdersOf(node, name).find((other) => other !== node);
    if (taken === undefined) return;
    const file = UriUtils.basename(AstUtils.getDocument(taken).uri);
    throw refusal(`There is already a ${kindOf(taken)} named \`${name}\` in ${file}. Choose another name.`);
  }

  /** What already has the name where `node` can be meant. Linear in the files of the workspace. */
  private holdersOf(node: Named, name: string): Named[] {
    if (isDirection(node)) {
      const metric = AstUtils.getContainerOfType(node, isMetric);
      return metric === undefined ? [] : directionsOf(metric).filter((word) => word.name === name);
    }
    if (isBlock(node)) {
      const plan = AstUtils.getContainerOfType(node, isPlan);
      return plan?.statements.filter(isBlock).filter((block) => block.name === name) ?? [];
    }
    if (isParameter(node)) {
      const { $container: drill } = node;
      return drill.parameters.filter((parameter) => parameter.name === name);
    }
    if (isCategory(node)) {
      const { $container: metric } = node;
      return metric.categories.filter((category) => category.name === name);
    }
    const type = NAMED_TYPES.find((named) => named === node.$type);
    if (type === undefined) return [];
    return this.filesThatSee(AstUtils.getDocument(node) as File).flatMap((file) => [
      ...this.names.find(file, type satisfies NamedType, name),
    ]);
  }

  private filesThatSee(declaring: File): File[] {
    const users = this.documents.all
      .map((document) => document as File)
      .filter((file) => this.names.usedFiles(file).some(({ document }) => document === declaring));
    return [declaring, ...users];
  }
}

/** The keywords that the grammar lets stand for a name at this place. */
function keywordsAllowedAs(nameCst: CstNode): ReadonlySet<string> {
  const terminal = GrammarUtils.findAssignment(nameCst)?.terminal;
  const rule = GrammarAST.isRuleCall(terminal) ? terminal.rule.ref : undefined;
  return new Set(keywordsIn(rule));
}

function keywordsIn(rule: AstNode | undefined): string[] {
  if (!GrammarAST.isParserRule(rule)) return [];
  return AstUtils.streamAst(rule)
    .flatMap((element) => {
      if (GrammarAST.isKeyword(element)) return [element.value];
      return GrammarAST.isRuleCall(element) ? keywordsIn(element.rule.ref) : [];
    })
    .toArray();
}

/** A text with its quotation marks. Escapes that are already there stay; marks that the user typed around it go. */
function asText(newName: string): string {
  const inner = newName.trim().replace(/^"(.*)"$/s, "$1");
  if (inner === "") throw refusal("A name needs at least one character.");
  if (/[\r\n]/.test(inner)) throw refusal("A name stands on one line.");
  const escaped = inner.replace(/\\.|\\$|"/gs, (part) => (part.length > 1 ? part : `\\${part}`));
  return `"${escaped}"`;
}

function kindOf(node: Named): string {
  if (isDirection(node)) return "direction word";
  if (node.$type === Block.$type) return "block";
  return node.$type === "UnitName" ? "unit" : node.$type.toLowerCase();
}

function refusal(message: string): ResponseError<void> {
  return new ResponseError(LSPErrorCodes.RequestFailed, message);
}
