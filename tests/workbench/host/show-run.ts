/** Runs a suite in an editor, and shows every test of it as a test here. */
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { extensionFolder, repository } from "./places.ts";
import { runSuite, type SuiteRun } from "./run-suite.ts";

export type Run = Pick<SuiteRun, "host" | "trusted" | "settings"> & {
  /** The suite's file in `suite`, without its ending. */
  readonly suite: string;
  /** The folder to open, relative to the repository. */
  readonly folder: string;
  /** What people are told because the suite calls commands that tell it. Nothing else may be. */
  readonly tells?: readonly RegExp[];
};

export async function showRun(name: string, { suite, folder, tells = [], ...how }: Run): Promise<void> {
  const { tests, problem, outsideRequests, notifications } = await runSuite({
    suite: join(import.meta.dirname, "..", "suite", `${suite}.ts`),
    extension: extensionFolder(),
    folder: resolve(repository, folder),
    ...how,
  });

  describe(name, () => {
    test("the suite runs to its end", () => {
      if (problem !== undefined) throw new Error(problem);
    });

    test("the window asks nothing of the network", () => {
      expect(outsideRequests).toEqual([]);
    });

    test("people are told only what they asked for", () => {
      expect(notifications).toEqual(tells.map((text) => expect.stringMatching(text)));
    });

    for (const each of tests)
      test(each.name, (context) => {
        if (each.outcome === "skipped") context.skip(each.message);
        if (each.outcome === "failed") throw failure(each.message, each.stack);
      });
  });
}

function failure(message: string | undefined, stack: string | undefined): Error {
  const error = new Error(message ?? "It failed without a message.");
  if (stack !== undefined) error.stack = stack;
  return error;
}
