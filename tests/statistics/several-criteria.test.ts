import fc from "fast-check";
import { expect, test } from "vitest";
import { chanceAllRight, confidenceEach, sharesOfError } from "../../shared/statistics/several-criteria.ts";
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
        const each = 1 - confidenceEach(1 - error, sharesOfError(values.length, 1, values.length));
        const expected = (adjusted[index] ?? Number.NaN) <= error + 1e-9;
        expect(p <= each + 1e-9, JSON.stringify({ row, p, error })).toBe(expected);
      }
    }
  }
});

test("all of them need no correction, any of them a share for each, and what lies between fewer", () => {
  expect([1, 2, 3, 4, 5].map((needed) => sharesOfError(5, needed, 5))).toEqual([5, 4, 3, 4, 1]);
  expect(sharesOfError(3, 2, 3)).toBe(2);
  expect(sharesOfError(6, 1, 2)).toBe(2); // the others are as they are seen
  expect(sharesOfError(6, 1, 1)).toBe(1);
  expectNear(confidenceEach(0.9, 4), 0.975, { relative: 1e-12 }, {});
  expect(confidenceEach(0.3, 5)).toBeNaN();
  expect(chanceAllRight([])).toBe(1);
});

const ERROR = 0.2;

/**
 * How often a group is met while it is false, when the verdict on each uncertain criterion is wrong in `wrongIn` of these
 * cases, with their probabilities. What is merely seen turns out as is worst, in each case anew.
 */
const metWhileFalse = (
  k: number,
  needed: number,
  trueOnes: number,
  uncertain: number,
  cases: readonly Case[],
) =>
  cases.reduce((sum, { probability, wrong }) => {
    const seen = Array.from({ length: k - uncertain + 1 }, (_, met) => met);
    const isWorst = seen.some((met) => trueOnes + met < needed && trueOnes + wrong.length + met >= needed);
    return sum + (isWorst ? probability : 0);
  }, 0);

interface Case {
  readonly probability: number;
  /** The false criteria that are shown to be met. */
  readonly wrong: readonly number[];
}

const group = fc
  .tuple(fc.integer({ min: 2, max: 6 }), fc.nat(), fc.nat(), fc.nat())
  .map(([k, needed, uncertain, trueOnes]) => {
    const ofThem = 2 + (uncertain % (k - 1));
    return { k, needed: 1 + (needed % (k - 1)), uncertain: ofThem, trueOnes: trueOnes % (ofThem + 1) };
  });

/** Any law of errors, however they hang together: weights of sets of criteria that are wrong together. */
const weights = fc.array(fc.tuple(fc.nat({ max: 63 }), fc.double({ min: 0.01, max: 1, noNaN: true })), {
  minLength: 1,
  maxLength: 12,
});

/** The same law with each criterion wrong as often as it may be at most. */
function casesOf(law: readonly (readonly [number, number])[], falseOnes: number, most: number): Case[] {
  const cases = law.map(([set, probability]) => ({
    probability,
    wrong: Array.from({ length: falseOnes }, (_, one) => one).filter((one) => (set >> one) & 1),
  }));
  const often = Array.from({ length: falseOnes }, (_, one) =>
    cases.reduce((sum, { probability, wrong }) => sum + (wrong.includes(one) ? probability : 0), 0),
  );
  const largest = Math.max(...often);
  const total = cases.reduce((sum, { probability }) => sum + probability, 0);
  const scale = Math.min(largest === 0 ? 1 : most / largest, 1 / total);
  return cases.map(({ probability, wrong }) => ({ probability: probability * scale, wrong }));
}

test("no law of errors makes a group met while it is false, or missed while it is true, more often than allowed", () => {
  fc.assert(
    fc.property(group, weights, ({ k, needed, uncertain, trueOnes }, law) => {
      const most = ERROR / sharesOfError(k, needed, uncertain);
      const cases = casesOf(law, uncertain - trueOnes, most);
      expect(metWhileFalse(k, needed, trueOnes, uncertain, cases)).toBeLessThanOrEqual(ERROR + 1e-9);
      // "Missed while true" is "k − needed + 1 of the opposites met while false".
      const opposite = metWhileFalse(k, k - needed + 1, trueOnes, uncertain, cases);
      expect(opposite).toBeLessThanOrEqual(ERROR + 1e-9);
    }),
    { numRuns: 3000 },
  );
});

test("one share less would be too few", () => {
  for (let k = 3; k <= 6; k++) {
    for (let needed = 1; needed < k; needed++) {
      const shares = sharesOfError(k, needed, k);
      // Just so many false ones that one error decides, each in a case of its own.
      const worst = [needed, k - needed + 1].map((least) => {
        const falseOnes = k - least + 1;
        const cases = Array.from({ length: falseOnes }, (_, one) => ({
          probability: ERROR / (shares - 1),
          wrong: [one],
        }));
        return metWhileFalse(k, least, least - 1, k, cases);
      });
      expect(Math.max(...worst)).toBeGreaterThan(ERROR + 1e-9);
    }
  }
});
