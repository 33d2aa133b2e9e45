/**
 * Runs each suite once in its editor, and shows every test of it as a test here.
 * `WORKBENCH_RUN=part of a name` takes only the runs with such a name.
 */
import { describe, expect, test } from "vitest";
import { runSuite } from "./host/run-suite.ts";
import { runs } from "./runs.ts";

const wanted = process.env.WORKBENCH_RUN ?? "";

for (const { name, tells, ...run } of runs.filter((each) => each.name.includes(wanted))) {
  const { tests, problem, outsideRequests, notifications } = await runSuite(run);

  describe(name, () => {
    test("the suite runs to its end", () => {
      if (problem !== undefined) throw new Error(problem);
    });

    test("the window asks nothing of the network", () => {
      expect(outsideRequests).toEqual([]);
    });

    test("people are told only what they asked for", () => {
      expect(notifications).toEqual((tells ?? []).map((text) => expect.stringMatching(text)));
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
