import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/workbench/**", "tests/bench/**"],
    testTimeout: 20_000,
  },
});
