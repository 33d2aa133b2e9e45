/** Ends a run with the plain line `N passed, N failed`, which any program can read; also a run in which a file is stuck. */
import type { Reporter, TestModule, TestRunEndReason } from "vitest/node";

/** Milliseconds. No limit of a test stops what never gives way; a file with an editor takes a minute or two on a busy machine. */
const STUCK_AFTER = 360_000;

export default class PlainSummaryReporter implements Reporter {
  private readonly timers = new Map<string, NodeJS.Timeout>();
  private readonly ended: TestModule[] = [];

  onTestModuleQueued(module: TestModule): void {
    this.timers.set(module.id, setTimeout(() => this.endStuck(module), STUCK_AFTER).unref());
  }

  onTestModuleEnd(module: TestModule): void {
    clearTimeout(this.timers.get(module.id));
    this.ended.push(module);
  }

  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[], reason: TestRunEndReason): void {
    // A file that could not be loaded, or an error outside of any test, counts as a failure.
    const broken = modules.filter((module) => module.errors().length > 0).length + errors.length;
    const isUnexplained = reason === "failed" && broken === 0 && count(modules, "failed") === 0;
    tellAtExit(modules, broken + (isUnexplained ? 1 : 0));
  }

  private endStuck({ relativeModuleId }: TestModule): never {
    console.error(
      `${relativeModuleId} has not ended after ${STUCK_AFTER / 60_000} minutes. The run ends here.`,
    );
    tellAtExit(this.ended, 1);
    process.exit(1);
  }
}

function count(modules: readonly TestModule[], state: "passed" | "failed" | "skipped"): number {
  return modules.flatMap(({ children }) => [...children.allTests(state)]).length;
}

function tellAtExit(modules: readonly TestModule[], failures: number): void {
  const failed = count(modules, "failed") + failures;
  const skipped = count(modules, "skipped");
  process.on("exit", () => {
    console.log(
      `${count(modules, "passed")} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`,
    );
  });
}
