import { readdirSync, readFileSync } from "node:fs";
import { EmptyFileSystem } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { storeTree } from "../../language/library/stored-tree.ts";

const folder = new URL("../../language/library/", import.meta.url);
const { LangiumParser: parser } = createCoreServices(EmptyFileSystem).drillwright.parser;

test("the embedded library is the library", async () => {
  const texts = readdirSync(folder)
    .filter((name) => name.endsWith(".drill"))
    .sort()
    .map((name) => [name, readFileSync(new URL(name, folder), "utf8")] as const);
  const module = [
    "// Written from the files of language/library by tests/generated/library.test.ts. Do not edit.",
    "",
    "export const LIBRARY_FILES: Readonly<Record<string, string>> = {",
    ...texts.map(([name, text]) => `  ${JSON.stringify(name)}: ${JSON.stringify(text)},`),
    "};",
    "",
    "/** Their syntax trees, as `language/library/stored-tree.ts` keeps them. */",
    "export const LIBRARY_TREES: Readonly<Record<string, string>> = {",
    ...texts.map(([name, text]) => {
      const { value, parserErrors } = parser.parse(text);
      expect(parserErrors).toEqual([]);
      return `  ${JSON.stringify(name)}: ${JSON.stringify(storeTree(value))},`;
    }),
    "};",
    "",
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../language/generated/library.ts");
});
