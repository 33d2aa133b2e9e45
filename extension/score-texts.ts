/** Scores in words, for the status bar and after scoring. Knows no editor, so that its sentences can be tested. */
import type { PlanScore } from "../shared/protocol/plan-score.ts";
import type { Verdict } from "../shared/score-report.ts";
import { shown } from "./shown-text.ts";

/** Puts a sentence into the language of the editor, and values into the places `{0}`, `{1}` … of it. */
export type Translate = (sentence: string, ...values: (string | number)[]) => string;

/** The longest session name that leaves room for others in a status bar. */
const LONGEST_NAME = 32;

/** What is known of a plan that stands somewhere. */
type OfPlan = Pick<PlanScore, "plan" | "range">;

/** Of what is known of a document's plans, what is known of the plan that stands in a line. */
export function planIn<Of extends OfPlan>(plans: readonly Of[], file: string, line: number): Of | undefined {
  return plans.find(
    ({ plan, range }) => plan.file === file && range.start.line <= line && line <= range.end.line,
  );
}

/** The same for whoever looks at a line: where no plan stands there, the first. */
export function planAt<Of extends OfPlan>(plans: readonly Of[], file: string, line: number): Of | undefined {
  return planIn(plans, file, line) ?? plans[0];
}

/** Of scores, that of the session that stands in a line, else of the plan there, else the first. */
export function scoreAt(scores: readonly PlanScore[], file: string, line: number): PlanScore | undefined {
  const ofSession = scores.find(
    ({ session }) =>
      session?.file === file && session.range.start.line <= line && line <= session.range.end.line,
  );
  return ofSession ?? planAt(scores, file, line);
}

/** The session and how it came out, in a few words: `Missed · P-07: start line`. */
export function shortText({ session, verdict, problem }: PlanScore, t: Translate): string {
  if (session === null) return t("No session");
  const outcome = problem === null ? verdictText(verdict, t) : t("Not scored");
  return `${outcome} · ${shown(session.name, LONGEST_NAME)}`;
}

/** Everything about a score, a line each. */
export function longText(score: PlanScore, t: Translate): string {
  const { plan, session, problem, before } = score;
  const lines = [t("Plan: {0}", shown(plan.name))];
  if (session !== null) lines.push(sessionText(shown(session.name), score, t));
  lines.push(
    problem ?? (session === null ? t("No session has practised this plan yet.") : goalsText(score, t)),
  );
  if (before !== null) lines.push(t("Before that: {0}. This is no longer current.", before));
  return lines.join("\n");
}

function sessionText(name: string, { shown, picked }: PlanScore, t: Translate): string {
  if (!shown) return t("Session: {0} (the plan is shown with another)", name);
  return picked ? t("Session: {0} (picked)", name) : t("Session: {0} (the latest)", name);
}

/** That nobody has practised a plan, and what to do about it. */
export function noSessionText(plan: string, t: Translate): string {
  return t(
    "No session has practised “{0}” yet. Declare one: it names the plan, the player, the date and the data.",
    shown(plan),
  );
}

/** How many goals came out how: `3 goals met, 1 missed, 1 undecided`. */
export function goalsText({ goals }: PlanScore, t: Translate): string {
  const counts = [
    goals.missed > 0 && t("{0} missed", goals.missed),
    goals.undecided > 0 && t("{0} undecided", goals.undecided),
    goals["not-measured"] > 0 && t("{0} not measured", goals["not-measured"]),
  ].filter((text) => text !== false);
  const all = Object.values(goals).reduce((sum, count) => sum + count, 0);
  if (all === 0) return t("The plan sets no goals.");
  return [t("{0} of {1} goals met", goals.met, all), ...counts].join(", ");
}

/** `Met` */
export function verdictText(verdict: Verdict | null, t: Translate): string {
  switch (verdict) {
    case "met":
      return t("Met");
    case "missed":
      return t("Missed");
    case "undecided":
      return t("Undecided");
    case "not-measured":
      return t("Not measured");
    case null:
      return t("No goals");
  }
}
