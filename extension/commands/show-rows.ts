import { commands, Location, Position, Range, type Uri } from "vscode";
import type { ShowRows } from "../../shared/protocol/show-rows.ts";
import type { Workbench } from "../workbench.ts";

/** Opens the rows that decided a verdict beside the line that set the goal. */
export async function showRows({ client }: Workbench, argument?: ShowRows): Promise<void> {
  if (argument === undefined) return;
  const asUri = (file: string): Uri => client.protocol2CodeConverter.asUri(file);
  const { file, position, rows } = argument;
  await commands.executeCommand(
    "editor.action.peekLocations",
    asUri(file),
    new Position(position.line, position.character),
    rows.map(
      ({ file, range: { start, end } }) =>
        new Location(asUri(file), new Range(start.line, start.character, end.line, end.character)),
    ),
    "peek",
  );
}
