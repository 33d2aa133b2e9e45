/** Keeps the scores of the plans that open files are about, and says when they change. */
import type { Plan, Session } from "../../language/generated/tree/ast.ts";
import type { Location } from "../../shared/plan-model.ts";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import type { PlanScore } from "../../shared/protocol/plan-score.ts";
import type { SessionScore } from "../../shared/protocol/session-score.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { Watcher } from "../import/pieces.ts";
import { goalSummary, goalTally } from "../report/summary.ts";
import { declared, declaredAt, latestFirst, planOf, rangeOf } from "./declared.ts";
import type { Practice } from "./practice.ts";
import { type ReadingProgress, STOPPED } from "./reading-progress.ts";
import { type ScoredSession, type Scorer, unreadData } from "./scorer.ts";
import { sessionScoreOf } from "./session-score.ts";

/** The score of one plan. */
export interface PlanResult {
  /** What the editor is told. */
  readonly summary: PlanScore;
  /** The session it rests on; undefined where it could not be scored. */
  readonly session: ScoredSession | undefined;
  /** What the session came out like before something kept it from being scored. It is no longer current. */
  readonly before: ScoreReport | undefined;
}

/** Every score that is shown. */
export interface CurrentScores {
  /** Of the plans that open files are about. */
  readonly plans: readonly PlanResult[];
  /** Of the latest sessions that open files declare, as far as their plans are shown with others. */
  readonly unshown: readonly PlanScore[];
  /** Of the sessions shown on those plans, and of the latest that open files declare. */
  readonly sessions: readonly ScoredSession[];
  /** Where open files declare earlier ones, which wait until somebody asks for them. */
  readonly waiting: readonly Location[];
}

/** How many sessions of an open file are scored without being asked for: a season's file has thousands. */
export const MOST_SESSIONS = 50;

/** A plan and a session of it. */
type About = Pick<PlanScore, "plan" | "range" | "session" | "shown" | "picked">;

interface Attempt {
  readonly about: About;
  /** The score of the session, or why there is none. */
  readonly attempt: ScoredSession | string;
}

/** Scores, or why there are none. */
interface Attempts {
  readonly plans: readonly Attempt[];
  readonly unshown: readonly Attempt[];
  readonly sessions: readonly (ScoredSession | string)[];
  readonly waiting: readonly Location[];
}

/** Made once: every keystroke overtakes the scores of the one before, whose errors nobody is told. */
const OVERTAKEN = new Error("Scored anew.");

const NO_SESSION = "No session practised this plan yet.";

export class Scores {
  private readonly practice: Practice;
  private readonly scorer: Scorer;
  private readonly progress: ReadingProgress;
  private readonly openFiles: () => readonly string[];
  private readonly listeners: (() => void)[] = [];
  private scores: CurrentScores = { plans: [], unshown: [], sessions: [], waiting: [] };
  /** The last report of each plan and session in which shots were read. */
  private readonly reports = new Map<string, ScoreReport>();
  private running = new AbortController();
  private refreshed: Promise<void> = Promise.resolve();

  /** @param openFiles URIs of the files that are open in the editor. */
  constructor(
    practice: Practice,
    scorer: Scorer,
    progress: ReadingProgress,
    openFiles: () => readonly string[],
  ) {
    this.practice = practice;
    this.scorer = scorer;
    this.progress = progress;
    this.openFiles = openFiles;
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** The scores as they were last published. */
  current(): CurrentScores {
    return this.scores;
  }

  /** The tables, by their URIs, of every session that is shown. */
  tables(): readonly string[] {
    const tables = this.scores.sessions.flatMap(({ input: { session } }) =>
      session.data.map(({ path, location }) => this.scorer.dataFiles.locate(path, location.file)),
    );
    return [...new Set(tables)];
  }

  /** Forgets every data file: the next score reads them again. */
  forgetAll(): void {
    this.scorer.dataFiles.forgetAll();
  }

  /** What was last told of the plans that a file is about. */
  summariesOf(uri: string): readonly PlanScore[] {
    const plans = new Set(this.practice.plansOf(uri).map((plan) => keyOf(declared(plan))));
    return this.scores.plans.map(({ summary }) => summary).filter(({ plan }) => plans.has(keyOf(plan)));
  }

  /** Scores a session as it stands now, shown or not; null where there is no such session. */
  async attemptAt(of: Declared, signal: AbortSignal): Promise<ScoredSession | string | null> {
    await this.scorer.namesKnown();
    const found = this.practice.sessionNamed(of);
    if (found !== undefined) await this.scorer.check(found);
    await this.scorer.namesKnown();
    const session = this.practice.sessionNamed(of); // its tree may have been replaced meanwhile
    return session === undefined ? null : this.scorer.score(session, { signal });
  }

  /** The same as an editor lists it. */
  async scoreOf(of: Declared, signal: AbortSignal): Promise<SessionScore | null> {
    const attempt = await this.attemptAt(of, signal);
    const session = this.practice.sessionNamed(of);
    if (attempt === null || session === undefined) return null;
    const plan = planOf(session);
    return sessionScoreOf(of, plan === undefined ? null : declared(plan), attempt);
  }

  /**
   * Scores what the open files are about anew. A later call overtakes an earlier one, which then changes nothing and ends
   * with the later one.
   */
  refresh(): Promise<void> {
    this.running.abort(OVERTAKEN);
    this.running = new AbortController();
    this.refreshed = this.refreshUnder(this.running);
    return this.refreshed;
  }

  private async refreshUnder(controller: AbortController): Promise<void> {
    try {
      await this.scorer.namesKnown();
      if (this.running !== controller) return this.refreshed;
      const attempts = await this.progress.during(controller, (watcher) => this.scoreOpen(watcher));
      if (this.running !== controller) return this.refreshed;
      this.scores = {
        plans: attempts.plans.map((attempt) => this.planResult(attempt)),
        unshown: attempts.unshown.map((attempt) => this.planResult(attempt).summary),
        sessions: attempts.sessions.filter((attempt) => typeof attempt !== "string"),
        waiting: attempts.waiting,
      };
    } catch (error) {
      if (this.running !== controller) return this.refreshed;
      throw error;
    }
    for (const listener of this.listeners) listener();
  }

  /** Scores what the open files are about. Everything is read from the trees before tables are: they may be replaced. */
  private async scoreOpen(watcher: Watcher): Promise<Attempts> {
    const uris = this.openFiles();
    const plans = [...new Set(uris.flatMap((uri) => this.practice.plansOf(uri)))].map((plan) => {
      const shown = this.practice.shown(plan);
      return { session: shown.session, about: about(plan, shown.session, true, shown.picked) };
    });
    const shown = plans.flatMap(({ session }) => session ?? []);
    const open = uris.map((uri) => latestFirst(this.practice.sessionsIn(uri)));
    const latest = open.flatMap((sessions) => sessions.slice(0, MOST_SESSIONS));
    const sessions = [...new Set([...shown, ...latest])];
    const unshown = latest.flatMap((session) => {
      const plan = planOf(session);
      const isKnown = plan !== undefined && !shown.includes(session);
      return isKnown ? [{ session, about: about(plan, session, false, false) }] : [];
    });
    const waiting = open
      .flatMap((sessions) => sessions.slice(MOST_SESSIONS))
      .filter((session) => !shown.includes(session))
      .map((session) => ({ file: declared(session).file, range: rangeOf(session) }));
    const attempts = await Promise.all(sessions.map((session) => this.attempt(session, watcher)));
    const attemptAt = new Map(sessions.map((session, index) => [session, attempts[index]]));
    const attemptOn = ({ about, session }: { about: About; session: Session | undefined }): Attempt => {
      return { about, attempt: (session && attemptAt.get(session)) ?? NO_SESSION };
    };
    return {
      plans: plans.map(attemptOn),
      unshown: unshown.map(attemptOn),
      sessions: attempts,
      waiting,
    };
  }

  private async attempt(session: Session, watcher: Watcher): Promise<ScoredSession | string> {
    try {
      return await this.scorer.score(session, watcher);
    } catch (error) {
      if (error === STOPPED) return STOPPED.message;
      throw error;
    }
  }

  private planResult({ about, attempt }: Attempt): PlanResult {
    const session = typeof attempt === "string" ? undefined : attempt;
    const problem = typeof attempt === "string" ? attempt : unreadData(attempt.report);
    const key = `${keyOf(about.plan)} ${about.session === null ? "" : keyOf(about.session)}`;
    if (session === undefined || problem !== undefined) {
      const before = this.reports.get(key);
      const summary = {
        ...about,
        verdict: null,
        goals: goalTally([]),
        problem: problem ?? null,
        before: before === undefined ? null : goalSummary(before),
      };
      return { summary, session, before };
    }
    const { report } = session;
    this.reports.set(key, report);
    const verdicts = report.blocks.flatMap(({ criteria }) => criteria.map(({ verdict }) => verdict));
    const summary = {
      ...about,
      verdict: report.verdict,
      goals: goalTally(verdicts),
      problem: null,
      before: null,
    };
    return { summary, session, before: undefined };
  }
}

function about(plan: Plan, session: Session | undefined, shown: boolean, picked: boolean): About {
  return {
    plan: declared(plan),
    range: rangeOf(plan),
    session: session === undefined ? null : declaredAt(session),
    shown,
    picked,
  };
}
