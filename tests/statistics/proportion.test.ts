import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { binomialAtLeast, binomialAtMost } from "../../shared/statistics/binomial.ts";
import {
  criticalCounts,
  fewestShots,
  shareLimits,
  shareShotsToDecide,
  shareVerdict,
} from "../../shared/statistics/proportion.ts";
import { expectNear, numberIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";

describe("verdicts", () => {
  test("the reference table", () => {
    const columns = ["n", "hits", "share", "confidence", "verdict_exact"] as const;
    for (const row of oracleRows("statistics/proportion_verdicts.csv", columns)) {
      const [hits, n, share] = [numberIn(row.hits), numberIn(row.n), numberIn(row.share)];
      const verdict = shareVerdict(hits, n, share, numberIn(row.confidence));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict_exact);
    }
  });

  test("7 of 10 decides nothing about 70 % at 80 % confidence; 9 of 10 does", () => {
    expect(shareVerdict(7, 10, 0.7, 0.8)).toBe("undecided");
    expect(shareVerdict(9, 10, 0.7, 0.8)).toBe("met");
    expect(shareVerdict(5, 10, 0.7, 0.8)).toBe("missed");
  });

  test("a probability of exactly the allowed error decides: one miss against 90 % at 90 %", () => {
    expect(shareVerdict(0, 1, 0.9, 0.9)).toBe("missed");
    expect(shareVerdict(1, 1, 0.1, 0.9)).toBe("met");
  });

  test("at most 20 % of shots: few hits meet it, many miss it", () => {
    expect(shareVerdict(0, 10, 0.2, 0.8, "at most")).toBe("met");
    expect(shareVerdict(2, 10, 0.2, 0.8, "at most")).toBe("undecided");
    expect(shareVerdict(4, 10, 0.2, 0.8, "at most")).toBe("missed");
  });

  test.each([
    ["no shots", [0, 0, 0.7, 0.8]],
    ["more hits than shots", [11, 10, 0.7, 0.8]],
    ["a share beyond 1", [9, 10, 7, 0.8]],
    ["a confidence below one half", [9, 10, 0.7, 0.1]],
    ["certainty", [10, 10, 0.7, 1]],
    ["more shots than anyone hits", [9e8, 1e9, 0.7, 0.8]],
    ["a number that is none", [Number.NaN, 10, 0.7, 0.8]],
  ] as const)("%s: nothing is decided", (_, [hits, n, share, confidence]) => {
    expect(shareVerdict(hits, n, share, confidence)).toBe("undecided");
    expect(shareVerdict(hits, n, share, confidence, "at most")).toBe("undecided");
  });
});

describe("the counts that decide", () => {
  test("the reference table", () => {
    const columns = ["n", "share", "confidence", "fewest_hits_met", "most_hits_missed"] as const;
    for (const row of oracleRows("statistics/proportion_critical_counts.csv", columns)) {
      const counts = criticalCounts(numberIn(row.n), numberIn(row.share), numberIn(row.confidence));
      const met = optionalNumberIn(row.fewest_hits_met);
      const missed = optionalNumberIn(row.most_hits_missed);
      expect(counts, JSON.stringify(row)).toEqual({ met, missed });
    }
  });

  test("at most exchanges the ends", () => {
    expect(criticalCounts(10, 0.8, 0.9)).toEqual({ met: undefined, missed: 5 });
    expect(criticalCounts(10, 0.8, 0.9, "at most")).toEqual({ met: 5, missed: undefined });
  });
});

describe("the fewest shots", () => {
  test("the reference table", () => {
    const columns = [
      "share",
      "confidence",
      "fewest_shots_met_possible",
      "fewest_shots_missed_possible",
    ] as const;
    for (const row of oracleRows("statistics/proportion_fewest_shots.csv", columns)) {
      expect(fewestShots(numberIn(row.share), numberIn(row.confidence)), JSON.stringify(row)).toEqual({
        met: numberIn(row.fewest_shots_met_possible),
        missed: numberIn(row.fewest_shots_missed_possible),
      });
    }
  });

  test("at most exchanges the ends", () => {
    expect(fewestShots(0.7, 0.95, "at most")).toEqual({ met: 3, missed: 9 });
  });

  test("no number of shots shows 100 %, but one miss refutes it", () => {
    expect(fewestShots(1, 0.8)).toEqual({ met: undefined, missed: 1 });
  });

  test("they agree with the counts that decide", () => {
    for (const [share, confidence] of [
      [0.7, 0.8],
      [0.9, 0.9],
      [0.35, 0.95],
    ] as const) {
      const { met = 0, missed = 0 } = fewestShots(share, confidence);
      expect(criticalCounts(met, share, confidence).met).toBe(met);
      expect(criticalCounts(met - 1, share, confidence).met).toBeUndefined();
      expect(criticalCounts(missed, share, confidence).missed).toBe(0);
      expect(criticalCounts(missed - 1, share, confidence).missed).toBeUndefined();
    }
  });
});

describe("limits to show", () => {
  test("the reference table", () => {
    const columns = [
      "n",
      "x",
      "one_sided_confidence",
      "clopper_pearson_lower",
      "clopper_pearson_upper",
    ] as const;
    for (const row of oracleRows("statistics/proportion_intervals.csv", columns)) {
      const limits = shareLimits(numberIn(row.x), numberIn(row.n), numberIn(row.one_sided_confidence));
      expectNear(limits?.low, numberIn(row.clopper_pearson_lower), { relative: 1e-10 }, row);
      expectNear(limits?.high, numberIn(row.clopper_pearson_upper), { relative: 1e-10 }, row);
    }
  });

  test("none without shots, for impossible counts or an impossible confidence", () => {
    expect(shareLimits(0, 0, 0.8)).toBeUndefined();
    expect(shareLimits(11, 10, 0.8)).toBeUndefined();
    expect(shareLimits(-1, 10, 0.8)).toBeUndefined();
    expect(shareLimits(5, 10, 0.2)).toBeUndefined();
    expect(shareLimits(0, 10, 1)).toBeUndefined();
  });
});

describe("shots that would decide if the player goes on as observed", () => {
  test("the reference table", () => {
    const columns = [
      "case",
      "n_so_far_or_baseline_n",
      "gap_or_share",
      "hits_so_far",
      "confidence",
      "total_shots_or_new_block_size",
    ] as const;
    const rows = oracleRows("statistics/shots_to_decide.csv", columns, (row) => row.case === "share");
    for (const row of rows) {
      const total = row.total_shots_or_new_block_size;
      const [hits, n] = [numberIn(row.hits_so_far), numberIn(row.n_so_far_or_baseline_n)];
      const actual = shareShotsToDecide(hits, n, numberIn(row.gap_or_share), numberIn(row.confidence));
      expect(actual, JSON.stringify(row)).toBe(total === "no gap" ? undefined : numberIn(total));
    }
  });

  test("none beyond the cap, and none without shots", () => {
    expect(shareShotsToDecide(9, 10, 0.7, 0.9)).toBe(16);
    expect(shareShotsToDecide(9, 10, 0.7, 0.9, 15)).toBeUndefined();
    expect(shareShotsToDecide(0, 0, 0.7, 0.9)).toBeUndefined();
  });
});

describe("what must hold for all shares", () => {
  const shots = fc.integer({ min: 1, max: 40 });
  const share = fc.integer({ min: 1, max: 99 }).map((percent) => percent / 100);
  const confidence = fc.constantFrom(0.5, 0.8, 0.9, 0.95, 0.99);
  const hitsOf = (n: number) => fc.integer({ min: 0, max: n });
  const countAndShots = shots.chain((n) => fc.tuple(hitsOf(n), fc.constant(n)));
  const order = ["missed", "undecided", "met"];

  test("one more hit never makes a verdict worse", () => {
    fc.assert(
      fc.property(countAndShots, share, confidence, ([hits, n], p, c) => {
        const better = order.indexOf(shareVerdict(Math.min(n, hits + 1), n, p, c));
        expect(better).toBeGreaterThanOrEqual(order.indexOf(shareVerdict(hits, n, p, c)));
      }),
    );
  });

  test("asking for less never makes a verdict worse", () => {
    fc.assert(
      fc.property(countAndShots, share, share, confidence, ([hits, n], p, q, c) => {
        const less = order.indexOf(shareVerdict(hits, n, Math.min(p, q), c));
        expect(less).toBeGreaterThanOrEqual(order.indexOf(shareVerdict(hits, n, Math.max(p, q), c)));
      }),
    );
  });

  test("at least a share of hits is at most the rest of misses", () => {
    fc.assert(
      fc.property(countAndShots, share, confidence, ([hits, n], p, c) => {
        expect(shareVerdict(n - hits, n, 1 - p, c, "at most")).toBe(shareVerdict(hits, n, p, c));
      }),
    );
  });

  test("picture and verdict agree: met exactly when the lower limit reaches the share", () => {
    fc.assert(
      fc.property(countAndShots, share, confidence, ([hits, n], p, c) => {
        const limits = shareLimits(hits, n, c);
        if (limits === undefined) throw new Error("There are shots, so there are limits.");
        const verdict = shareVerdict(hits, n, p, c);
        if (limits.low > p + 1e-9) expect(verdict).toBe("met");
        else if (limits.high < p - 1e-9) expect(verdict).toBe("missed");
        else if (limits.low < p - 1e-9 && limits.high > p + 1e-9) expect(verdict).toBe("undecided");
      }),
    );
  });

  test("a player exactly at the share is called met, or missed, no more often than promised", () => {
    fc.assert(
      fc.property(shots, share, confidence, (n, p, c) => {
        const { met, missed } = criticalCounts(n, p, c);
        if (met !== undefined) expect(binomialAtLeast(met, n, p)).toBeLessThanOrEqual(1 - c + 1e-12);
        if (missed !== undefined) expect(binomialAtMost(missed, n, p)).toBeLessThanOrEqual(1 - c + 1e-12);
      }),
    );
  });
});
