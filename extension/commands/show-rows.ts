import { commands, Location, Position, Range, Uri } from "vscode";
import type { ShowRows } from "../../shared/protocol/show-rows.ts";
import type { Workbench } from "../workbench.ts";

/** Opens the rows that decided a verdict beside the line that set the goal. */
export async function showRows(_workbench: Workbench, argument?: ShowRows): Promise<void> {
  if (argument === undefined) return;
  const { file, position, rows } = argument;
  await commands.executeCommand(
    "editor.action.peekLocations",
    Uri.parse(file),
    new Position(position.line, position.character),
    rows.map(
      ({ file, range: { start, end } }) =>
        new Location(Uri.parse(file), new Range(start.line, start.character, end.line, end.character)),
    ),
    "peek",
  );
}
