import { expect, test } from "vitest";
import { flagged, modifiedScores } from "../../shared/statistics/outliers.ts";
import { expectNear, numbersIn, oracleRows } from "../support/oracle.ts";

test("the reference table", () => {
  const columns = ["id", "data", "modified_z", "flagged_positions_over_3.5"] as const;
  for (const row of oracleRows("statistics/outlier_modified_z.csv", columns)) {
    const values = numbersIn(row.data);
    const expected = numbersIn(row.modified_z);
    for (const [index, score] of modifiedScores(values).entries()) {
      expectNear(score, expected[index] ?? Number.NaN, { absolute: 1e-9 }, row);
    }
    const positions = row["flagged_positions_over_3.5"];
    const found = flagged(values).map((index) => index + 1);
    expect(found.join(";"), JSON.stringify(row)).toBe(values.length < 5 ? "" : positions);
  }
});

test("four shots are too few to flag one", () => {
  expect(flagged([1, 1.1, 0.9, 40])).toEqual([]);
  expect(flagged([1, 1.1, 0.9, 1.05, 40])).toEqual([4]);
  expect([modifiedScores([]), flagged([])]).toEqual([[], []]);
});
