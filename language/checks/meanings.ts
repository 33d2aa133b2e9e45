/** What the plans, drills and windows of a file mean, for the checks that look at that. */
import { type AstNode, AstUtils, type LangiumDocument } from "langium";
import type {
  Against,
  Block as BlockModel,
  Metric as MetricModel,
  Position,
} from "../../shared/plan-model.ts";
import { Vocabulary } from "../analysis/possibility/vocabulary.ts";
import type { BlockInPlan } from "../analysis/subject.ts";
import {
  type Block,
  type Document,
  type Drill,
  isBlock,
  isDrill,
  isForClubs,
  isMetric,
  isPlan,
  Metric,
  type Plan,
} from "../generated/tree/ast.ts";
import { lowerBlock } from "../lowering/block.ts";
import { baselineBefore } from "../lowering/plan.ts";
import { IncompleteError } from "../lowering/unresolved.ts";
import { lowerMetric } from "../lowering/vocabulary.ts";
import type { Names } from "../names/names.ts";
import type { TextRange } from "./check.ts";
import { faultyParts } from "./faulty-parts.ts";
import { type Answers, Memory } from "./remembered.ts";
import { placedText, surroundingsOf } from "./surroundings.ts";

/** A block, or a drill by itself, in which every parameter stands for its default. Files are named by their URI. */
export interface Meaning extends BlockInPlan {
  readonly node: Block | Drill;
}

/** Lowers each plan and drill once, when it is first asked for. What has an error in it, or is not all known, has no meaning. */
export class Meanings {
  private readonly document: LangiumDocument<Document>;
  private readonly names: Names;
  private readonly isBroken: (node: AstNode) => boolean;
  private readonly errorsFound: () => readonly TextRange[];
  private readonly known = new Map<Plan | Drill, readonly Meaning[]>();
  private readonly vocabularies = new Map<LangiumDocument<Document>, Vocabulary>();
  private readonly memory: Memory;
  private readonly answers = new Map<Plan | Drill, Answers>();
  private surroundings: string | undefined;
  private faulty: ReadonlySet<AstNode> | undefined;

  /** @param errorsFound the places of the errors in the file, asked for once. */
  constructor(
    document: LangiumDocument<Document>,
    names: Names,
    isBroken: (node: AstNode) => boolean,
    errorsFound: () => readonly TextRange[],
  ) {
    this.document = document;
    this.names = names;
    this.isBroken = isBroken;
    this.errorsFound = errorsFound;
    this.memory = Memory.of(document);
  }

  /** The blocks of a plan in order; a drill is one. Also of a plan or drill of another file. */
  of(node: Plan | Drill): readonly Meaning[] {
    let known = this.known.get(node);
    if (known === undefined) {
      known = this.lower(node);
      this.known.set(node, known);
    }
    return known;
  }

  /** What was found out about a plan or drill of this file when all that it hangs on was the same. */
  remembered(node: Plan | Drill): Answers {
    let answers = this.answers.get(node);
    if (answers === undefined) {
      this.surroundings ??= surroundingsOf(this.document, this.names);
      const parts = isPlan(node) ? [node, ...node.statements.filter(isBlock)] : [node];
      const soundness = parts.map((part) => Number(this.isSound(part))).join("");
      answers = this.memory.about(`${soundness} ${placedText(node)} ${this.surroundings}`);
      this.answers.set(node, answers);
    }
    return answers;
  }

  /** Every check has been asked. */
  complete(): void {
    this.memory.forgetTheRest();
  }

  /** The metrics that can be meant in a file. */
  vocabulary(document: LangiumDocument<Document> = this.document): Vocabulary {
    let vocabulary = this.vocabularies.get(document);
    if (vocabulary === undefined) {
      vocabulary = this.vocabularyOf(document);
      this.vocabularies.set(document, vocabulary);
    }
    return vocabulary;
  }

  /** Whether nothing is known to be wrong with a node. Of other files no more is known than whether they can be read. */
  isSound(node: AstNode): boolean {
    const document = AstUtils.getDocument<Document>(node);
    if (document !== this.document) return document.parseResult.parserErrors.length === 0;
    this.faulty ??= faultyParts(document, this.errorsFound());
    return !this.isBroken(node) && !this.faulty.has(node) && !this.faulty.has(document.parseResult.value);
  }

  /** What lowering a node gives; undefined where something is not known, or may have holes. */
  attempt<T>(node: AstNode, lower: () => T): T | undefined {
    try {
      return lower();
    } catch (error) {
      if (error instanceof IncompleteError || this.mayHaveHoles(AstUtils.getDocument(node))) return undefined;
      throw error;
    }
  }

  /** Whether something that the file refers to could not be read as a whole. */
  private mayHaveHoles(document: LangiumDocument<Document>): boolean {
    return this.names
      .visibleDocuments(document)
      .some(({ parseResult }) => parseResult.parserErrors.length + parseResult.lexerErrors.length > 0);
  }

  /** Where a file declares and brings in no metric of its own, the words of the library are known from before. */
  private vocabularyOf(document: LangiumDocument<Document>): Vocabulary {
    const library = this.names.library();
    const own = this.names.visibleDocuments(document).filter((visible) => !library.includes(visible));
    const hasOwn = own.some((visible) => visible.parseResult.value.declarations.some(isMetric));
    const [first] = library;
    if (hasOwn || first === undefined) return new Vocabulary(this.metricsIn(document));
    let builtIn = builtInVocabulary.get(first);
    if (builtIn === undefined) {
      builtIn = new Vocabulary(this.metricsIn(document));
      builtInVocabulary.set(first, builtIn);
    }
    return builtIn;
  }

  private metricsIn(document: LangiumDocument<Document>): Map<string, MetricModel> {
    const metrics = new Map<string, MetricModel>();
    for (const node of this.names.visible(document, Metric.$type)) {
      if (!isMetric(node) || metrics.has(node.name)) continue;
      const metric = this.attempt(node, () => lowerMetric(node));
      if (metric !== undefined) metrics.set(node.name, metric);
    }
    return metrics;
  }

  private lower(node: Plan | Drill): Meaning[] {
    if (!this.isSound(node)) return [];
    const vocabulary = this.vocabulary(AstUtils.getDocument<Document>(node));
    const blocks: readonly (Block | Drill)[] = isPlan(node) ? node.statements.filter(isBlock) : [node];
    const others = new Map<string, BlockModel>();
    return blocks.flatMap((block) => {
      const drill = isBlock(block) ? block.use?.drill?.ref : undefined;
      if (!this.isSound(block) || (drill !== undefined && !this.isSound(drill))) return [];
      const around = { ...aroundBlock(node, block), fileName };
      const model = this.attempt(node, () => lowerBlock(block as Block, around));
      if (model === undefined) return [];
      others.set(model.name, model);
      return [{ node: block, block: model, others, vocabulary, isOwn: isWithin(block) }];
    });
  }
}

/** By the first file of the library, which never changes. */
const builtInVocabulary = new WeakMap<LangiumDocument<Document>, Vocabulary>();

/** Whether a place lies in a node. */
function isWithin(node: AstNode): Meaning["isOwn"] {
  const uri = fileName(AstUtils.getDocument(node).uri);
  const { start, end } = node.$cstNode?.range ?? { start: NOWHERE, end: NOWHERE };
  return ({ file, range }) => file === uri && !isBefore(range.start, start) && !isBefore(end, range.end);
}

const NOWHERE: Position = { line: 0, character: 0 };

function isBefore(one: Position, other: Position): boolean {
  return one.line < other.line || (one.line === other.line && one.character < other.character);
}

export const fileName = (uri: { toString(): string }) => uri.toString();

function aroundBlock(
  node: Plan | Drill,
  block: Block | Drill,
): { firstClub: string | null; baseline: Against | undefined } {
  if (isDrill(node)) return { firstClub: null, baseline: undefined };
  const clubs = node.statements.filter(isForClubs).flatMap((line) => line.clubs);
  const firstClub = clubs[0]?.ref?.name ?? null;
  return { firstClub, baseline: baselineBefore(block as Block, node.statements.filter(isBlock)) };
}
