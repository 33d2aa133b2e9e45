import { describe, expect, test } from "vitest";
import type { SuiteResults } from "./suite-results.ts";
import { test as add, eventually, runTests, skip } from "./suite-runner.ts";

describe("the runner inside the extension host", () => {
  test("reports each step, so that a stall shows where", async () => {
    add("one", () => {});
    add("two", () => {});
    const steps: SuiteResults[] = [];
    await runTests(async (results) => {
      steps.push(structuredClone(results));
    });
    expect(steps.map(({ running, tests, finished }) => [running, tests.length, finished])).toEqual([
      ["one", 0, false],
      ["two", 1, false],
      [undefined, 2, true],
    ]);
  });

  test("tells failing, hanging and skipping tests apart", async () => {
    add("fails", () => {
      throw new Error("as it should");
    });
    add("throws what is no error", () => Promise.reject("a word"));
    add("hangs", () => new Promise(() => {}), 10);
    add("skips", () => skip("no reason"));
    const results = await runTests(async () => {});
    expect(results.map(({ outcome, message }) => [outcome, message])).toEqual([
      ["failed", "as it should"],
      ["failed", "Thrown: a word"],
      ["failed", "The test did not end within 0.01 s."],
      ["skipped", "no reason"],
    ]);
  });
});

describe("waiting", () => {
  test("returns the first answer there is", async () => {
    const answers = [undefined, false, 0] as const;
    let asked = 0;
    expect(await eventually("an answer", () => answers[asked++])).toBe(0);
    expect(asked).toBe(3);
  });

  test("gives up in words", async () => {
    await expect(eventually("the cows come home", () => false, 30)).rejects.toThrow(
      "Waited 0.03 s in vain: the cows come home",
    );
  });
});
