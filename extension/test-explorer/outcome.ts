/** How a goal came out, as the editor's test explorer tells it. */
import {
  Location,
  l10n,
  Position,
  Range,
  type TestItem,
  TestMessage,
  TestMessageStackFrame,
  type TestRun,
  Uri,
} from "vscode";
import type { Location as Place } from "../../shared/plan-model.ts";
import type { GoalScore } from "../../shared/protocol/session-score.ts";
import { verdictText } from "../score-texts.ts";
import { shown } from "../shown-text.ts";

/** The longest text of one line of output. */
const LONGEST = 400;

/**
 * A met goal has passed, a missed one failed. One that is undecided or was not measured is skipped: nothing was shown
 * either way. What was observed is in the output of each.
 */
export function tell(run: TestRun, item: TestItem, goal: GoalScore): void {
  const location = locationOf(goal.location);
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
    const { line, character } = location.range.start;
    return new TestMessageStackFrame(text, Uri.parse(location.file), new Position(line, character));
  });
  return message;
}

function locationOf({ file, range: { start, end } }: Place): Location {
  return new Location(Uri.parse(file), new Range(start.line, start.character, end.line, end.character));
}
