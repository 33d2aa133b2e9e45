import { expect, test } from "vitest";
import { selectionRanges } from "../../language/editor/selection-ranges.ts";
import { openEditor } from "../support/editor.ts";

/** What is selected, step by step, from the cursor outwards. */
async function expansion(marked: string): Promise<string[]> {
  const { document, position } = await openEditor({ "a.drill": marked });
  const texts: string[] = [];
  for (let at = selectionRanges(document, [position])[0]; at !== undefined; at = at.parent) {
    texts.push(document.textDocument.getText(at.range));
  }
  return texts;
}

test("from a word over the phrase and the statement to the block, the plan and the file", async () => {
  const block = 'block "B" test {\n    5 shots\n    target carry at least 150 yd\n  }';
  const marked = `plan "A" {\n  ${block.replace("150", "1<|>50")}\n}\n`;
  expect(await expansion(marked)).toEqual([
    "150",
    "150 yd",
    "at least 150 yd",
    "carry at least 150 yd",
    "target carry at least 150 yd",
    "\n    5 shots\n    target carry at least 150 yd\n  ",
    block,
    `\n  ${block}\n`,
    `plan "A" {\n  ${block}\n}`,
    `plan "A" {\n  ${block}\n}\n`,
  ]);
});

test("the text in quotation marks comes before its marks", async () => {
  expect((await expansion('player "P-<|>1" {\n}')).slice(0, 2)).toEqual(["P-1", '"P-1"']);
});

test("there is an answer where nothing is", async () => {
  expect(await expansion("<|>")).toEqual([""]);
  expect((await expansion("club \n\n<|>")).at(-1)).toBe("club \n\n");
});
