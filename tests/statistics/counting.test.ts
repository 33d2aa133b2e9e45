import { describe, expect, test } from "vitest";
import { countVerdict, type Outcome, runVerdict, tally } from "../../shared/statistics/counting.ts";
import type { Verdict } from "../../shared/statistics/verdict.ts";
import { numberIn, oracleRows } from "../support/oracle.ts";

/** "TFU" → hit, miss, unknown. */
function outcomes(pattern: string): Outcome[] {
  return [...pattern].map((letter) => ({ T: true, F: false })[letter]);
}

describe("counts", () => {
  test("the reference table", () => {
    const columns = [
      "shots_planned",
      "hits_needed",
      "pattern_T_F_U",
      "hits",
      "misses",
      "unknown",
      "still_to_come",
      "hits_still_needed",
      "verdict",
    ] as const;
    for (const row of oracleRows("statistics/three_valued_counts.csv", columns)) {
      const shots = tally(outcomes(row.pattern_T_F_U), numberIn(row.shots_planned));
      expect(shots, JSON.stringify(row)).toEqual({
        hits: numberIn(row.hits),
        misses: numberIn(row.misses),
        unknown: numberIn(row.unknown),
        toCome: numberIn(row.still_to_come),
      });
      const count = countVerdict(shots, numberIn(row.hits_needed));
      expect(count.verdict, JSON.stringify(row)).toBe(row.verdict);
      expect(count.stillNeeded, JSON.stringify(row)).toBe(numberIn(row.hits_still_needed));
    }
  });

  test("a live session: 4 of the next 6 are needed", () => {
    expect(countVerdict(tally(outcomes("TTFT"), 10), 7)).toEqual({
      verdict: "undecided",
      stillNeeded: 4,
      stillPossible: 6,
    });
  });

  test("at most 2 of 6: met when four misses are in, missed at the third hit", () => {
    const atMost2 = (pattern: string) => countVerdict(tally(outcomes(pattern), 6), 2, "at most").verdict;
    expect(atMost2("FFFF")).toBe("met");
    expect(atMost2("FFFT")).toBe("undecided");
    expect(atMost2("TUTFFF")).toBe("undecided");
    expect(atMost2("TTT")).toBe("missed");
    expect(atMost2("UU")).toBe("not-measured");
  });

  test("shots beyond the planned ones do not count", () => {
    expect(countVerdict(tally(outcomes("FFFTTTT"), 5), 3).verdict).toBe("missed");
  });
});

describe("runs", () => {
  test("the reference table", () => {
    const columns = ["shots_planned", "run_needed", "pattern_T_F_U", "verdict"] as const;
    for (const row of oracleRows("statistics/three_valued_streaks.csv", columns)) {
      const run = runVerdict(
        outcomes(row.pattern_T_F_U),
        numberIn(row.shots_planned),
        numberIn(row.run_needed),
      );
      expect(run.verdict, JSON.stringify(row)).toBe(row.verdict);
    }
  });

  test("a run under way says how many more in a row complete it", () => {
    expect(runVerdict(outcomes("FTT"), 10, 3)).toEqual({
      verdict: "undecided",
      longest: 2,
      longestPossible: 9,
      stillNeeded: 1,
    });
  });

  test("when only an unknown shot could complete the run, no coming hits are promised to", () => {
    expect(runVerdict(outcomes("TUTF"), 4, 3)).toMatchObject({
      verdict: "undecided",
      stillNeeded: undefined,
    });
    expect(runVerdict(outcomes("TTT"), 4, 3)).toMatchObject({ verdict: "met", stillNeeded: 0 });
  });

  test("nothing known is not measured", () => {
    expect(runVerdict([], 4, 3).verdict).toBe("not-measured");
    expect(runVerdict(outcomes("UU"), 4, 3).verdict).toBe("not-measured");
  });
});

/**
 * The meaning of three-valued logic, word for word: met (missed) when every way the unknown and the coming shots
 * can turn out meets (misses) the criterion.
 */
describe("every pattern of up to 5 shots, against all the ways it can turn out", () => {
  const planned = 5;
  const patterns = upTo(planned).filter((pattern) => /[TF]/.test(pattern));

  const countsOfHits = (ending: string) => [...ending].filter((letter) => letter === "T").length;
  const longestRun = (ending: string) => Math.max(...ending.split("F").map((run) => run.length));

  test.each([1, 2, 3, 5])("at least, at most and in a row: %s", (k) => {
    for (const pattern of patterns) {
      const all = endings(pattern.padEnd(planned, "U"));
      const shots = outcomes(pattern);
      const given = `${k}, ${pattern}`;
      const counted = tally(shots, planned);
      expect(countVerdict(counted, k).verdict, given).toBe(verdict(all, (end) => countsOfHits(end) >= k));
      expect(countVerdict(counted, k, "at most").verdict, given).toBe(
        verdict(all, (end) => countsOfHits(end) <= k),
      );
      expect(runVerdict(shots, planned, k).verdict, given).toBe(verdict(all, (end) => longestRun(end) >= k));
    }
  });

  function verdict(all: readonly string[], holds: (ending: string) => boolean): Verdict {
    if (all.every(holds)) return "met";
    return all.some(holds) ? "undecided" : "missed";
  }

  function endings(pattern: string): string[] {
    return pattern.includes("U")
      ? ["T", "F"].flatMap((end) => endings(pattern.replace("U", end)))
      : [pattern];
  }

  function upTo(length: number): string[] {
    if (length === 0) return [""];
    const shorter = upTo(length - 1);
    const longest = shorter.filter((pattern) => pattern.length === length - 1);
    return [...shorter, ...longest.flatMap((pattern) => ["T", "F", "U"].map((letter) => pattern + letter))];
  }
});
