/** Places in files, from the form of messages to that of the editor. */
import { type Command, Location, l10n, Range, Uri, workspace } from "vscode";
import type { Location as Place, Range as TextRange } from "../shared/plan-model.ts";

export function rangeAt({ start, end }: TextRange): Range {
  return new Range(start.line, start.character, end.line, end.character);
}

/** Where a cursor stands before the first character. */
export function startAt({ start }: TextRange): Range {
  return rangeAt({ start, end: start });
}

export function locationAt({ file, range }: Place): Location {
  return new Location(Uri.parse(file), rangeAt(range));
}

/** The path of a file from the folder that is open, which tells apart what has the same name. */
export function placeText({ file }: Pick<Place, "file">): string {
  return workspace.asRelativePath(Uri.parse(file));
}

/** What opens a file at the start of something in it. */
export function openCommand({ file, range }: Place): Command {
  const selection = startAt(range);
  return { command: "vscode.open", title: l10n.t("Open"), arguments: [Uri.parse(file), { selection }] };
}
