/** Whole files and whole sessions: from the tree to the model. The files must have been linked and be free of errors. */
import { type AstNode, AstUtils, type LangiumDocument } from "langium";
import type {
  Club as ClubModel,
  Curriculum as CurriculumModel,
  Metric as MetricModel,
  PlanModel,
  ScoringInput,
} from "../../shared/plan-model.ts";
import type { DrillwrightServices } from "../core-module.ts";
import {
  Club,
  type Curriculum,
  type Document,
  type Instrument,
  isClub,
  isCurriculum,
  isFinding,
  isInstrument,
  isMetric,
  isPlan,
  isPlayer,
  isSession,
  isSessionDate,
  isSource,
  Metric,
  type Plan,
  type Player,
  type Session,
} from "../generated/tree/ast.ts";
import { lowerCurriculum } from "./curriculum.ts";
import { lowerFinding } from "./finding.ts";
import { lowerInstrument } from "./instrument.ts";
import type { FileName } from "./place.ts";
import { lowerPlan } from "./plan.ts";
import {
  instrumentOf,
  lowerPlayer,
  lowerSession,
  lowerSource,
  planOf,
  playerOf,
  sourcesOf,
} from "./session.ts";
import { IncompleteError } from "./unresolved.ts";
import { lowerClub, lowerMetric } from "./vocabulary.ts";

const FORMAT = "drillwright/plan-model";
const VERSION = 1;

type File = LangiumDocument<Document>;

/** A declaration, by the file it stands in and its name. */
export interface Declared {
  readonly file: string;
  readonly name: string;
}

/** A session as others may look for it. */
export interface SessionFacts extends Declared {
  /** Year-month-day, or null where it is not stated. */
  readonly date: string | null;
  readonly plan: Declared;
  readonly player: Declared;
}

export class Lowering {
  private readonly services: DrillwrightServices;
  private readonly fileName: FileName;

  /** @param fileName how locations in the model name a file. */
  constructor(services: DrillwrightServices, fileName: FileName) {
    this.services = services;
    this.fileName = fileName;
  }

  /** What a file declares, what its sessions refer to, and the vocabulary they can use. @throws IncompleteError */
  document(file: File): PlanModel {
    assertReadable([file]);
    const { declarations } = file.parseResult.value;
    const sessions = declarations.filter(isSession);
    const plans = distinct([...declarations.filter(isPlan), ...sessions.map(planOf)]);
    const players = distinct([...declarations.filter(isPlayer), ...sessions.map(playerOf)]);
    const sources = distinct([...declarations.filter(isSource), ...sessions.flatMap(sourcesOf)]);
    const instruments = distinct([...declarations.filter(isInstrument), ...sessions.flatMap(instrumentsOf)]);
    const files = filesOf(file, [...plans, ...players, ...sources, ...instruments]);
    assertReadable(files);
    const documentation = (node: AstNode) => this.documentation(node);
    return {
      format: FORMAT,
      version: VERSION,
      metrics: [...this.metrics(files).values()],
      clubs: this.clubs(files),
      plans: plans.map((plan) => lowerPlan(plan, this.fileName, documentation)),
      players: players.map((player) => lowerPlayer(player, this.fileName)),
      sources: sources.map((source) => lowerSource(source, this.fileName)),
      instruments: instruments.map((instrument) => lowerInstrument(instrument, this.fileName)),
      findings: declarations
        .filter(isFinding)
        .map((finding) => lowerFinding(finding, this.fileName, documentation)),
      curricula: declarations
        .filter(isCurriculum)
        .map((curriculum) => lowerCurriculum(curriculum, this.fileName, documentation)),
      sessions: sessions.map((session) => lowerSession(session, this.fileName)),
    };
  }

  /** A session with all that its scoring needs. @throws IncompleteError */
  session(session: Session): ScoringInput {
    const plan = planOf(session);
    const sources = sourcesOf(session);
    const instrument = instrumentOf(session);
    const files = filesOf(AstUtils.getDocument<Document>(session), [
      plan,
      playerOf(session),
      ...sources,
      ...instrumentsOf(session),
    ]);
    assertReadable(files);
    return {
      session: lowerSession(session, this.fileName),
      plan: lowerPlan(plan, this.fileName, (node) => this.documentation(node)),
      player: lowerPlayer(playerOf(session), this.fileName),
      sources: new Map(sources.map((source) => [source.name, lowerSource(source, this.fileName)])),
      instrument: instrument === undefined ? null : lowerInstrument(instrument, this.fileName),
      metrics: this.metrics(files),
      clubs: this.clubs(files),
    };
  }

  /** The steps of a curriculum, with the plans by their names. @throws IncompleteError */
  curriculum(curriculum: Curriculum): CurriculumModel {
    assertReadable([AstUtils.getDocument<Document>(curriculum)]);
    return lowerCurriculum(curriculum, this.fileName, (node) => this.documentation(node));
  }

  /** What a session says of itself. @throws IncompleteError where it does not say its plan or its player */
  facts(session: Session): SessionFacts {
    const declared = (node: Plan | Player | Session) => ({
      file: this.fileName(AstUtils.getDocument(node).uri),
      name: node.name,
    });
    return {
      ...declared(session),
      date: session.statements.find(isSessionDate)?.date ?? null,
      plan: declared(planOf(session)),
      player: declared(playerOf(session)),
    };
  }

  /** The metrics that can be meant in these files. Where two have the same name the first file's is taken. */
  private metrics(files: readonly File[]): Map<string, MetricModel> {
    const metrics = new Map<string, MetricModel>();
    for (const metric of this.visible(files, Metric.$type).filter(isMetric)) {
      if (!metrics.has(metric.name)) metrics.set(metric.name, lowerMetric(metric));
    }
    return metrics;
  }

  private clubs(files: readonly File[]): ClubModel[] {
    return this.visible(files, Club.$type).filter(isClub).map(lowerClub);
  }

  private visible(files: readonly File[], type: typeof Metric.$type | typeof Club.$type): AstNode[] {
    return distinct(files.flatMap((file) => [...this.services.names.Names.visible(file, type)]));
  }

  private documentation(node: AstNode): string | undefined {
    const { documentation } = this.services;
    if (documentation.CommentProvider.getComment(node) === undefined) return undefined; // most have none, and what reads one is large
    return documentation.DocumentationProvider.getDocumentation(node);
  }
}

/** A tree with holes in it has no meaning. @throws IncompleteError */
function assertReadable(files: readonly File[]): void {
  for (const { parseResult, uri } of files) {
    if (parseResult.parserErrors.length + parseResult.lexerErrors.length === 0) continue;
    throw new IncompleteError(`${uri.path} has syntax errors.`);
  }
}

function instrumentsOf(session: Session): Instrument[] {
  const instrument = instrumentOf(session);
  return instrument === undefined ? [] : [instrument];
}

/** The file itself and those in which the nodes stand. */
function filesOf(file: File, nodes: readonly AstNode[]): File[] {
  return distinct([file, ...nodes.map((node) => AstUtils.getDocument<Document>(node))]);
}

function distinct<T>(items: readonly T[]): T[] {
  return [...new Set(items)];
}
