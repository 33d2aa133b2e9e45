import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const folder = new URL("../../language/library/", import.meta.url);

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
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../language/generated/library.ts");
});
