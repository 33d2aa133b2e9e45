/** What scoring answers to the program that started it. */
import { EXIT_CODES, type ExitCode } from "../../shared/exit-codes.ts";
import type { ScoreReport, Verdict } from "../../shared/score-report.ts";
import type { Scored } from "./score-sessions.ts";

export type FailOn = "missed" | "undecided" | "never";

/** What the answer depends on. */
export interface Outcome {
  readonly report: Pick<ScoreReport, "verdict" | "findings">;
}

/** That of a session, without the rest of its report. */
export function outcomeOf({ report: { verdict, findings } }: Outcome): Outcome {
  return { report: { verdict, findings: findings.filter(({ severity }) => severity === "error") } };
}

/** The gravest of what happened. */
export function scoreExitCode({ sessions, notScored, broken }: Scored<Outcome>, failOn: FailOn): ExitCode {
  if (broken.length > 0 || notScored.some(({ reason }) => reason === "plan-errors")) {
    return EXIT_CODES.planErrors.code;
  }
  const reports = sessions.map(({ report }) => report);
  const isUnread = reports.some(({ findings }) => findings.some(({ severity }) => severity === "error"));
  if (notScored.length > 0 || isUnread) return EXIT_CODES.dataUnreadable.code;
  return reports.some(({ verdict }) => FAILING[failOn].has(verdict))
    ? EXIT_CODES.missed.code
    : EXIT_CODES.ok.code;
}

const FAILING: Readonly<Record<FailOn, ReadonlySet<Verdict | null>>> = {
  missed: new Set(["missed"]),
  undecided: new Set(["missed", "undecided", "not-measured"]),
  never: new Set(),
};
