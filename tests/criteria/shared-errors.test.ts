import { expect, test } from "vitest";
import { averageOverErrors } from "../../language/criteria/shared-errors.ts";
import { normalCdf } from "../../shared/statistics/distributions.ts";
import { atLeastHits } from "../../shared/statistics/poisson-binomial.ts";
import { averageOverShared } from "../../shared/statistics/shared-error.ts";

/** P(at least 6 of 12 shots have two readings within ±2), each off by 0.4 of its own and 0.4 in common. */
const readings = Array.from(
  { length: 12 },
  (_, shot) => [((shot * 7) % 12) / 2.5 - 2, 2.2 - shot / 3] as const,
);

function probability([first = 0, second = 0]: readonly number[]): number {
  const inside = (value: number, error: number) => {
    const centre = value - 0.4 * error;
    return normalCdf((2 - centre) / 0.4) - normalCdf((-2 - centre) / 0.4);
  };
  return atLeastHits(
    readings.map(([one, other]) => inside(one, first) * inside(other, second)),
    6,
  );
}

test("several errors: as near as two thousandths to steps in every direction", () => {
  const difference = averageOverErrors([1, 1], probability) - averageOverShared([1, 1], probability);
  expect(Math.abs(difference)).toBeLessThan(2e-3);
});

test("one error, or none", () => {
  const one = ([error = 0]: readonly number[]) => probability([error, 0.5]);
  expect(averageOverErrors([1], one)).toBe(averageOverShared([1], one));
  expect(averageOverErrors([], () => 0.25)).toBe(0.25);
});

test.each([
  ["all readings", [-1, -1]],
  ["the first", [-1, 1]],
  ["the second", [1, -1]],
])("a mirror image has the same average, where %s change their sign in it", (_, signs) => {
  const mirrored = (errors: readonly number[]) =>
    probability(errors.map((error, at) => error * (signs[at] ?? 1)));
  expect(averageOverErrors([1, 1], mirrored)).toBeCloseTo(averageOverErrors([1, 1], probability), 12);
});

test("of three errors as well", () => {
  const sum = (errors: readonly number[]) => normalCdf(errors.reduce((total, error) => total + error, 0) - 1);
  // P(Z ≤ E₁ + E₂ + E₃ − 1) = Φ(−1/√(1 + 3))
  expect(Math.abs(averageOverErrors([1, 1, 1], sum) - normalCdf(-0.5))).toBeLessThan(2e-3);
});
