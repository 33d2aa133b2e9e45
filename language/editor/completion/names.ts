/** The names that can stand at a place: those the file knows, and some of other files together with their `use`. */
import {
  type AstNode,
  type AstNodeDescription,
  type DocumentationProvider,
  type GrammarAST,
  type IndexManager,
  isReference,
  type LangiumDocument,
} from "langium";
import type { NodeKindProvider } from "langium/lsp";
import type { CompletionItem } from "vscode-languageserver";
import { insertUse } from "../../checks/edits.ts";
import {
  Block,
  Direction,
  type Document,
  isBlock,
  isDimension,
  isMetric,
  isSession,
  isSessionPlan,
  isShownIn,
  type Metric,
  type Unit,
  UnitName,
} from "../../generated/tree/ast.ts";
import { isLibraryUri } from "../../library/library.ts";
import type { NamedType } from "../../names/name-table.ts";
import type { Names } from "../../names/names.ts";
import { usePath } from "../../names/use-target.ts";
import { directionsOf } from "../../types/directions.ts";
import { firstSentence } from "../descriptions/markdown.ts";
import { meaningOf, worthOf } from "../descriptions/vocabulary.ts";
import type { DrillwrightEditorServices } from "../editor-module.ts";
import { NOTHING, type Offers, type Place, RANK, sortText, textEdit, wordEdit } from "./place.ts";
import { Subjects } from "./subject.ts";

/** How many names of files that are not used yet are offered at once. */
const MOST_OTHERS = 30;

type Named = AstNode & { readonly name: string };

export class NameOffers {
  private readonly names: Names;
  private readonly index: IndexManager;
  private readonly kinds: NodeKindProvider;
  private readonly documentation: DocumentationProvider;
  private readonly subjects: Subjects;

  constructor(services: DrillwrightEditorServices) {
    this.names = services.names.Names;
    this.index = services.shared.workspace.IndexManager;
    this.kinds = services.shared.lsp.NodeKindProvider;
    this.documentation = services.documentation.DocumentationProvider;
    this.subjects = new Subjects(services);
  }

  /** @param isText whether the grammar wants the name in quotation marks. */
  at(place: Place, reference: GrammarAST.CrossReference, isText: boolean): Offers {
    if (!isText && place.token.quotes !== "none") return NOTHING;
    const type = reference.type.ref?.name ?? "";
    switch (type) {
      case Direction.$type:
        return this.directions(place);
      case UnitName.$type:
        return this.units(place);
      case Block.$type:
        return this.offers(place, blocksOfSessionPlan(place), isText);
      default: {
        const known = this.offers(place, [...this.names.visible(place.document, type as NamedType)], isText);
        const others = this.others(place, type, isText, new Set(known.items.map(({ label }) => label)));
        return { items: [...known.items, ...others.items], isIncomplete: others.isIncomplete };
      }
    }
  }

  private offers(place: Place, nodes: readonly Named[], isText: boolean): Offers {
    const items = nodes
      .filter(({ name }) => place.matches(name))
      .map((node, index) => ({
        ...this.item(place, node, node.name, isText),
        sortText: sortText(RANK.names, index),
      }));
    return { items, isIncomplete: false };
  }

  private item(place: Place, node: AstNode | undefined, name: string, isText: boolean): CompletionItem {
    const documentation = node && this.documentation.getDocumentation(node);
    const dimension = isMetric(node) ? node.dimension?.$refText : undefined;
    return {
      label: name,
      ...(node && { kind: this.kinds.getCompletionItemKind(node) }),
      ...(dimension && { detail: dimension, labelDetails: { description: dimension } }),
      ...(documentation && { documentation: { kind: "markdown", value: firstSentence(documentation) } }),
      textEdit: isText ? textEdit(place, name) : wordEdit(place, name),
    };
  }

  /** The direction words of the metric that the statement speaks of. */
  private directions(place: Place): Offers {
    const metric = this.subjects.metric(place);
    if (metric === undefined || !this.subjects.hasSide(place)) return NOTHING;
    const { items } = this.offers(place, directionsOf(metric), false);
    const meanings = new Map(directionsOf(metric).map((word) => [word.name, meaningOf(word)]));
    return {
      items: items.map((item) => {
        const meaning = meanings.get(item.label);
        return meaning === undefined ? item : { ...item, documentation: meaning };
      }),
      isIncomplete: false,
    };
  }

  /**
   * The units of the dimension that the statement speaks of, under their first name; another spelling once its
   * beginning has been typed.
   */
  private units(place: Place): Offers {
    const { document, token } = place;
    const dimension = this.subjects.dimension(place);
    const dimensions =
      dimension === undefined
        ? [...this.names.visible(document, "Dimension")].filter(isDimension)
        : [dimension];
    const shown = this.shownUnits(place, this.subjects.metric(place));
    const usual = (unit: Unit) => {
      const index = shown.indexOf(unit);
      return index === -1 ? shown.length : index;
    };
    const units = dimensions.flatMap(({ units }) => units).sort((a, b) => usual(a) - usual(b));
    const names = units.flatMap(({ names: [first, ...others] }) => [
      ...(first === undefined ? [] : [first]),
      ...(token.typed === "" ? [] : others.filter(({ name }) => name.startsWith(token.typed))),
    ]);
    const items = names
      .filter(({ name }) => place.matches(name))
      .map((name, index) => ({
        label: name.name,
        kind: this.kinds.getCompletionItemKind(name),
        detail: worthOf(name),
        textEdit: wordEdit(place, name.name),
        sortText: sortText(RANK.names, index),
      }));
    return { items, isIncomplete: false };
  }

  /** The units in which readings are shown: of this metric, then of the others. */
  private shownUnits({ document }: Place, metric: Metric | undefined): (Unit | undefined)[] {
    const metrics = [metric, ...this.names.visible(document, "Metric")].filter(isMetric);
    const units = metrics.map((each) => each.statements.find(isShownIn)?.unit?.ref?.$container);
    return [...new Set(units)];
  }

  /**
   * Names of files that are not used yet, each with the `use` it needs. A word must have been begun, since the
   * vocabulary of other files is large; of plans, players and sources it is mostly one of these that is meant.
   */
  private others(place: Place, type: string, isText: boolean, known: ReadonlySet<string>): Offers {
    const { document, token } = place;
    const candidates = this.index
      .allElements(type)
      .filter(({ documentUri }) => documentUri.scheme === document.uri.scheme && !isLibraryUri(documentUri))
      .filter(({ name }) => !known.has(name));
    if (!isText && token.typed === "") return { items: [], isIncomplete: candidates.head() !== undefined };
    const matching = candidates
      .filter(({ name }) => place.matches(name))
      .limit(MOST_OTHERS + 1)
      .toArray();
    const items = matching
      .slice(0, MOST_OTHERS)
      .map((description, index) => this.otherItem(place, description, isText, index));
    return { items, isIncomplete: matching.length > MOST_OTHERS };
  }

  private otherItem(
    place: Place,
    { node, name, documentUri }: AstNodeDescription,
    isText: boolean,
    index: number,
  ): CompletionItem {
    const path = usePath(place.document.uri, documentUri);
    return {
      ...this.item(place, node, name, isText),
      detail: `from ${path}`,
      labelDetails: { description: path },
      additionalTextEdits: [insertUse(place.document, path)],
      sortText: sortText(RANK.others, index),
    };
  }
}

/** The blocks of the plan that the session at the cursor was practised against. */
function blocksOfSessionPlan({ document, token }: Place): Block[] {
  const session = (document as LangiumDocument<Document>).parseResult.value.declarations.findLast(
    (declaration) => isSession(declaration) && (declaration.$cstNode?.offset ?? 0) <= token.start,
  );
  if (!isSession(session)) return [];
  const reference = session.statements.find(isSessionPlan)?.plan;
  return reference !== undefined && isReference(reference)
    ? (reference.ref?.statements.filter(isBlock) ?? [])
    : [];
}
