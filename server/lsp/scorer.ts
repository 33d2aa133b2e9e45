/** Scores one session as its files stand, with tables that are read once until they change. */
import { type DocumentBuilder, DocumentState, type DocumentValidator } from "langium";
import { type Diagnostic, DiagnosticSeverity } from "vscode-languageserver";
import type { DrillwrightServices } from "../../language/core-module.ts";
import type { Session } from "../../language/generated/tree/ast.ts";
import type { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { Names } from "../../language/names/names.ts";
import { Latest } from "../../shared/latest.ts";
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";
import type { Watcher } from "../import/pieces.ts";
import { type ReadingsAt, readingsAt } from "../report/readings.ts";
import { CachedDataFiles, type GrowingFiles } from "./cached-data-files.ts";
import { type File, fileOf, planOf } from "./declared.ts";
import { otherSessions } from "./other-sessions.ts";
import { TextVersions } from "./text-versions.ts";
import type { WhatIf } from "./what-if.ts";

/** A session that was scored, and what was measured at the rows of its data, in words. */
export interface ScoredSession {
  readonly report: ScoreReport;
  /** What it was made from. */
  readonly input: ScoringInput;
  /** Versions of the texts that were open, by their URIs. */
  readonly versions: ReadonlyMap<string, number>;
  readonly data: SessionData;
  readonly readingsAt: ReadingsAt;
  readonly whatIf: WhatIf;
}

/** What scoring needs from the program that the server is. */
export interface ScoringHost {
  readonly sha256: (content: Uint8Array) => string;
  readonly version: string;
  /** Files that can be followed while they are written; left out where there are none. */
  readonly growingFiles?: GrowingFiles;
}

interface KnownScore {
  readonly scored: ScoredSession;
  readonly changes: number;
}

/** How many shots are kept with what came of them: those of the sessions of a season need not all be. */
const MOST_SHOTS = 200_000;

const knownScores = () =>
  new Latest<Session, KnownScore>(MOST_SHOTS, ({ scored }) => scored.data.shots.length);

export class Scorer {
  readonly dataFiles: CachedDataFiles;
  private readonly names: Names;
  private readonly lowering: Lowering;
  private readonly version: string;
  private readonly versions: TextVersions;
  private readonly validator: DocumentValidator;
  private readonly builder: DocumentBuilder;
  /** Whether a file without diagnostics is free of errors; known only where `check` was asked to find out. */
  private readonly soundness = new WeakMap<File, boolean>();
  /** What came out, and how often tables had changed by then. Forgotten when a text changes. */
  private known = knownScores();

  constructor(
    services: DrillwrightServices,
    lowering: Lowering,
    { sha256, version, growingFiles }: ScoringHost,
    versions = new TextVersions(),
  ) {
    const { DocumentBuilder, FileSystemProvider } = services.shared.workspace;
    this.builder = DocumentBuilder;
    this.dataFiles = new CachedDataFiles(FileSystemProvider, sha256, growingFiles);
    this.names = services.names.Names;
    this.validator = services.validation.DocumentValidator;
    this.lowering = lowering;
    this.version = version;
    this.versions = versions;
    const forget = () => {
      this.known = knownScores();
    };
    DocumentBuilder.onUpdate(forget);
    // The sessions that others are held against come to be known while the workspace is read.
    DocumentBuilder.onBuildPhase(DocumentState.Linked, forget);
  }

  /** Resolves when every file is read and no name waits to be looked up: until then a plan can be missing. */
  namesKnown(): Promise<void> {
    return this.builder.waitUntil(DocumentState.IndexedReferences);
  }

  /**
   * The session's score, or why there is none and what to do about it. To be called when names are known. Reads the trees
   * before it waits for anything.
   * @throws the reason of the watcher's signal, where it is aborted.
   */
  async score(session: Session, watcher: Watcher = {}): Promise<ScoredSession | string> {
    const plan = planOf(session);
    if (plan === undefined || !this.isSound(fileOf(session)))
      return "The session's file has mistakes. Mend them to see the score.";
    if (!this.isSound(fileOf(plan))) return "The plan is scored when its mistakes are mended.";
    const { known } = this; // a text that changes meanwhile puts another in its place
    const { changes } = this.dataFiles;
    const before = known.get(session);
    if (before?.changes === changes) return before.scored;
    try {
      const input = this.lowering.session(session);
      const versions = this.versions.all();
      const others = otherSessions(session, this.names, this.lowering, this.dataFiles, () =>
        this.namesKnown(),
      );
      // Importing and scoring are loaded with the first session: most files are opened without one.
      const { runSession } = await import("../scoring/run-session.ts");
      const around = { version: this.version, others };
      const { report, data } = await runSession(input, this.dataFiles, around, watcher);
      const { whatIfOf } = await import("./what-if.ts");
      const scored = {
        report,
        input,
        versions,
        data,
        readingsAt: readingsAt(input, data),
        whatIf: whatIfOf(input, data),
      };
      known.set(session, { scored, changes });
      return scored;
    } catch (error) {
      if (!(error instanceof IncompleteError)) throw error;
      return "A file that the plan or its session uses has mistakes. Mend them to see the score.";
    }
  }

  /** Finds out whether the files of a session have errors. Files that nobody has opened are not checked by themselves. */
  async check(session: Session): Promise<void> {
    const plan = planOf(session);
    for (const node of plan === undefined ? [session] : [session, plan]) {
      const file = fileOf(node);
      if (file.diagnostics !== undefined || this.soundness.has(file)) continue;
      this.soundness.set(file, isFreeOfErrors(await this.validator.validateDocument(file)));
    }
  }

  private isSound(file: File): boolean {
    const { diagnostics } = file;
    return diagnostics === undefined ? this.soundness.get(file) === true : isFreeOfErrors(diagnostics);
  }
}

/** Why nothing of a session could be read: the first error about its tables. Undefined where at least a shot was read. */
export function unreadData({ data, findings }: ScoreReport): string | undefined {
  if (data.some(({ shots }) => shots > 0)) return undefined;
  return findings.find(({ severity }) => severity === "error")?.message;
}

function isFreeOfErrors(diagnostics: readonly Diagnostic[]): boolean {
  return !diagnostics.some(({ severity }) => severity === DiagnosticSeverity.Error);
}
