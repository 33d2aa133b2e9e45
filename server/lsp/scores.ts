/** Keeps the scores of the plans that open files are about, and says when they change. */
import { DocumentState, type DocumentValidator, type LangiumDocuments, URI } from "langium";
import { type Diagnostic, DiagnosticSeverity } from "vscode-languageserver";
import type { DrillwrightServices } from "../../language/core-module.ts";
import {
  type Declaration,
  isPlan,
  isSession,
  type Plan,
  type Session,
} from "../../language/generated/tree/ast.ts";
import type { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { Declared } from "../../shared/protocol/message.ts";
import type { PlanScore } from "../../shared/protocol/plan-score.ts";
import type { SessionScore } from "../../shared/protocol/session-score.ts";
import type { PlanSessions, PracticedSession } from "../../shared/protocol/sessions.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import { type ReadingsAt, readingsAt } from "../report/readings.ts";
import { goalTally } from "../report/summary.ts";
import { CachedDataFiles } from "./cached-data-files.ts";
import {
  dateOf,
  declared,
  type File,
  fileOf,
  keyOf,
  latestFirst,
  planOf,
  playerOf,
  rangeOf,
} from "./declared.ts";
import { sessionScoreOf } from "./session-score.ts";

/** A session that was scored, and what was measured at the rows of its data, in words. */
export interface ScoredSession {
  readonly report: ScoreReport;
  readonly readingsAt: ReadingsAt;
}

/** The score of one plan: what the editor is told, and the session it rests on, if it could be scored. */
export interface PlanResult {
  readonly summary: PlanScore;
  readonly session: ScoredSession | undefined;
}

/** Every score that is shown. */
export interface CurrentScores {
  /** Of the plans that open files are about. */
  readonly plans: readonly PlanResult[];
  /** Of the sessions shown on those plans, and of those that open files declare. */
  readonly sessions: readonly ScoredSession[];
}

/** A plan and the session it is shown with. */
type About = Pick<PlanScore, "plan" | "range" | "session" | "picked">;

const NO_SESSION = "No session practised this plan yet.";

/** What the scores need from their host. */
export interface Host {
  /** URIs of the open files. */
  readonly openFiles: () => readonly string[];
  readonly sha256: (content: Uint8Array) => string;
  readonly version: string;
}

export class Scores {
  private readonly documents: LangiumDocuments;
  private readonly host: Host;
  private readonly lowering: Lowering;
  private readonly listeners: (() => void)[] = [];
  /** Picked sessions by plan; the latest is shown where none is picked. */
  private readonly picked = new Map<string, Declared>();
  private readonly dataFiles: CachedDataFiles;
  private readonly validator: DocumentValidator;
  /** Whether a file without diagnostics is free of errors; known only where a score was asked for. */
  private readonly soundness = new WeakMap<File, boolean>();
  private scores: CurrentScores = { plans: [], sessions: [] };
  private generation = 0;

  constructor(services: DrillwrightServices, lowering: Lowering, host: Host) {
    this.documents = services.shared.workspace.LangiumDocuments;
    this.dataFiles = new CachedDataFiles(services.shared.workspace.FileSystemProvider, host.sha256);
    this.validator = services.validation.DocumentValidator;
    this.host = host;
    this.lowering = lowering;
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** The scores as they were last published. */
  current(): CurrentScores {
    return this.scores;
  }

  /** The plans a file is about: those it declares, and those whose sessions it declares. */
  plansOf(uri: string): readonly Plan[] {
    const declarations = this.declarations(uri);
    const practised = declarations.filter(isSession).map(planOf);
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
    return this.dataFiles.forget(uri);
  }

  /** Forgets every data file: the next score reads them again. */
  forgetAll(): void {
    this.dataFiles.forgetAll();
  }

  /** What was last told of the plans that a file is about. */
  summariesOf(uri: string): readonly PlanScore[] {
    const plans = new Set(this.plansOf(uri).map((plan) => keyOf(declared(plan))));
    return this.scores.plans.map(({ summary }) => summary).filter(({ plan }) => plans.has(keyOf(plan)));
  }

  /** Scores a session as it stands now, shown or not. */
  async scoreOf(of: Declared): Promise<SessionScore | null> {
    // Files that nobody has opened are not checked yet.
    for (const file of this.filesOf(of)) {
      if (file.diagnostics === undefined && !this.soundness.has(file)) {
        this.soundness.set(file, isFreeOfErrors(await this.validator.validateDocument(file)));
      }
    }
    const session = this.sessionNamed(of);
    if (session === undefined) return null;
    const plan = planOf(session);
    return sessionScoreOf(of, plan === undefined ? null : declared(plan), await this.attempt(session));
  }

  /** Scores what the open files are about anew. A later call overtakes an earlier one, which then changes nothing. */
  async refresh(): Promise<void> {
    const generation = ++this.generation;
    const uris = this.host.openFiles();
    // Everything is read from the trees now: while tables are read they may be replaced.
    const plans = [...new Set(uris.flatMap((uri) => this.plansOf(uri)))].map((plan) => {
      const { session, picked } = this.shown(plan);
      return { session, about: about(plan, session, picked) };
    });
    const shown = plans.flatMap(({ session }) => session ?? []);
    const open = uris.flatMap((uri) => this.declarations(uri).filter(isSession));
    const attempts = new Map(
      [...new Set([...shown, ...open])].map((session) => [session, this.attempt(session)]),
    );
    const [results, tried] = await Promise.all([
      Promise.all(
        plans.map(async ({ about, session }) =>
          planResult(about, session === undefined ? NO_SESSION : await attempts.get(session)),
        ),
      ),
      Promise.all(attempts.values()),
    ]);
    if (generation !== this.generation) return;
    this.scores = { plans: results, sessions: tried.filter((attempt) => typeof attempt !== "string") };
    for (const listener of this.listeners) listener();
  }

  /** The session's score, or why there is none and what to do about it. */
  private async attempt(session: Session): Promise<ScoredSession | string> {
    const plan = planOf(session);
    if (plan === undefined || !this.isSound(fileOf(session)))
      return "The session's file has mistakes. Mend them to see the score.";
    if (!this.isSound(fileOf(plan))) return "The plan is scored when its mistakes are mended.";
    try {
      const input = this.lowering.session(session);
      // Importing and scoring are loaded with the first session: most files are opened without one.
      const { runSession } = await import("../scoring/run-session.ts");
      const { report, data } = await runSession(input, this.dataFiles, { version: this.host.version });
      return { report, readingsAt: readingsAt(input, data) };
    } catch (error) {
      if (!(error instanceof IncompleteError)) throw error;
      return "A file that the plan or its session uses has mistakes. Mend them to see the score.";
    }
  }

  private sessionNamed({ file, name }: Declared): Session | undefined {
    return this.declarations(file)
      .filter(isSession)
      .find((session) => session.name === name);
  }

  /** The files that a session stands or falls with. */
  private filesOf(of: Declared): File[] {
    const session = this.sessionNamed(of);
    return session === undefined
      ? []
      : [session, planOf(session)].flatMap((node) => (node ? fileOf(node) : []));
  }

  /** Whether a file has been checked and holds no error. */
  private isSound(file: File): boolean {
    return file.diagnostics === undefined
      ? this.soundness.get(file) === true
      : isFreeOfErrors(file.diagnostics);
  }

  private shown(plan: Plan): { session: Session | undefined; picked: boolean } {
    const sessions = this.practised(plan);
    const choice = this.picked.get(keyOf(declared(plan)));
    const picked = sessions.find(
      (session) => choice !== undefined && keyOf(declared(session)) === keyOf(choice),
    );
    return { session: picked ?? sessions[0], picked: picked !== undefined };
  }

  /** Latest first. Linear in the sessions of the workspace. */
  private practised(plan: Plan): Session[] {
    const sessions: Session[] = [];
    for (const file of this.documents.all) {
      if (file.state < DocumentState.ComputedScopes) continue;
      for (const declaration of (file as File).parseResult.value.declarations ?? []) {
        if (isSession(declaration) && planOf(declaration) === plan) sessions.push(declaration);
      }
    }
    return latestFirst(sessions);
  }

  private declarations(uri: string): readonly Declaration[] {
    return this.file(uri)?.parseResult.value.declarations ?? [];
  }

  private file(uri: string): File | undefined {
    return this.documents.getDocument(URI.parse(uri)) as File | undefined;
  }
}

function about(plan: Plan, session: Session | undefined, picked: boolean): About {
  return {
    plan: declared(plan),
    range: rangeOf(plan),
    session: session === undefined ? null : declared(session),
    picked,
  };
}

/** @param attempt the score of the session shown, or why there is none. */
function planResult(about: About, attempt: ScoredSession | string | undefined): PlanResult {
  if (attempt === undefined || typeof attempt === "string") {
    const summary = { ...about, verdict: null, goals: goalTally([]), problem: attempt ?? null };
    return { summary, session: undefined };
  }
  const { verdict, blocks } = attempt.report;
  const goals = goalTally(blocks.flatMap(({ criteria }) => criteria.map((criterion) => criterion.verdict)));
  return { summary: { ...about, verdict, goals, problem: null }, session: attempt };
}

function practisedSession(session: Session): PracticedSession {
  return {
    ...declared(session),
    range: rangeOf(session),
    date: dateOf(session) ?? null,
    player: playerOf(session)?.$refText ?? null,
  };
}

function isFreeOfErrors(diagnostics: readonly Diagnostic[]): boolean {
  return !diagnostics.some(({ severity }) => severity === DiagnosticSeverity.Error);
}
