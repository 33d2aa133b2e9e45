/** Offers what fits at the cursor: names, phrases of the language, ready-made pieces, and files. */
import { type AstNode, AstUtils, GrammarAST, type LangiumDocument } from "langium";
import type { CompletionProvider, CompletionProviderOptions, FuzzyMatcher } from "langium/lsp";
import { type CompletionItem, CompletionList, type CompletionParams } from "vscode-languageserver";
import { type Document, SessionData, Use } from "../generated/tree/ast.ts";
import { type Expectation, Expectations } from "./completion/expectations.ts";
import { FileOffers } from "./completion/files.ts";
import { NameOffers } from "./completion/names.ts";
import { phrasesAt } from "./completion/phrases.ts";
import { type ClientAbilities, NOTHING, type Offers, type Place } from "./completion/place.ts";
import { snippetsAt } from "./completion/snippets.ts";
import { Statements } from "./completion/statements.ts";
import { type Token, type Typing, typingAt } from "./completion/typing.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";
import { withoutComments } from "./text-parts.ts";

/**
 * Only the statement at the cursor and the openings of the braces around it are read. So a mistake elsewhere in the
 * file does not matter, and in a long file an answer takes no longer than in a short one.
 */
export class DrillwrightCompletionProvider implements CompletionProvider {
  readonly completionOptions: CompletionProviderOptions = { triggerCharacters: ['"', "/"] };
  private readonly expectations: Expectations;
  private readonly statements: Statements;
  private readonly names: NameOffers;
  private readonly files: FileOffers;
  private readonly matcher: FuzzyMatcher;
  private client: ClientAbilities = { snippets: false, insertReplace: false };

  constructor(services: DrillwrightEditorServices) {
    this.expectations = new Expectations(services);
    this.statements = new Statements(this.expectations);
    this.names = new NameOffers(services);
    this.files = new FileOffers(services);
    this.matcher = services.shared.lsp.FuzzyMatcher;
    services.shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
      const item = capabilities.textDocument?.completion?.completionItem;
      this.client = {
        snippets: item?.snippetSupport ?? false,
        insertReplace: item?.insertReplaceSupport ?? false,
      };
    });
  }

  async getCompletion(document: LangiumDocument, { position }: CompletionParams): Promise<CompletionList> {
    const { textDocument } = document;
    const offset = textDocument.offsetAt(position);
    const typing = typingAt(textDocument.getText(), offset, this.expectations.declarations());
    const items: CompletionItem[] = [];
    let isIncomplete = false;
    for (const token of typing?.tokens ?? []) {
      const place = this.placeOf(document as LangiumDocument<Document>, typing as Typing, token);
      for (const offers of await this.offersAt(place)) {
        items.push(...offers.items);
        isIncomplete ||= offers.isIncomplete;
      }
    }
    return CompletionList.create(distinct(items), isIncomplete);
  }

  private placeOf(document: LangiumDocument<Document>, typing: Typing, token: Token): Place {
    const before = token.quotes === "none" ? token.start : token.start - 1;
    const body = withoutComments(document.textDocument.getText().slice(typing.bodyStart, before));
    const openings = this.statements.openings(typing.openings);
    const { text: statement, expected } = this.statements.at(openings, body);
    return {
      document,
      token,
      statement,
      openings,
      expected,
      client: this.client,
      matches: (name) => this.matcher.match(token.typed, name),
    };
  }

  private async offersAt(place: Place): Promise<Offers[]> {
    const offers: (Offers | Promise<Offers>)[] = [snippetsAt(place), phrasesAt(place)];
    for (const expectation of place.expected) {
      if (GrammarAST.isCrossReference(expectation)) {
        offers.push(this.names.at(place, expectation, isText(expectation.terminal)));
      } else if (isText(expectation)) {
        offers.push(this.pathsAt(place, expectation));
      }
    }
    return Promise.all(offers);
  }

  private pathsAt(place: Place, expectation: Expectation): Offers | Promise<Offers> {
    const property = AstUtils.getContainerOfType(expectation, GrammarAST.isAssignment)?.feature;
    if (property !== "path") return NOTHING;
    switch (AstUtils.getContainerOfType(expectation, GrammarAST.isParserRule)?.name) {
      case Use.$type:
        return this.files.used(place);
      case SessionData.$type:
        return this.files.tables(place);
      default:
        return NOTHING;
    }
  }
}

/** Whether the grammar wants a text in quotation marks. */
function isText(element: AstNode | undefined): boolean {
  return GrammarAST.isRuleCall(element) && element.rule.ref?.name === "STRING";
}

/** Each offer once; a ready-made piece goes before the bare word of the same name. */
function distinct(items: readonly CompletionItem[]): CompletionItem[] {
  const byLabel = new Map<string, CompletionItem>();
  for (const item of items) if (!byLabel.has(item.label)) byLabel.set(item.label, item);
  return [...byLabel.values()];
}
