import { expect, test } from "vitest";
import { openEditor } from "../support/editor.ts";
import { DRILLS, PLANS } from "./reuse.ts";

const FILES = { "plans.drill": PLANS, "drills.drill": DRILLS };

/** Who uses what stands at `name` in a file, and what that uses, with how often. */
async function hierarchy(path: keyof typeof FILES, name: string) {
  const editor = (await openEditor(FILES)).at(path, FILES[path].indexOf(name) + 2);
  const provider = editor.services.lsp.CallHierarchyProvider;
  const [item] =
    (await provider?.prepareCallHierarchy(editor.document, {
      textDocument: { uri: editor.document.uri.toString() },
      position: editor.position,
    })) ?? [];
  if (item === undefined) return undefined;
  const incoming = (await provider?.incomingCalls({ item })) ?? [];
  const outgoing = (await provider?.outgoingCalls({ item })) ?? [];
  return {
    item: `${item.detail} ${item.name}`,
    usedBy: incoming.map(({ from, fromRanges }) => `${from.detail} ${from.name} ×${fromRanges.length}`),
    uses: outgoing.map(({ to, fromRanges }) => `${to.detail} ${to.name} ×${fromRanges.length}`),
  };
}

test("a drill is used by plans and findings", async () => {
  expect(await hierarchy("drills.drill", '"Gate" (')).toEqual({
    item: "drill Gate",
    usedBy: ["plan Start line ×2", "finding Opens the face ×1"],
    uses: [],
  });
});

test("a plan uses drills, findings and the plans it leads to, and is used by curricula", async () => {
  expect(await hierarchy("plans.drill", '"Start line" {')).toEqual({
    item: "plan Start line",
    usedBy: ["curriculum Irons ×1"],
    uses: ["finding Opens the face ×1", "drill Gate ×2", "plan Strike first ×1"],
  });
});

test("a curriculum uses its plans, also asked from a step", async () => {
  expect((await hierarchy("plans.drill", '"Irons"'))?.uses).toEqual([
    "plan Strike first ×2",
    "plan Start line ×1",
  ]);
  expect((await hierarchy("plans.drill", '"Gate"\n'))?.item).toBe("drill Gate");
});

test("what is not made of plans has no hierarchy", async () => {
  expect(await hierarchy("plans.drill", '"Where we are"')).toBeUndefined();
});
