import { defineConfig } from "vitest/config";

/** The tests that need a real editor: one after the other, with the time a browser needs on a busy machine. */
export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: {
    include: ["tests/workbench/**/*.test.ts"],
    fileParallelism: false,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    reporters: ["verbose"],
  },
});
