import { defineConfig } from "vitest/config";

const root = new URL("..", import.meta.url).pathname;

export default defineConfig({
  test: {
    // As many test files at once as there are processors: many tests wait for another process, half of the time.
    maxWorkers: "100%",
    projects: [
      {
        root,
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/workbench/**"],
          setupFiles: "tests/support/limit-searches.ts",
          testTimeout: 120_000,
          // No module of ours keeps what a test could change, so a worker loads each of them once for all its files.
          isolate: false,
          sequence: { groupOrder: 0 },
        },
      },
      {
        // The tests that need a real editor, with the time a browser needs on a busy machine.
        root,
        test: {
          name: "workbench",
          include: ["tests/workbench/**/*.test.ts"],
          globalSetup: "tests/workbench/host/early-tools.ts",
          testTimeout: 240_000,
          hookTimeout: 300_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
    reporters: ["default", `${root}tests/support/plain-summary-reporter.ts`],
  },
});
