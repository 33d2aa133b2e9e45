import { describe, expect, test } from "vitest";
import {
  bestConformance,
  conformanceProbability,
  verdictByProbability,
} from "../../shared/statistics/conformance.ts";
import { guardBand } from "../../shared/statistics/guard-band.ts";
import { type Interval, slackOf } from "../../shared/statistics/interval.ts";
import { expectNear, numberIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { unlimited } from "./samples.ts";

const slack = slackOf(1);
const absolute = 1e-9;
const within2 = { low: -2, high: 2 };

describe("one reading", () => {
  test("the reference table", () => {
    const columns = [
      "reading",
      "standard_uncertainty",
      "limit_low",
      "limit_high",
      "level",
      "conformance_probability",
      "verdict",
    ] as const;
    for (const row of oracleRows("statistics/conformance_probability.csv", columns)) {
      const uncertainty = numberIn(row.standard_uncertainty);
      const actual = conformanceProbability(numberIn(row.reading), uncertainty, claimIn(row), slack);
      expectNear(actual, numberIn(row.conformance_probability), { absolute }, row);
      expect(verdictByProbability(actual, numberIn(row.level)), JSON.stringify(row)).toBe(row.verdict);
    }
  });

  test("within ±2° read to 0.4°", () => {
    const verdict = (reading: number) =>
      verdictByProbability(conformanceProbability(reading, 0.4, within2, slack), 0.95);
    expect([1.2, 1.9, 2.1, 2.7].map(verdict)).toEqual(["met", "undecided", "undecided", "missed"]);
  });

  test("far off on either side the probability keeps its digits", () => {
    const below = conformanceProbability(-30, 2, within2, slack);
    const above = conformanceProbability(30, 2, within2, slack);
    expectNear(above, 7.79353681919216e-45, { relative: 1e-10 }, {});
    expect(below).toBe(above);
  });

  test("an exact reading is inside or not, with the slack of every comparison", () => {
    expect(conformanceProbability(0.1 + 0.2, 0, { low: 0, high: 0.3 }, slack)).toBe(1);
    expect(conformanceProbability(2.01, 0, within2, slack)).toBe(0);
  });

  test("no uncertainty at all, or a level that is none, decides nothing", () => {
    expect(conformanceProbability(1, -0.1, within2, slack)).toBeNaN();
    expect(conformanceProbability(1, Number.NaN, within2, slack)).toBeNaN();
    expect(verdictByProbability(Number.NaN, 0.95)).toBe("undecided");
    expect(verdictByProbability(1, 1)).toBe("undecided");
    expect(verdictByProbability(0.9, 0.4)).toBe("undecided");
  });

  test("a probability of exactly the level decides", () => {
    expect(verdictByProbability(0.9, 0.9)).toBe("met");
    expect(verdictByProbability(0.1, 0.9)).toBe("missed");
  });
});

test("can it ever be met? Up to u = 0.51 of half the width at 95 %, 0.78 at 80 %", () => {
  expect(bestConformance(0.5 * 2, within2)).toBeGreaterThan(0.95);
  expect(bestConformance(0.52 * 2, within2)).toBeLessThan(0.95);
  expect(bestConformance(0.77 * 2, within2)).toBeGreaterThan(0.8);
  expect(bestConformance(0.79 * 2, within2)).toBeLessThan(0.8);
  expect(bestConformance(5, { low: 145, high: unlimited })).toBe(1);
});

describe("readings that decide", () => {
  test("the reference table", () => {
    const columns = [
      "standard_uncertainty",
      "limit_low",
      "limit_high",
      "level",
      "z",
      "one_sided_guard_band",
      "one_sided_accept_low",
      "one_sided_accept_high",
      "exact_accept_low",
      "exact_accept_high",
      "exact_reject_below",
      "exact_reject_above",
    ] as const;
    for (const row of oracleRows("statistics/guard_bands.csv", columns)) {
      const [uncertainty, level] = [numberIn(row.standard_uncertainty), numberIn(row.level)];
      const claim = claimIn(row);
      const band = guardBand(uncertainty, level);
      expectNear(guardBand(1, level), numberIn(row.z), { absolute }, row);
      expectNear(band, numberIn(row.one_sided_guard_band), { absolute }, row);
      expectEnd(claim.low + band, row.one_sided_accept_low, row);
      expectEnd(claim.high - band, row.one_sided_accept_high, row);

      // Where the probability of a reading reaches the level, and where it falls to the rest of it.
      if (row.exact_accept_low === "none") expect(bestConformance(uncertainty, claim)).toBeLessThan(level);
      else expectAt([row.exact_accept_low, row.exact_accept_high], uncertainty, claim, level, row);
      expectAt([row.exact_reject_below, row.exact_reject_above], uncertainty, claim, 1 - level, row);
    }
  });

  test("how wide the zone between is", () => {
    const columns = [
      "u_over_half_width",
      "level",
      "conformance_probability_at_centre",
      "accept_within_fraction_of_half_width",
      "reject_beyond_fraction_of_half_width",
    ] as const;
    const claim = { low: -1, high: 1 };
    for (const row of oracleRows("statistics/guard_band_undecided_zone.csv", columns)) {
      const uncertainty = numberIn(row.u_over_half_width);
      expectNear(
        bestConformance(uncertainty, claim),
        numberIn(row.conformance_probability_at_centre),
        { absolute },
        row,
      );
      const level = numberIn(row.level);
      const accepted = row.accept_within_fraction_of_half_width;
      if (accepted === "none") expect(bestConformance(uncertainty, claim)).toBeLessThan(level);
      else expectAt([accepted], uncertainty, claim, level, row);
      expectAt([row.reject_beyond_fraction_of_half_width], uncertainty, claim, 1 - level, row);
    }
  });

  /** The conformance probability of readings that are no ends of the scale. */
  function expectAt(
    cells: readonly string[],
    uncertainty: number,
    claim: Interval,
    probability: number,
    row: object,
  ) {
    for (const reading of cells
      .filter((cell) => cell !== "")
      .map(Number)
      .filter(Number.isFinite)) {
      const actual = conformanceProbability(reading, uncertainty, claim, 0);
      expectNear(actual, probability, { absolute }, row);
    }
  }

  function expectEnd(actual: number | undefined, cell: string, row: object) {
    const expected = optionalNumberIn(cell);
    if (expected === undefined) expect(Math.abs(actual ?? 0)).toBe(unlimited);
    else expectNear(actual, expected, { absolute }, row);
  }
});

function claimIn(row: { readonly limit_low: string; readonly limit_high: string }): Interval {
  return {
    low: optionalNumberIn(row.limit_low) ?? -unlimited,
    high: optionalNumberIn(row.limit_high) ?? unlimited,
  };
}
