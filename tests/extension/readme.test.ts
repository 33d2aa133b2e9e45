/** What the listing shows to newcomers must be a plan that they can paste. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { EmptyFileSystem, URI } from "langium";
import { describe, expect, test } from "vitest";
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

describe("the pictures of the front page", () => {
  const page = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const folder = new URL("../../extension/pictures/", import.meta.url);
  const files = readdirSync(folder);

  test("are there, and none is left over", () => {
    const shown = [...page.matchAll(/extension\/pictures\/([\w-]+\.png)/g)].map(([, file]) => file);
    expect([...new Set(shown)].sort()).toEqual(files.sort());
  });

  test("say what they show, for those who do not see them", () => {
    const texts = [...page.matchAll(/<img alt="([^"]*)"|!\[([^\]]*)\]/g)].map(
      ([, html, text]) => html ?? text,
    );
    expect(texts.length).toBeGreaterThan(5);
    for (const text of texts) expect(text?.length).toBeGreaterThan(20);
  });

  test.each(files)("%s is small, since it stays in the history", (file) => {
    expect(statSync(new URL(file, folder)).size).toBeLessThan(120_000);
  });
});
