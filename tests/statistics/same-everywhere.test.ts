/**
 * Results are the same to the last bit on every platform: nothing in the statistics calls a function that engines may
 * compute differently, and no power operator, which is one.
 */
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const folder = new URL("../../shared/statistics/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));

/** Exactly rounded, or made of comparisons only. */
const ALLOWED = ["abs", "ceil", "floor", "max", "min", "round", "sqrt", "trunc", "sign", "PI", "SQRT2"];

test("the folder was found", () => {
  expect(files).toContain("distributions.ts");
});

test.each(files)("%s", (file) => {
  const code = withoutComments(readFileSync(new URL(file, folder), "utf8"));
  const called = [...code.matchAll(/\bMath\.(\w+)/g)].map((match) => match[1] ?? "");
  expect(called.filter((name) => !ALLOWED.includes(name))).toEqual([]);
  expect(code).not.toMatch(/\*\*|Math\[|Date\b|random\(\)|toLocale/);
});

test("a forbidden call is seen", () => {
  expect(withoutComments("/** Math.exp */ a ** b // Math.log")).toBe(" a ** b ");
});

function withoutComments(code: string): string {
  return code.replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*$/gm, "");
}
