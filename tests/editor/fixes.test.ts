/** The fixes of checks, as an editor offers them. */
import { describe, expect, test } from "vitest";
import { openEditor } from "../support/editor.ts";

const TEXT = `plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 12 of 10 shots on target
  }
}`;

describe("quick fixes", () => {
  test("name the change, know what they fix, and make it", async () => {
    const editor = await openEditor({ "a.drill": TEXT });
    const [action, ...others] = await editor.codeActions();
    expect(others).toEqual([]);
    expect(action).toMatchObject({ title: "Ask for 10 of 10", kind: "quickfix", isPreferred: true });
    expect(action?.diagnostics).toMatchObject([{ code: "hits-must-not-exceed-shots" }]);
    const fixed = TEXT.replace("12 of 10", "10 of 10");
    expect(action?.edit && editor.apply(action.edit)).toEqual({ "a.drill": fixed });
    expect((await openEditor({ "a.drill": fixed })).diagnostics).toEqual([]);
  });

  test("prefer the first of several", async () => {
    const editor = await openEditor({ "a.drill": TEXT });
    const [diagnostic] = editor.diagnostics;
    const edit = { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, newText: "" };
    const fixes = ["first", "second"].map((title) => ({ title, edits: [edit] }));
    const actions = await editor.services.lsp.CodeActionProvider?.getCodeActions(editor.document, {
      ...editor.params,
      range: edit.range,
      context: { diagnostics: [{ ...diagnostic, range: edit.range, message: "", data: { fixes } }] },
    });
    expect(actions).toMatchObject([{ title: "first", isPreferred: true }, { title: "second" }]);
    expect(actions?.[1]).not.toHaveProperty("isPreferred");
  });

  test("are found for editors that do not send back what came with a finding", async () => {
    const editor = await openEditor({ "a.drill": TEXT });
    const [found] = editor.diagnostics;
    if (found === undefined) throw new Error("Nothing is reported.");
    const { data: _, ...bare } = found;
    const actions = await editor.services.lsp.CodeActionProvider?.getCodeActions(editor.document, {
      ...editor.params,
      range: bare.range,
      context: { diagnostics: [bare], only: ["quickfix"] },
    });
    expect(actions).toMatchObject([{ title: "Ask for 10 of 10" }]);
  });

  test("are left out where other kinds are asked for, and for findings of others", async () => {
    const editor = await openEditor({ "a.drill": TEXT });
    expect((await editor.codeActions(["refactor"])).map(({ title }) => title)).not.toContain(
      "Ask for 10 of 10",
    );
    expect(await editor.codeActions(["quickfix"])).toHaveLength(1);
    const [diagnostic] = editor.diagnostics;
    const actions = await editor.services.lsp.CodeActionProvider?.getCodeActions(editor.document, {
      ...editor.params,
      range: editor.diagnostics[0]?.range as never,
      context: {
        diagnostics: [{ ...diagnostic, source: "another tool" } as never],
        only: ["quickfix"],
      },
    });
    expect(actions).toEqual([]);
  });
});
