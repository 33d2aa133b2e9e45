/** The names that can stand at a place: those the file knows, and some of other files together with their `use`. */
import {
  type AstNode,
  type AstNodeDescription,
  AstUtils,
  type DocumentationProvider,
  GrammarAST,
  type IndexManager,
  isReference,
  type Reference,
} from "langium";
import type { NodeKindProvider } from "langium/lsp";
import type { CompletionItem } from "vscode-languageserver";
import { METRIC_WORDS } from "../../../shared/metric-words.ts";
import { insertUse } from "../../checks/edits.ts";
import {
  Argument,
  Block,
  Category,
  Club,
  ClubValue,
  type Dimension,
  Direction,
  isBlock,
  isClub,
  isCurriculum,
  isCurriculumStep,
  isDimension,
  isMetric,
  isPlan,
  isSession,
  isSessionPlan,
  isShownIn,
  isUnitName,
  type Metric,
  Parameter,
  type Plan,
  type Unit,
  UnitName,
} from "../../generated/tree/ast.ts";
import { isLibraryUri } from "../../library/library.ts";
import type { NamedType } from "../../names/name-table.ts";
import type { Names } from "../../names/names.ts";
import { savedUri } from "../../names/saved-uri.ts";
import { usePath } from "../../names/use-target.ts";
import { isPlainNumber, sameDimension, vectorOf } from "../../types/dimensions.ts";
import { directionsOf } from "../../types/directions.ts";
import { firstSentence } from "../descriptions/markdown.ts";
import { meaningOf, worthOf } from "../descriptions/vocabulary.ts";
import type { DrillwrightEditorServices } from "../editor-module.ts";
import { givenNames, openUse, parametersAround } from "./drills.ts";
import { NOTHING, type Offers, type Place, RANK, sortText, textEdit, wordEdit } from "./place.ts";
import { Subjects } from "./subject.ts";

/** How many names of files that are not used yet are offered at once. */
const MOST_OTHERS = 30;

/** Letters that must have been typed of a name that is not the thing's own: one begins too many. */
const SHORTEST_OTHER_NAME = 2;

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
        return this.offers(place, this.blocks(place, ruleOf(reference) === "AgainstBlock"), isText);
      case Category.$type:
        return this.offers(place, this.subjects.metric(place)?.categories ?? [], false);
      case "SideOrCategory": {
        const metric = this.subjects.metric(place);
        return this.offers(
          place,
          metric === undefined ? [] : [...directionsOf(metric), ...metric.categories],
          false,
        );
      }
      case Parameter.$type:
        return this.parameters(place, reference);
      case Club.$type:
        if (ruleOf(reference) === ClubValue.$type && this.subjects.wantsClub(place) === false) return NOTHING;
        return this.declarations(place, type, isText);
      case "ClubOrParameter": {
        const clubs = this.offers(place, [...this.names.visible(place.document, Club.$type)], false);
        const parameters = this.offers(
          place,
          parametersAround(place).filter(({ isClub }) => isClub),
          false,
        );
        return { items: [...parameters.items, ...clubs.items], isIncomplete: false };
      }
      default:
        return this.declarations(place, type, isText);
    }
  }

  private declarations(place: Place, type: string, isText: boolean): Offers {
    const known = this.offers(place, [...this.names.visible(place.document, type as NamedType)], isText);
    const others = this.others(place, type, isText, new Set(known.items.map(({ label }) => label)));
    return { items: [...known.items, ...others.items], isIncomplete: others.isIncomplete };
  }

  private offers(place: Place, nodes: readonly Named[], isText: boolean): Offers {
    const direct = nodes
      .filter(({ name }) => place.matches(name))
      .map((node) => this.item(place, node, node.name, isText));
    const items = direct.length > 0 ? direct : this.otherwiseCalled(place, nodes);
    return {
      items: items.map((item, index) => ({ ...item, sortText: sortText(RANK.names, index) })),
      isIncomplete: false,
    };
  }

  /** What is not called so here, but elsewhere in the trade: `attack-angle` for `aoa`, `pitching-wedge` for `pw`. */
  private otherwiseCalled(place: Place, nodes: readonly Named[]): CompletionItem[] {
    const typed = place.token.typed.toLowerCase();
    if (typed.length < SHORTEST_OTHER_NAME) return [];
    return nodes.flatMap((node) => {
      const called = otherNamesOf(node).find((name) => name.startsWith(typed));
      if (called === undefined) return [];
      const item = this.item(place, node, node.name, false);
      return { ...item, filterText: called, labelDetails: { ...item.labelDetails, detail: ` ${called}` } };
    });
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

  /** The arguments that a drill still lacks, or the parameters that fit here of the drill that is being declared. */
  private parameters(place: Place, reference: GrammarAST.CrossReference): Offers {
    const rule = ruleOf(reference);
    const use = openUse(place.statement, place.document, this.names);
    if (rule === Argument.$type && use?.given !== undefined) {
      const given = new Set(givenNames(use.given));
      const { items } = this.offers(
        place,
        use.drill.parameters.filter(({ name }) => !given.has(name)),
        false,
      );
      return {
        items: items.map((item) => ({ ...item, textEdit: wordEdit(place, `${item.label} = `) })),
        isIncomplete: false,
      };
    }
    // What is given to a parameter of a drill is a club or an amount, and no other parameter.
    if (this.subjects.wantsClub(place) !== undefined) return NOTHING;
    const fits = (dimension: Dimension | undefined) => {
      if (dimension === undefined) return false;
      if (rule === "Count") return isPlainNumber(dimension);
      const wanted = this.subjects.dimension(place);
      return wanted === undefined || sameDimension(vectorOf(dimension), vectorOf(wanted));
    };
    return this.offers(
      place,
      parametersAround(place).filter(({ dimension }) => fits(dimension?.ref)),
      false,
    );
  }

  /**
   * The blocks that can be named: of the plan around the cursor, of the session's plan, of the plan of a gate. A change is
   * held against a block before the one around the cursor.
   */
  private blocks(place: Place, mustComeBefore: boolean): Block[] {
    const around = place.document.parseResult.value.declarations.findLast(
      ({ $cstNode }) => ($cstNode?.offset ?? 0) <= place.token.start,
    );
    if (isPlan(around)) {
      const blocks = around.statements.filter(isBlock);
      if (!mustComeBefore) return blocks;
      return blocks.filter(({ $cstNode }) => ($cstNode?.end ?? 0) <= place.token.start);
    }
    if (isSession(around)) return blocksOf(around.statements.find(isSessionPlan)?.plan);
    if (!isCurriculum(around)) return [];
    // The plan of a gate is named behind the block, so all blocks of the curriculum's plans are offered.
    return around.statements.filter(isCurriculumStep).flatMap(({ plan }) => blocksOf(plan));
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
    const share = this.subjects.mayBeShare(place) ? this.names.find(document, UnitName.$type, "%") : [];
    const items = [...names, ...share.filter(isUnitName)]
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
      .filter(
        ({ documentUri }) =>
          documentUri.scheme === savedUri(document.uri).scheme && !isLibraryUri(documentUri),
      )
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

/** The name of the rule that a reference of the grammar stands in. */
function ruleOf(reference: GrammarAST.CrossReference): string | undefined {
  return AstUtils.getContainerOfType(reference, GrammarAST.isParserRule)?.name;
}

/** The blocks of a plan that is referred to; none while that is not known. */
function blocksOf(plan: Reference<Plan> | undefined): Block[] {
  return plan !== undefined && isReference(plan) ? (plan.ref?.statements.filter(isBlock) ?? []) : [];
}

/** What the trade, or tables, call a metric or a club besides its name. */
function otherNamesOf(node: Named): readonly string[] {
  if (isMetric(node)) return METRIC_WORDS[node.name]?.words.map((words) => words.replaceAll(" ", "-")) ?? [];
  return isClub(node) ? node.spellings : [];
}
