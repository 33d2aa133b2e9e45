import { expect, test } from "vitest";
import { chanceAllRight, confidenceEach } from "../../shared/statistics/several-criteria.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";

const relative = 1e-9;

const rows = oracleRows("statistics/multiplicity.csv", [
  "p_values_or_case",
  "bonferroni_or_any_false",
  "holm_or_all_right",
]);

test("the chance that all are right", () => {
  const cases = rows.flatMap((row) => {
    const found = /^(\d+) independent criteria each at confidence (\S+)$/.exec(row.p_values_or_case);
    return found ? [{ row, k: Number(found[1]), confidence: Number(found[2]) }] : [];
  });
  expect(cases.length).toBeGreaterThan(10);
  for (const { row, k, confidence } of cases) {
    const together = chanceAllRight(Array<number>(k).fill(confidence));
    expectNear(together, numberIn(row.holm_or_all_right), { relative }, row);
    expectNear(1 - together, numberIn(row.bonferroni_or_any_false), { relative }, row);
  }
});

test("any of k: an error kept by one is k times as large for all", () => {
  const lists = rows.filter((row) => /^[\d.;]+$/.test(row.p_values_or_case));
  expect(lists.length).toBeGreaterThan(3);
  for (const row of lists) {
    const values = numbersIn(row.p_values_or_case);
    const adjusted = numbersIn(row.bonferroni_or_any_false);
    for (const [index, p] of values.entries()) {
      for (const error of [0.05, 0.1, 0.2, 0.3]) {
        const each = 1 - confidenceEach(1 - error, values.length, 1);
        const expected = (adjusted[index] ?? Number.NaN) <= error + 1e-9;
        expect(p <= each + 1e-9, JSON.stringify({ row, p, error })).toBe(expected);
      }
    }
  }
});

test("all of them need no correction, and the more are needed the less it is", () => {
  expectNear(confidenceEach(0.9, 5, 5), 0.9, { relative: 1e-12 }, {});
  expectNear(confidenceEach(0.9, 5, 4), 0.95, { relative: 1e-12 }, {});
  expectNear(confidenceEach(0.9, 5, 1), 0.98, { relative: 1e-12 }, {});
  expect(confidenceEach(0.3, 5, 1)).toBeNaN();
  expect(chanceAllRight([])).toBe(1);
});
