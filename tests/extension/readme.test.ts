/** What the listing shows to newcomers must be a plan that they can paste. */
import { readFileSync } from "node:fs";
import { EmptyFileSystem, URI } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";

const readme = readFileSync(new URL("../../extension/README.md", import.meta.url), "utf8");
const plans = [...readme.matchAll(/```drill\n([\s\S]*?)```/g)].map(([, text]) => text ?? "");

test("every plan in the listing is without a mistake", async () => {
  expect(plans).not.toEqual([]);
  const { shared } = createCoreServices(EmptyFileSystem);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  for (const [index, text] of plans.entries()) {
    const document = shared.workspace.LangiumDocumentFactory.fromString(
      text,
      URI.file(`/plan-${index}.drill`),
    );
    shared.workspace.LangiumDocuments.addDocument(document);
    await shared.workspace.DocumentBuilder.build([document], { validation: true });
    expect(document.diagnostics).toEqual([]);
  }
});

test("the listing shows no picture that a gallery would refuse", () => {
  for (const [, address] of readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g))
    expect(address).toMatch(/^https:\/\/.*\.(png|jpg|gif)$/);
});
