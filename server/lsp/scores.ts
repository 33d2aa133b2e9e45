/** Keeps the scores of the plans that open files are about, and says when they change. */
import {
  AstUtils,
  DocumentState,
  type FileSystemProvider,
  type LangiumDocument,
  type LangiumDocuments,
  URI,
  UriUtils,
} from "langium";
import type { DrillwrightServices } from "../../language/core-module.ts";
import {
  type Document,
  isPlan,
  isSession,
  isSessionDate,
  isSessionPlan,
  isSessionPlayer,
  type Plan,
  type Session,
} from "../../language/generated/ast.ts";
import { Lowering } from "../../language/lowering/document.ts";
import { placeOf } from "../../language/lowering/place.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { Declared } from "../../shared/protocol/message.ts";
import type { PlanScore } from "../../shared/protocol/plan-score.ts";
import type { PlanSessions, PracticedSession } from "../../shared/protocol/sessions.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import { type ReadingsAt, readingsAt } from "../report/readings.ts";
import { goalTally } from "../report/summary.ts";
import type { DataFiles } from "../scoring/run-session.ts";

type File = LangiumDocument<Document>;

/** The score of one plan: what the editor is told, and the report it rests on. */
export interface Score {
  readonly summary: PlanScore;
  readonly report: ScoreReport | undefined;
  /** What was measured at a row of the data, in words. */
  readonly readingsAt?: ReadingsAt;
}

/** What the scores need from their host. */
export interface Host {
  /** URIs of the open files. */
  readonly openFiles: () => readonly string[];
  readonly sha256: (content: Uint8Array) => string;
  readonly version: string;
}

export class Scores {
  private readonly documents: LangiumDocuments;
  private readonly fileSystem: FileSystemProvider;
  private readonly host: Host;
  private readonly lowering: Lowering;
  private readonly listeners: ((scores: readonly Score[]) => void)[] = [];
  /** Picked sessions by plan; the latest is shown where none is picked. */
  private readonly picked = new Map<string, Declared>();
  /** Contents of data files, until they change on disk. */
  private readonly contents = new Map<string, Promise<Uint8Array | undefined>>();
  private scores: readonly Score[] = [];
  private generation = 0;

  constructor(services: DrillwrightServices, host: Host) {
    this.documents = services.shared.workspace.LangiumDocuments;
    this.fileSystem = services.shared.workspace.FileSystemProvider;
    this.host = host;
    this.lowering = new Lowering(services, (uri) => uri.toString());
  }

  onChange(listener: (scores: readonly Score[]) => void): void {
    this.listeners.push(listener);
  }

  /** The scores as they were last published. */
  current(): readonly Score[] {
    return this.scores;
  }

  /** The plans a file is about: those it declares, and those whose sessions it declares. */
  plansOf(uri: string): readonly Plan[] {
    const declarations = this.file(uri)?.parseResult.value.declarations ?? [];
    const practised = declarations.filter(isSession).map(planNode);
    return [...new Set([...declarations.filter(isPlan), ...practised])].filter((plan) => plan !== undefined);
  }

  /** The sessions of the plans a file is about. Linear in the sessions of the workspace, for each plan. */
  sessionsOf(uri: string): readonly PlanSessions[] {
    return this.plansOf(uri).map((plan) => {
      const { session, picked } = this.shown(plan);
      return {
        plan: declared(plan),
        range: rangeOf(plan),
        sessions: this.practised(plan).map(practisedSession),
        shown: session === undefined ? null : declared(session),
        picked,
      };
    });
  }

  /** Shows a plan with this session from now on, or with its latest again. */
  pick(plan: Declared, session: Declared | null): void {
    if (session === null) this.picked.delete(keyOf(plan));
    else this.picked.set(keyOf(plan), session);
  }

  /** Forgets what a data file held. False where it is not one that was read. */
  forget(uri: string): boolean {
    return this.contents.delete(uri);
  }

  /** Forgets every data file: the next score reads them again. */
  forgetAll(): void {
    this.contents.clear();
  }

  /** What was last told of the plans that a file is about. */
  summariesOf(uri: string): readonly PlanScore[] {
    const plans = new Set(this.plansOf(uri).map((plan) => keyOf(declared(plan))));
    return this.scores.map(({ summary }) => summary).filter(({ plan }) => plans.has(keyOf(plan)));
  }

  /** Scores the plans of the open files anew. A later call overtakes an earlier one, which then changes nothing. */
  async refresh(): Promise<void> {
    const generation = ++this.generation;
    const plans = [...new Set(this.host.openFiles().flatMap((uri) => this.plansOf(uri)))];
    const scores = await Promise.all(plans.map((plan) => this.score(plan)));
    if (generation !== this.generation) return;
    this.scores = scores;
    for (const listener of this.listeners) listener(scores);
  }

  private async score(plan: Plan): Promise<Score> {
    const { session, picked } = this.shown(plan);
    const summary = {
      plan: declared(plan),
      range: rangeOf(plan),
      session: session === undefined ? null : declared(session),
      picked,
    };
    const without = (problem: string): Score => ({
      summary: { ...summary, verdict: null, goals: goalTally([]), problem },
      report: undefined,
    });
    if (session === undefined) return without("No session practised this plan yet.");
    if (!isSound(fileOf(plan))) return without("The plan is scored when its mistakes are mended.");
    if (!isSound(fileOf(session)))
      return without("The session's file has mistakes. Mend them to see the score.");
    try {
      const input = this.lowering.session(session);
      // Importing and scoring are loaded with the first session: most files are opened without one.
      const { runSession } = await import("../scoring/run-session.ts");
      const { report, data } = await runSession(input, this.dataFiles, { version: this.host.version });
      const goals = goalTally(
        report.blocks.flatMap(({ criteria }) => criteria.map(({ verdict }) => verdict)),
      );
      return {
        summary: { ...summary, verdict: report.verdict, goals, problem: null },
        report,
        readingsAt: readingsAt(input, data),
      };
    } catch (error) {
      if (!(error instanceof IncompleteError)) throw error;
      return without("A file that the plan or its session uses has mistakes. Mend them to see the score.");
    }
  }

  private shown(plan: Plan): { session: Session | undefined; picked: boolean } {
    const sessions = this.practised(plan);
    const choice = this.picked.get(keyOf(declared(plan)));
    const picked = sessions.find(
      (session) => choice !== undefined && keyOf(declared(session)) === keyOf(choice),
    );
    return { session: picked ?? sessions[0], picked: picked !== undefined };
  }

  /** Latest first; of one day, the one declared last; those without a date last. */
  private practised(plan: Plan): Session[] {
    const sessions: Session[] = [];
    for (const file of this.documents.all) {
      if (file.state < DocumentState.ComputedScopes) continue;
      for (const declaration of (file as File).parseResult.value.declarations ?? []) {
        if (isSession(declaration) && planNode(declaration) === plan) sessions.unshift(declaration);
      }
    }
    return sessions.sort((a, b) => (dateOf(b) ?? "").localeCompare(dateOf(a) ?? ""));
  }

  private file(uri: string): File | undefined {
    return this.documents.getDocument(URI.parse(uri)) as File | undefined;
  }

  private readonly dataFiles: DataFiles = {
    locate: (path, sessionFile) =>
      UriUtils.resolvePath(UriUtils.dirname(URI.parse(sessionFile)), path).toString(),
    read: (uri) => {
      let content = this.contents.get(uri);
      if (content === undefined) {
        content = this.readBinary(URI.parse(uri));
        this.contents.set(uri, content);
      }
      return content;
    },
    sha256: (content) => this.host.sha256(content),
  };

  private async readBinary(uri: URI): Promise<Uint8Array | undefined> {
    try {
      return (await this.fileSystem.exists(uri)) ? await this.fileSystem.readBinary(uri) : undefined;
    } catch {
      return undefined; // a folder, or a file nobody may read: as good as missing
    }
  }
}

function fileOf(node: Plan | Session): File {
  return AstUtils.getDocument(node);
}

function declared(node: Plan | Session): Declared {
  return { file: fileOf(node).uri.toString(), name: node.name };
}

function rangeOf(node: Plan | Session): PlanScore["range"] {
  return placeOf(node, String).range;
}

function keyOf({ file, name }: Declared): string {
  return `${file}#${name}`;
}

function planNode(session: Session): Plan | undefined {
  return session.statements.find(isSessionPlan)?.plan?.ref;
}

function dateOf(session: Session): string | undefined {
  return session.statements.find(isSessionDate)?.date;
}

function practisedSession(session: Session): PracticedSession {
  return {
    ...declared(session),
    range: rangeOf(session),
    date: dateOf(session) ?? null,
    player: session.statements.find(isSessionPlayer)?.player?.$refText ?? null,
  };
}

/** Whether a file has been checked and holds no error. */
function isSound(file: File): boolean {
  return file.diagnostics !== undefined && !file.diagnostics.some(({ severity }) => severity === 1);
}
