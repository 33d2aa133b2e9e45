import { expect, test } from "vitest";
import { openEditor } from "../support/editor.ts";
import { DRILLS } from "./reuse.ts";

/** The signature at the cursor, the parameter being given in brackets. */
async function signature(statement: string): Promise<string | undefined> {
  const editor = await openEditor({
    "plan.drill": `use "./drills"\n\nplan "A" {\n  ${statement}\n}\n`,
    "drills.drill": DRILLS,
  });
  const help = await editor.services.lsp.SignatureHelp?.provideSignatureHelp(editor.document, {
    textDocument: { uri: editor.document.uri.toString() },
    position: editor.position,
  });
  const [first] = help?.signatures ?? [];
  const active = first?.parameters?.[help?.activeParameter ?? -1]?.label;
  return typeof active === "string" ? first?.label.replace(active, `[${active}]`) : first?.label;
}

test.each([
  ['block "X" from "Gate" with <|>', '"Gate" with [width: angle = 3°], hits: ratio = 7'],
  ['block "X" from "Gate" with width = <|>', '"Gate" with [width: angle = 3°], hits: ratio = 7'],
  ['block "X" from "Gate" with width = 2°, <|>', '"Gate" with width: angle = 3°, [hits: ratio = 7]'],
  ['block "X" from "Gate" with hits = 2, <|>', '"Gate" with [width: angle = 3°], hits: ratio = 7'],
  ['block "X" from "Gate" <|>', '"Gate" with [width: angle = 3°], hits: ratio = 7'],
  ['block "X" from "Gate" with width = 2° {<|>', undefined],
  ['block "X" from "Nobody" with <|>', undefined],
  ['block "X" from <|>', undefined],
])("%s", async (statement, expected) => {
  expect(await signature(statement)).toBe(expected);
});
