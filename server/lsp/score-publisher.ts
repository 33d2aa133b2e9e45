/** Tells an editor about scores: as diagnostics, as a message of our own, and by asking it to draw hints and lenses anew. */
import {
  CodeLensRefreshRequest,
  type Connection,
  DiagnosticSeverity,
  type InitializeParams,
  InlayHintRefreshRequest,
} from "vscode-languageserver";
import { type ScoresChangedParams, scoresChanged } from "../../shared/protocol/scores-changed.ts";
import type { Verdict } from "../../shared/score-report.ts";
import { LEVEL_OF, type Level, type Settings } from "../../shared/settings.ts";
import type { DiagnosticsPublisher } from "./diagnostics-publisher.ts";
import type { EditorSettings } from "./editor-settings.ts";
import type { CurrentScores } from "./scores.ts";
import { addPlanVerdicts, addSessionResults, DiagnosticsByFile, type Levels } from "./verdict-diagnostics.ts";

export class ScorePublisher {
  private readonly connection: Connection;
  private readonly diagnostics: DiagnosticsPublisher;
  private readonly settings: EditorSettings;
  /** What the editor can be asked to draw anew. */
  private refreshes = { codeLens: false, inlayHint: false };
  /** Files whose plans and sessions the editor has been told about. */
  private told: ReadonlySet<string> = new Set();
  /** What was published last: nothing is sent again for a keystroke that changed no score. */
  private last = "";
  private verdicts: DiagnosticsByFile = new DiagnosticsByFile();

  constructor(connection: Connection, diagnostics: DiagnosticsPublisher, settings: EditorSettings) {
    this.connection = connection;
    this.diagnostics = diagnostics;
    this.settings = settings;
  }

  initialize({ capabilities: { workspace } }: InitializeParams): void {
    this.refreshes = {
      codeLens: workspace?.codeLens?.refreshSupport ?? false,
      inlayHint: workspace?.inlayHint?.refreshSupport ?? false,
    };
  }

  publish(scores: CurrentScores): void {
    const { refreshes } = this;
    const state = JSON.stringify([published(scores), this.settings.state]);
    const isNew = state !== this.last;
    if (isNew) this.verdicts = this.verdictsOf(scores);
    this.diagnostics.setVerdicts(this.verdicts, versionsOf(scores));
    if (!isNew) return;
    this.last = state;
    this.tell(scores);
    const ignored = () => {}; // an editor that is closing no longer answers
    if (refreshes.codeLens) this.connection.sendRequest(CodeLensRefreshRequest.type).catch(ignored);
    if (refreshes.inlayHint) this.connection.sendRequest(InlayHintRefreshRequest.type).catch(ignored);
  }

  private tell({ plans, unshown }: CurrentScores): void {
    const plansOf = Map.groupBy(
      plans.map(({ summary }) => summary),
      ({ plan }) => plan.file,
    );
    const sessionsOf = Map.groupBy(unshown, ({ plan, session }) => (session ?? plan).file);
    const now = new Set([...plansOf.keys(), ...sessionsOf.keys()]);
    for (const file of new Set([...this.told, ...now])) {
      const params: ScoresChangedParams = {
        file,
        plans: plansOf.get(file) ?? [],
        sessions: sessionsOf.get(file) ?? [],
      };
      void this.connection.sendNotification(scoresChanged.method, params);
    }
    this.told = now;
  }

  private verdictsOf({ plans, sessions }: CurrentScores): DiagnosticsByFile {
    const found = new DiagnosticsByFile();
    for (const { summary, session } of plans) {
      if (session !== undefined) addPlanVerdicts(found, session, this.levelsOf(summary.plan.file));
    }
    for (const session of sessions) {
      addSessionResults(found, session, this.levelsOf(session.report.session.location.file));
    }
    return found;
  }

  private levelsOf(file: string): Levels {
    const settings = this.settings.of(file);
    return settings["drillwright.verdicts.show"] ? levelsFrom(settings) : HIDDEN;
  }
}

/** All that the editor is told hangs on. The shots do so through the hashes of their tables, which a report names. */
function published({ plans, unshown, sessions, waiting }: CurrentScores): unknown {
  const reports = sessions.map(({ report }) => report);
  return [plans.map(({ summary, before }) => [summary, before]), unshown, reports, waiting];
}

/** Of the open texts that scores rest on. Where they rest on several versions of a text, the oldest. */
function versionsOf({ plans, sessions }: CurrentScores): ReadonlyMap<string, number> {
  const oldest = new Map<string, number>();
  for (const scored of [...plans.map(({ session }) => session), ...sessions]) {
    for (const [uri, version] of scored?.versions ?? []) {
      oldest.set(uri, Math.min(version, oldest.get(uri) ?? version));
    }
  }
  return oldest;
}

const HIDDEN: Levels = { met: null, missed: null, undecided: null, "not-measured": null };

const SEVERITIES: Readonly<Record<Level, DiagnosticSeverity | null>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
  none: null,
};

function levelsFrom(settings: Settings): Levels {
  const level = (verdict: Verdict) => SEVERITIES[settings[LEVEL_OF[verdict]]];
  return {
    met: level("met"),
    missed: level("missed"),
    undecided: level("undecided"),
    "not-measured": level("not-measured"),
  };
}
