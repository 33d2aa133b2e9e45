import { afterEach, expect, test, vi } from "vitest";
import { ensureChromium } from "./tools.ts";

afterEach(() => {
  vi.unstubAllEnvs();
});

test("a named browser that does not exist is refused with its name", async () => {
  vi.stubEnv("CHROMIUM_PATH", "/nowhere/chromium");
  await expect(ensureChromium()).rejects.toThrow(
    "CHROMIUM_PATH names /nowhere/chromium, which does not exist. Correct it, or unset it.",
  );
});

test("a named browser that exists is taken", async () => {
  vi.stubEnv("CHROMIUM_PATH", process.execPath);
  expect(await ensureChromium()).toBe(process.execPath);
});
