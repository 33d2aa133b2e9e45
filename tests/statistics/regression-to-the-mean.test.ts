import { expect, test } from "vitest";
import { isUnusuallyBad } from "../../shared/statistics/regression-to-the-mean.ts";
import { sampleWith } from "./samples.ts";

test("worse than usual by more than its own standard error, on the side that is worse", () => {
  const baseline = sampleWith([144, 146, 148, 142, 145]); // 145 ± 1
  expect(isUnusuallyBad(baseline, 147, 1)).toBe(true);
  expect(isUnusuallyBad(baseline, 145.5, 1)).toBe(false);
  expect(isUnusuallyBad(baseline, 147, -1)).toBe(false);
  expect(isUnusuallyBad(baseline, 142, -1)).toBe(true);
  expect(isUnusuallyBad(sampleWith([140]), 147, 1)).toBe(false);
});
