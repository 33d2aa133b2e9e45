/** What the plans, drills and windows of a file mean, for the checks that look at that. */

import { type AstNode, AstUtils, type LangiumDocument } from "langium";
import { once } from "../../shared/once.ts";
import type {
  Against,
  Block as BlockModel,
  Metric as MetricModel,
  Position,
} from "../../shared/plan-model.ts";
import { isBefore } from "../../shared/position.ts";
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
  isRequirement,
  isSuccess,
  isTarget,
  Metric,
  type Plan,
} from "../generated/tree/ast.ts";
import { lowerBlock, type Surroundings } from "../lowering/block.ts";
import { baselinesIn } from "../lowering/plan.ts";
import { IncompleteError } from "../lowering/unresolved.ts";
import { lowerMetric } from "../lowering/vocabulary.ts";
import type { Names } from "../names/names.ts";
import type { TextRange } from "./check.ts";
import { type FaultyParts, faultyParts } from "./faulty-parts.ts";
import { type Answers, HANGS_ON_MORE, type Memory, type Remembered } from "./remembered.ts";
import { blocksAround, placesAround, startOf, surroundingsOf, textOf } from "./surroundings.ts";

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
  private readonly memory: Memory;
  private readonly askedForOthers = new Set<Block | Drill>();
  private surroundings: number | undefined;
  private faulty: FaultyParts | undefined;

  /**
   * @param errorsFound the places of the errors in the file, asked for once
   * @param memory what was found out about this file and others before
   */
  constructor(
    document: LangiumDocument<Document>,
    names: Names,
    isBroken: (node: AstNode) => boolean,
    errorsFound: () => readonly TextRange[],
    memory: Memory,
  ) {
    this.document = document;
    this.names = names;
    this.isBroken = isBroken;
    this.errorsFound = errorsFound;
    this.memory = memory;
  }

  /** The blocks of a plan in order, also of one in another file; a drill is one. Those that have a meaning. */
  of(node: Plan | Drill): Meaning[] {
    return blocksOf(node).flatMap((block) => this.ofBlock(block) ?? []);
  }

  private readonly modelsOf = once(
    (plan: Plan): ReadonlyMap<string, BlockModel> =>
      new Map(this.of(plan).map(({ block }) => [block.name, block])),
  );

  /** Undefined for a block that has no meaning. */
  readonly ofBlock = once((node: Block | Drill): Meaning | undefined => {
    const isSound = partsOf(node).every((part) => this.isSound(part));
    return isSound ? this.lowered(node) : undefined;
  });

  /**
   * The meaning of a block or drill, or of the lines of it that have no errors in them. What cannot be in part of a block
   * cannot be in the whole, whatever the other lines are to say; but not where they may stand instead of a drill's, and not
   * of goals where it is in doubt what shots aim at or which of them enter.
   */
  ofSoundLines(node: Block | Drill): Meaning | undefined {
    const whole = this.ofBlock(node);
    const without = whole === undefined ? this.faults().lines.get(node) : undefined;
    const isAlone = isDrill(node) || node.use === undefined;
    if (without === undefined || !isAlone || this.isBroken(node)) return whole;
    if (!partsOf(node).every((part) => part === node || this.isSound(part))) return undefined;
    const isInDoubt = [...without].some((line) => isTarget(line) || isRequirement(line));
    const goals = isInDoubt ? node.statements.filter(isSuccess) : [];
    return this.lowered(node, new Set([...without, ...goals]));
  }

  /**
   * The answer to a question about a block or drill of this file: what was found out here or in another file when all that
   * it hangs on was the same, else what is found out now. It hangs on other blocks of the plan only if it asks for them,
   * and on where things stand only if there is something to be said.
   *
   * @param question the same each time, whatever the file says
   */
  answer(
    node: Block | Drill,
    question: unknown,
    findOut: () => readonly Remembered[],
  ): readonly Remembered[] {
    const answer = this.answersAbout(node).get(question); // mostly that there is nothing to be said
    if (answer !== undefined && answer !== HANGS_ON_MORE) return answer;
    const stages = [this.answersAbout, this.answersAmongOthers, this.answersAtThisPlace];
    for (const stage of stages) {
      const known = stage(node).get(question);
      if (known === undefined) break;
      if (known !== HANGS_ON_MORE) return known;
    }
    const found = findOut();
    const last = found.length > 0 ? 2 : this.askedForOthers.has(node) ? 1 : 0;
    for (const stage of stages.slice(0, last)) stage(node).set(question, HANGS_ON_MORE);
    stages[last]?.(node).set(question, copied(found));
    return found;
  }

  /** The same of a metric of this file, which hangs on the other words that the file sees, and on where its own stand. */
  answerOn(metric: Metric, question: unknown, findOut: () => readonly Remembered[]): readonly Remembered[] {
    const places = this.placesIn(this.document.parseResult.value);
    const key = `${startOf(metric)} in ${places} of ${this.numberOfSurroundings()} ${this.isSound(metric)} ${textOf(metric)}`;
    const answers = this.memory.about(key);
    const known = answers.get(question);
    if (known !== undefined && known !== HANGS_ON_MORE) return known;
    const found = findOut();
    answers.set(question, copied(found));
    return found;
  }

  private readonly answersAbout = once((node: Block | Drill): Answers => this.memory.about(this.keyOf(node)));

  private readonly answersAmongOthers = once(
    (node: Block | Drill): Answers => this.memory.about(this.keyAmongOthers(node)),
  );

  private readonly answersAtThisPlace = once(
    (node: Block | Drill): Answers =>
      this.memory.about(
        `${startOf(node)} in ${this.placesIn(node.$container)} at ${this.keyAmongOthers(node)}`,
      ),
  );

  /** All that the meaning of a block or drill hangs on, but for what its plan says in other blocks. */
  private readonly keyOf = once((node: Block | Drill): string => {
    const soundness = partsOf(node).map((part) => this.isSound(part));
    const faulty = [...(this.faults().lines.get(node) ?? [])].map(textOf);
    const around = JSON.stringify([this.statedTo(node), soundness, this.isBroken(node), faulty]);
    return `${this.numberOfSurroundings()} ${this.memory.numberOf(around)} ${textOf(node)}`;
  });

  private numberOfSurroundings(): number {
    this.surroundings ??= this.memory.numberOf(surroundingsOf(this.document, this.names));
    return this.surroundings;
  }

  private keyAmongOthers(node: Block | Drill): string {
    const others = isPlan(node.$container) ? this.blocksOfPlan(node.$container) : 0;
    return `${others} of ${this.keyOf(node)}`;
  }

  private readonly placesIn = once((around: Plan | Document): number =>
    this.memory.numberOf(placesAround(around, this.document)),
  );

  private readonly blocksOfPlan = once((plan: Plan): number => {
    const soundness = plan.statements.filter(isBlock).map((block) => Number(this.isSound(block)));
    return this.memory.numberOf(`${soundness.join("")} ${blocksAround(plan)}`);
  });

  /** The metrics that can be meant in a file. */
  vocabulary(document: LangiumDocument<Document> = this.document): Vocabulary {
    return this.vocabularyOf(document);
  }

  /** Whether nothing is known to be wrong with a node. Of other files no more is known than whether they can be read. */
  isSound(node: AstNode): boolean {
    const document = AstUtils.getDocument<Document>(node);
    if (document !== this.document) return document.parseResult.parserErrors.length === 0;
    const { parts } = this.faults();
    return !this.isBroken(node) && !parts.has(node) && !parts.has(document.parseResult.value);
  }

  private faults(): FaultyParts {
    this.faulty ??= faultyParts(this.document, this.errorsFound());
    return this.faulty;
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
  private readonly vocabularyOf = once((document: LangiumDocument<Document>): Vocabulary => {
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
  });

  private metricsIn(document: LangiumDocument<Document>): Map<string, MetricModel> {
    const metrics = new Map<string, MetricModel>();
    for (const node of this.names.visible(document, Metric.$type)) {
      if (!isMetric(node) || metrics.has(node.name)) continue;
      const metric = this.attempt(node, () => lowerMetric(node));
      if (metric !== undefined) metrics.set(node.name, metric);
    }
    return metrics;
  }

  private readonly statedBy = once(statedBy);

  /** What a plan tells a block. */
  private statedTo(node: Block | Drill): Stated {
    if (!isPlan(node.$container)) return { firstClub: null, baseline: undefined };
    const { firstClub, baselines } = this.statedBy(node.$container);
    return { firstClub, baseline: baselines.get(node) };
  }

  private lowered(node: Block | Drill, without?: ReadonlySet<AstNode>): Meaning | undefined {
    const plan = isPlan(node.$container) ? node.$container : undefined;
    const block = this.attempt(node, () =>
      lowerBlock(node as Block, { ...this.statedTo(node), fileName, without }),
    );
    if (block === undefined) return undefined;
    return {
      node,
      block,
      others: () => {
        this.askedForOthers.add(node);
        return plan === undefined ? NO_OTHERS : this.modelsOf(plan);
      },
      vocabulary: this.vocabulary(AstUtils.getDocument<Document>(node)),
      isOwn: isWithin(node),
    };
  }
}

const NO_OTHERS: ReadonlyMap<string, BlockModel> = new Map();

/** A drill is a block by itself. */
export const blocksOf = once((node: Plan | Drill): readonly (Block | Drill)[] =>
  isPlan(node) ? node.statements.filter(isBlock) : [node],
);

/** Plain data, as it can be written. A part of a text would hold on to the whole, long after an edit. */
function copied(found: readonly Remembered[]): readonly Remembered[] {
  return found.length === 0 ? found : JSON.parse(JSON.stringify(found));
}

/** What must be sound for a block or drill to have a meaning: itself, what is around it, and the drill that it is made from. */
function partsOf(node: Block | Drill): AstNode[] {
  const drill = isBlock(node) ? node.use?.drill?.ref : undefined;
  return drill === undefined ? [node, node.$container] : [node, node.$container, drill];
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

export const fileName = (uri: { toString(): string }) => uri.toString();

type Stated = Pick<Surroundings, "firstClub" | "baseline">;

function statedBy({ statements }: Plan) {
  const clubs = statements.filter(isForClubs).flatMap((line) => line.clubs);
  return {
    firstClub: clubs[0]?.ref?.name ?? null,
    baselines: baselinesIn(statements.filter(isBlock)) as ReadonlyMap<AstNode, Against>,
  };
}
