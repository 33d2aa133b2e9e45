import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { tables } from "../../examples/generate.ts";
import { examplesFolder } from "./examples.ts";

const folder = new URL("data/", examplesFolder);
const generated = tables();

test("the folder holds the tables that are generated, and no others", () => {
  const committed = readdirSync(folder).filter((name) => name.endsWith(".csv"));
  expect(committed.sort()).toEqual([...generated.keys()].sort());
});

test.each([...generated])("%s is what `node examples/generate.ts` writes, byte for byte", (name, text) => {
  expect(readFileSync(new URL(name, folder), "utf8")).toBe(text);
});

test("a second run writes the same", () => {
  expect([...tables()]).toEqual([...generated]);
});
