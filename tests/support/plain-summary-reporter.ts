/** Ends a run with the plain line `N passed, N failed`, which any program can read. */
import type { Reporter, TestModule, TestRunEndReason } from "vitest/node";

export default class PlainSummaryReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[], reason: TestRunEndReason): void {
    const results = modules.flatMap((module) =>
      [...module.children.allTests()].map((test) => test.result().state),
    );
    const count = (state: string) => results.filter((result) => result === state).length;
    // A file that could not be loaded, or an error outside of any test, counts as a failure.
    const broken = modules.filter((module) => module.errors().length > 0).length + errors.length;
    const failed = count("failed") + broken + (reason === "failed" && count("failed") + broken === 0 ? 1 : 0);
    const skipped = count("skipped");
    process.on("exit", () => {
      console.log(`${count("passed")} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
    });
  }
}
