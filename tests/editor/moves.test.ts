import { expect, test } from "vitest";
import { edited } from "../checks/checked-files.ts";
import { openEditor } from "../support/editor.ts";

const FILES = {
  "plans/irons.drill": 'use "../library/drills"\nuse "./wedges.drill"\n',
  "plans/wedges.drill": 'use "../library/drills"\n',
  "library/drills.drill": "club one-iron\n",
  "sessions/first.drill":
    'use "../plans/irons"\n\nsession "First" {\n  data "../data/first.csv" from "Bay"\n  data "near.csv" from "Bay"\n}\n',
};

/** The files that change when these are moved, by path. */
async function afterMoves(...moves: readonly (readonly [from: string, to: string])[]) {
  const editor = await openEditor(FILES);
  const edit = await editor.services.shared.lsp.FileOperationHandler?.willRenameFiles?.({
    files: moves.map(([from, to]) => ({ oldUri: `file:///coach/${from}`, newUri: `file:///coach/${to}` })),
  });
  return Object.fromEntries(
    Object.entries(edit?.changes ?? {}).map(([uri, edits]) => {
      const path = uri.replace("file:///coach/", "");
      return [path, edited(FILES[path as keyof typeof FILES], edits)];
    }),
  );
}

test("a file that moves takes its users along", async () => {
  expect(await afterMoves(["library/drills.drill", "standards/start-line.drill"])).toEqual({
    "plans/irons.drill": 'use "../standards/start-line"\nuse "./wedges.drill"\n',
    "plans/wedges.drill": 'use "../standards/start-line"\n',
  });
});

test("a folder that moves keeps its own paths true, those into it and those out of it", async () => {
  expect(await afterMoves(["plans", "team/2026/plans"])).toEqual({
    "plans/irons.drill": 'use "../../../library/drills"\nuse "./wedges"\n',
    "plans/wedges.drill": 'use "../../../library/drills"\n',
    "sessions/first.drill": FILES["sessions/first.drill"].replace(
      "../plans/irons",
      "../team/2026/plans/irons",
    ),
  });
});

test("a session that moves finds its tables, a table that moves its sessions", async () => {
  expect((await afterMoves(["sessions/first.drill", "first.drill"]))["sessions/first.drill"]).toBe(
    'use "./plans/irons"\n\nsession "First" {\n  data "data/first.csv" from "Bay"\n  data "sessions/near.csv" from "Bay"\n}\n',
  );
  expect(Object.keys(await afterMoves(["data/first.csv", "data/2026/first.csv"]))).toEqual([
    "sessions/first.drill",
  ]);
});

test("what nobody refers to changes nothing", async () => {
  expect(await afterMoves(["notes.txt", "more/notes.txt"])).toEqual({});
});
