import { defineConfig } from "vitest/config";

const root = new URL("..", import.meta.url).pathname;

export default defineConfig({
  test: {
    projects: [
      {
        root,
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/workbench/**"],
          testTimeout: 30_000,
        },
      },
      {
        // The tests that need a real editor: one after the other, with the time a browser needs on a busy machine.
        root,
        test: {
          name: "workbench",
          include: ["tests/workbench/**/*.test.ts"],
          fileParallelism: false,
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
    ],
    reporters: ["default", `${root}tests/support/plain-summary-reporter.ts`],
  },
});
