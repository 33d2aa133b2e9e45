import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const folder = new URL("../../language/library/", import.meta.url);

test("the embedded library is the library", async () => {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".drill"))
    .sort();
  const entries = names.map((name) => {
    const text = readFileSync(new URL(name, folder), "utf8");
    return `  ${JSON.stringify(name)}: ${JSON.stringify(text)},`;
  });
  const module = [
    "// Written from the files of language/library by tests/generated/library.test.ts. Do not edit.",
    "export const LIBRARY_FILES: Readonly<Record<string, string>> = {",
    ...entries,
    "};",
    "",
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../language/generated/library.ts");
});
