/** What the tutorial shows is read without a mistake. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { check } from "./checked-files.ts";

const page = readFileSync(new URL("../../language/TUTORIAL.md", import.meta.url), "utf8");
const steps = [...page.matchAll(/```drillwright\n([\s\S]*?)```/g)].map(([, text]) => text ?? "");

test("the tutorial has its steps", () => {
  expect(steps).toHaveLength(4);
});

test.each(steps.map((text, index) => [index + 1, text] as const))("step %i is sound", async (_, text) => {
  expect((await check(text)).filter(({ severity }) => severity !== "hint")).toEqual([]);
});
