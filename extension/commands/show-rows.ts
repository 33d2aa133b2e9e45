import {
  commands,
  type DiagnosticRelatedInformation,
  type Location,
  l10n,
  languages,
  Position,
  Uri,
  window,
} from "vscode";
import type { ShowRows } from "../../shared/protocol/show-rows.ts";
import { VERDICT_SOURCE } from "../../shared/verdict.ts";
import { spotOf } from "../drill-document.ts";
import { locationAt } from "../places.ts";
import type { Workbench } from "../workbench.ts";

/**
 * Opens the rows that decided a verdict beside the line that set the goal: those that a code lens gives, else those of
 * the verdicts on the line of the cursor.
 */
export async function showRows(_workbench: Workbench, given?: ShowRows | Uri): Promise<void> {
  if (given !== undefined && !(given instanceof Uri)) {
    const { file, position, rows } = given;
    await peek(Uri.parse(file), new Position(position.line, position.character), rows.map(locationAt));
    return;
  }
  const spot = spotOf(given);
  const rows = spot === undefined ? [] : rowsAt(spot.uri, spot.line);
  if (spot === undefined || rows.length === 0) {
    void window.showInformationMessage(
      l10n.t("No row of the data decided a verdict on this line. Put the cursor on a line that sets a goal."),
    );
    return;
  }
  await peek(
    spot.uri,
    new Position(spot.line, 0),
    rows.map(({ location }) => location),
  );
}

function rowsAt(uri: Uri, line: number): readonly DiagnosticRelatedInformation[] {
  return languages
    .getDiagnostics(uri)
    .filter(
      ({ source, range }) => source === VERDICT_SOURCE && range.start.line <= line && line <= range.end.line,
    )
    .flatMap(({ relatedInformation }) => relatedInformation ?? []);
}

async function peek(uri: Uri, position: Position, locations: readonly Location[]): Promise<void> {
  await commands.executeCommand("editor.action.peekLocations", uri, position, locations, "peek");
}
