/** How a goal came out, as the editor's test explorer tells it. */
import { type Location, l10n, type TestItem, TestMessage, TestMessageStackFrame, type TestRun } from "vscode";
import type { GoalScore } from "../../shared/protocol/session-score.ts";
import { locationAt } from "../places.ts";
import { verdictText } from "../score-texts.ts";
import { shown } from "../shown-text.ts";

/** The longest text of one line of output. */
const LONGEST = 400;

/**
 * A met goal has passed, a missed one failed. One that is undecided or was not measured is skipped: nothing was shown
 * either way. What was observed is in the output of each.
 */
export function tell(run: TestRun, item: TestItem, goal: GoalScore): void {
  const location = locationAt(goal.location);
  log(run, outcomeLines(goal), location, item);
  if (goal.verdict === "met") run.passed(item);
  else if (goal.verdict === "missed") run.failed(item, failure(goal, location));
  else run.skipped(item);
}

/** Adds lines to the output of a run. */
export function log(run: TestRun, lines: readonly string[], location?: Location, item?: TestItem): void {
  const text = lines.map((line) => `${shown(line, LONGEST)}\r\n`).join("");
  run.appendOutput(text, location, item);
}

function outcomeLines({ verdict, text, observed, required, details }: GoalScore): string[] {
  const outcome = l10n.t("{0}: {1} (required: {2})", verdictText(verdict, l10n.t), observed, required);
  return [text, ...[outcome, ...details].map((line) => `    ${line}`)];
}

function failure({ observed, required, details, rows }: GoalScore, location: Location): TestMessage {
  const message = new TestMessage(
    [l10n.t("Missed: {0} (required: {1})", observed, required), ...details].join("\n"),
  );
  message.expectedOutput = required;
  message.actualOutput = observed;
  message.location = location;
  message.stackTrace = rows.map(({ location, text }) => {
    const { uri, range } = locationAt(location);
    return new TestMessageStackFrame(text, uri, range.start);
  });
  return message;
}
