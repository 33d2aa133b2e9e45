/**
 * The test runner inside the extension host: `test` collects, `runTests` runs one after the other and reports.
 * It knows neither Node nor the editor, so that it also works in a web worker.
 */
import type { SuiteFacts, SuiteResults, TestResult } from "./suite-results.ts";

type Test = {
  readonly name: string;
  readonly body: () => void | Promise<void>;
  readonly limit: number;
};

class Skipped extends Error {}

const collected: Test[] = [];

/** Adds a test. One that takes longer than `limit` milliseconds fails, and the next has its turn. */
export function test(name: string, body: () => void | Promise<void>, limit = 60_000): void {
  collected.push({ name, body, limit });
}

/** Ends the running test as skipped; the reason is shown. */
export function skip(reason: string): never {
  throw new Skipped(reason);
}

declare const SUITE_FACTS: SuiteFacts;

/** Where this suite runs. */
export const facts: SuiteFacts = typeof SUITE_FACTS === "undefined" ? nowhere() : SUITE_FACTS;

function nowhere(): SuiteFacts {
  return { host: "remote", trusted: true, extensionId: "none.none" };
}

/** Asks again and again until the answer is neither undefined nor false; gives up in the words of `what`. */
export async function eventually<T>(
  what: string,
  ask: () => T | Promise<T>,
  limit = 30_000,
): Promise<Exclude<T, undefined | false>> {
  const end = Date.now() + limit;
  while (true) {
    const answer = await ask();
    if (answer !== undefined && answer !== false) return answer as Exclude<T, undefined | false>;
    if (Date.now() > end) throw new Error(`Waited ${limit / 1000} s in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}

/** Runs all collected tests in the order of their definition, whatever becomes of each. */
export async function runTests(
  report: (results: SuiteResults) => Promise<void>,
): Promise<readonly TestResult[]> {
  const tests: TestResult[] = [];
  for (const each of collected.splice(0)) {
    await report({ tests, running: each.name, finished: false });
    tests.push(await runOne(each));
  }
  await report({ tests, finished: true });
  return tests;
}

async function runOne({ name, body, limit }: Test): Promise<TestResult> {
  const start = Date.now();
  const result = (outcome: TestResult["outcome"], more: Partial<TestResult> = {}): TestResult => ({
    name,
    outcome,
    milliseconds: Date.now() - start,
    ...more,
  });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`The test did not end within ${limit / 1000} s.`)), limit);
  });
  try {
    await Promise.race([Promise.resolve().then(body), late]);
    return result("passed");
  } catch (error) {
    if (error instanceof Skipped) return result("skipped", { message: error.message });
    if (!(error instanceof Error)) return result("failed", { message: `Thrown: ${String(error)}` });
    return result("failed", { message: error.message, ...(error.stack ? { stack: error.stack } : {}) });
  } finally {
    clearTimeout(timer);
  }
}
