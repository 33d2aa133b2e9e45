/** The folder that newcomers get must be what its front page promises. */
import { EmptyFileSystem, URI } from "langium";
import { expect, test } from "vitest";
import { sampleFolder } from "../../.build/sample-folder.ts";
import { createCoreServices } from "../../language/core-module.ts";

const files = await sampleFolder(new URL("../../", import.meta.url).pathname);
const readme = files["README.md"] ?? "";

test("it holds plans, sessions and tables, and nothing for those who maintain them", () => {
  const paths = Object.keys(files);
  expect(paths).toEqual(expect.arrayContaining([".vscode/settings.json", "README.md"]));
  const folders = new Set(paths.map((path) => path.split("/")[0]));
  expect([...folders]).toEqual(expect.arrayContaining(["data", "library", "plans", "sessions"]));
  const others = paths.filter((path) => !/\.(drill|csv)$/.test(path));
  expect(others).toEqual([".vscode/settings.json", "README.md"]);
});

test("every file that its front page leads to is there", () => {
  const links = [...readme.matchAll(/\]\(([^)]+)\)/g)].flatMap(([, link]) => link ?? []);
  expect(links.length).toBeGreaterThan(4);
  const isThere = (link: string) =>
    Object.keys(files).some((path) => path === link || path.startsWith(`${link}/`));
  expect(links.filter((link) => !isThere(link))).toEqual([]);
});

test("the tour changes a line that stands in the plan", () => {
  expect(files["plans/seven-iron-start-line.drill"]).toContain("within 2°");
  expect(readme).toContain("`within 2°`");
});

test("it says how to take care", () => {
  expect(readme).toMatch(/Stop on pain, dizziness or numbness/);
});

test("its files are without a mistake", async () => {
  const { shared } = createCoreServices(EmptyFileSystem);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  const documents = Object.entries(files)
    .filter(([path]) => path.endsWith(".drill"))
    .map(([path, text]) =>
      shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse(`memory:/${path}`)),
    );
  for (const document of documents) shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build(documents, { validation: true });
  const errors = documents.flatMap(({ uri, diagnostics }) =>
    (diagnostics ?? [])
      .filter(({ severity }) => severity === 1)
      .map(({ message }) => `${uri.path}: ${message}`),
  );
  expect(errors).toEqual([]);
});
