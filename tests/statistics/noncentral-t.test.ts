import { describe, expect, test } from "vitest";
import { studentCdf, studentQuantile } from "../../shared/statistics/distributions.ts";
import { noncentralCdf, noncentralQuantile } from "../../shared/statistics/noncentral-t.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

const relative = 1e-8;

describe("the noncentral t distribution", () => {
  test("the reference table", () => {
    for (const row of oracleRows("statistics/noncentral_t.csv", ["t", "df", "noncentrality", "lower_tail"])) {
      const actual = noncentralCdf(numberIn(row.t), numberIn(row.df), numberIn(row.noncentrality));
      expectNear(actual, numberIn(row.lower_tail), { relative }, row);
    }
  });

  test("without noncentrality it is Student's t, for few degrees of freedom and for many", () => {
    for (const degrees of [1, 2, 3.5, 9, 58, 9999]) {
      for (const t of [-3, -0.4, 0, 1.3, 8]) {
        const expected = studentCdf(t, degrees);
        expectNear(noncentralCdf(t, degrees, 0), expected, { relative: 1e-10 }, { degrees, t });
      }
      expectNear(
        noncentralQuantile(0.9, degrees, 0),
        studentQuantile(0.9, degrees),
        { relative },
        { degrees },
      );
    }
  });

  test("a quantile is where the distribution has it; outside the domain there is none", () => {
    for (const p of [0.01, 0.5, 0.99]) {
      expectNear(noncentralCdf(noncentralQuantile(p, 4, 6.5), 4, 6.5), p, { relative: 1e-10 }, { p });
    }
    expect(noncentralQuantile(0, 4, 1)).toBeNaN();
    expect(noncentralQuantile(0.5, 0, 1)).toBeNaN();
    expect(noncentralQuantile(0.5, 4, Number.POSITIVE_INFINITY)).toBeNaN();
    expect(noncentralCdf(1, 0, 1)).toBeNaN();
  });
});
