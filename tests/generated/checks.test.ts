import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const folder = new URL("../../language/checks/", import.meta.url);

test("the table of checks holds every check of the folder", async () => {
  const ids = readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .filter((name) =>
      readFileSync(new URL(name, folder), "utf8").includes("export const check = defineCheck("),
    )
    .map((name) => name.replace(/\.ts$/, ""))
    .sort();
  const variable = (id: string) => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  const module = [
    "// Written from the files of language/checks by tests/generated/checks.test.ts. Do not edit.",
    ...ids.map((id) => `import { check as ${variable(id)} } from "../checks/${id}.ts";`),
    "",
    "/** Every check by its id. */",
    "export const CHECKS = {",
    ...ids.map((id) => `  ${JSON.stringify(id)}: ${variable(id)},`),
    "} as const;",
    "",
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../language/generated/checks.ts");
});
