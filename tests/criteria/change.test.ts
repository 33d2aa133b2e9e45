/** Changes of a number against what there was before. */
import { describe, expect, test } from "vitest";
import { evaluate, metricsReadBy, sentence } from "../../language/criteria/criteria.ts";
import type { Comparison } from "../../language/criteria/criterion.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { type MeasuredCircumstances, measured, otherShots, type Readings, usual } from "./measured-shots.ts";
import { criterion } from "./words.ts";

const HERE = '"Where we are"';
const YARD = 0.9144;

/** Shots now, and what they are held against; nothing is known of usual numbers. */
function now(readings: Readings, comparison: Comparison | string, more: MeasuredCircumstances = {}) {
  return measured(readings, {
    ...more,
    against: ({ kind }) => (kind === "usual" && isShots(comparison) ? "nothing is stated" : comparison),
  });
}

function isShots(comparison: Comparison | string): boolean {
  return typeof comparison !== "string" && comparison.kind === "shots";
}

/** Earlier shots in this session, or in the last one. */
function earlier(readings: Readings, more: MeasuredCircumstances & { isSameSession?: boolean } = {}) {
  return otherShots(HERE, measured(readings, more), more.isSameSession ?? true);
}

function judge(text: string, carry: readonly (number | null)[], was: readonly (number | null)[]) {
  return evaluate(criterion("change", text), now({ carry }, earlier({ carry: was })));
}

describe("of the shots hit", () => {
  test("the two numbers are compared", () => {
    expect(
      judge(`carry loses no more than 4 yd against ${HERE}`, [146, 148, 147], [150, 151, 149, 152]),
    ).toEqual({
      verdict: "met",
      required: `average carry falls by at most 4 yd against ${HERE}`,
      observed: `average 147.0 yd over 3 shots; average 150.5 yd over 4 shots in ${HERE}; 3.5 yd less`,
      brief: "3.5 yd less",
      value: expect.closeTo(-3.5 * YARD, 9),
      shotsUsed: 3,
      tally: null,
      interval: null,
      settles: null,
      deciding: [0, 1, 2],
      cautions: [],
      comparison: {
        against: HERE,
        before: expect.closeTo(150.5 * YARD, 9),
        after: expect.closeTo(147 * YARD, 9),
        smallestShown: null,
      },
    });
  });

  const was = [150, 150, 150];
  test.each([
    [`carry gains 5 yd against ${HERE}`, [155], "met", "5 yd more"],
    [`carry gains at least 5 yd against ${HERE}`, [154], "missed", "4 yd more"],
    [`carry gains at most 5 yd against ${HERE}`, [140], "met", "10 yd less"],
    [`carry rises by no more than 5 yd against ${HERE}`, [156], "missed", "6 yd more"],
    [`carry falls by at least 2 yd against ${HERE}`, [148], "met", "2 yd less"],
    [`carry falls by at least 2 yd against ${HERE}`, [149], "missed", "1 yd less"],
    [`carry loses no more than 4 yd against ${HERE}`, [160], "met", "10 yd more"],
    [`carry loses no more than 4 yd against ${HERE}`, [145], "missed", "5 yd less"],
    [`carry stays within 5 yd against ${HERE}`, [145], "met", "5 yd less"],
    [`carry stays within 5 yd against ${HERE}`, [156], "missed", "6 yd more"],
    [`carry stays within 5 yd against ${HERE}`, [150], "met", "no change"],
    [`carry gains at least 10 % against ${HERE}`, [165], "met", "10 % more"],
    [`carry loses no more than 2 % against ${HERE}`, [146], "missed", "3 % less"],
    [`carry stays within 2 % against ${HERE}`, [147], "met", "2 % less"],
    [`median carry gains 5 yd against ${HERE}`, [140, 156, 158], "met", "6 yd more"],
    [`best carry gains 5 yd against ${HERE}`, [140, 156], "met", "6 yd more"],
    [`worst carry loses no more than 5 yd against ${HERE}`, [140, 156], "missed", "10 yd less"],
    [`90th percentile of carry gains 5 yd against ${HERE}`, [150, 160], "met", "9 yd more"],
    [`middle 80 % of carry rises by at most 5 yd against ${HERE}`, [150, 160], "missed", "8 yd more"],
    [`spread of carry rises by at most 5 yd against ${HERE}`, [150, 158], "missed", "6 yd more"],
  ])("%s with %o", (text, readings, verdict, brief) => {
    expect(judge(text, readings, was)).toMatchObject({ verdict, brief });
  });

  test("exactly as much as claimed counts, in spite of binary fractions", () => {
    const shots = now({ "smash-factor": [0.3] }, earlier({ "smash-factor": [0.1] }));
    expect(evaluate(criterion("change", `smash-factor gains 0.2 against ${HERE}`), shots).verdict).toBe(
      "met",
    );
  });

  test("of a ratio an amount in % is no share of what it was", () => {
    const shots = now({ "smash-factor": [1.4] }, earlier({ "smash-factor": [1.3] }));
    expect(evaluate(criterion("change", `smash-factor gains 10 % against ${HERE}`), shots)).toMatchObject({
      verdict: "met",
      required: `average smash-factor rises by at least 10 % against ${HERE}`,
      brief: "10 % more",
    });
    expect(judge(`carry gains 10 % against ${HERE}`, [150], [140])).toMatchObject({
      required: `average carry rises by at least 10 % of what it was against ${HERE}`,
      brief: "7 % more",
    });
  });

  test("a change of a metric with sides has a direction, which follows the hand", () => {
    const moves = criterion("change", `club-path moves at least 2° in-to-out against ${HERE}`);
    const right = now({ "club-path": [0.5, 1.5] }, earlier({ "club-path": [-2, -1] }));
    expect(evaluate(moves, right)).toMatchObject({
      verdict: "met",
      observed: `average 1.0° in-to-out over 2 shots; average 1.5° out-to-in over 2 shots in ${HERE}; 2.5° farther in-to-out`,
    });
    const left = now({ "club-path": [-0.5, -1.5] }, earlier({ "club-path": [2, 1] }, { hand: "left" }), {
      hand: "left",
    });
    const { verdict, observed } = evaluate(moves, right);
    expect(evaluate(moves, left)).toMatchObject({ verdict, observed });
    expect(
      evaluate(criterion("change", `club-path moves at most 2° right against ${HERE}`), right),
    ).toMatchObject({
      verdict: "missed",
      brief: "2.5° farther right",
    });
  });

  describe("what cannot be meant", () => {
    const path = now({ "club-path": [1] }, earlier({ "club-path": [2] }));
    test.each([
      [
        `club-path gains 2° against ${HERE}`,
        'which way it is to move, as in "moves at least 2° in-to-out": club-path goes two ways from zero',
      ],
      [
        `club-path stays within 10 % against ${HERE}`,
        "an amount of club-path instead of a share: it goes two ways from zero",
      ],
      [
        `spread of club-path moves at least 2° against ${HERE}`,
        '"rises" or "falls" instead of "moves": the spread of club-path has no sides',
      ],
    ])("%s", (text, settles) => {
      expect(evaluate(criterion("change", text), path)).toMatchObject({ verdict: "undecided", settles });
    });

    test("a share of nothing", () => {
      expect(
        judge(`spread of carry falls by at least 20 % against ${HERE}`, [150, 152], [150, 150]),
      ).toMatchObject({
        verdict: "undecided",
        settles: "an amount instead of a share: what it was is not above zero",
      });
    });
  });

  describe("what is missing", () => {
    const gains = criterion("change", `carry gains 5 yd against ${HERE}`);

    test("nothing to compare with", () => {
      expect(evaluate(gains, now({ carry: [150] }, "the plan has no such block"))).toMatchObject({
        verdict: "not-measured",
        observed: "average 150 yd over 1 shot",
        value: null,
        settles: "something to compare with: the plan has no such block",
        comparison: { against: HERE, before: null, after: expect.closeTo(150 * YARD, 9) },
      });
    });

    test("no reading now or before", () => {
      expect(judge(gains.text, [null, null], [150])).toMatchObject({
        verdict: "not-measured",
        settles: "readings of carry",
      });
      expect(judge(gains.text, [150], [null, null])).toMatchObject({
        verdict: "not-measured",
        observed: `average 150 yd over 1 shot; no reading of carry in 2 shots in ${HERE}`,
        settles: `readings of carry in ${HERE}`,
      });
    });

    test("too few readings to speak for all", () => {
      expect(judge(gains.text, [155, null], [150])).toMatchObject({
        verdict: "undecided",
        settles: "readings of carry for 1 more of the 2 shots: 1 is too few",
      });
      expect(judge(gains.text, [155], [150, 151, 152, null])).toMatchObject({
        verdict: "undecided",
        settles: `readings of carry for 1 more of the 4 shots: 3 are too few in ${HERE}`,
      });
      const best = `best carry gains 5 yd against ${HERE}`;
      expect(judge(best, [155, 150, 152, 153, null], [140]).verdict).toBe("undecided");
    });

    test("some readings missing: said of either side", () => {
      expect(judge(gains.text, [155, 155, 155, 155, null], [140, 140, 140, 140, 140, null]).cautions).toEqual(
        [
          "1 shot without a reading of carry is not in the average.",
          `1 shot without a reading of carry is not in the average of ${HERE}.`,
        ],
      );
    });

    test("shots to come", () => {
      const shots = now({ carry: [155, 156] }, earlier({ carry: [150] }, { asked: 4 }), { asked: 5 });
      expect(evaluate(gains, shots)).toMatchObject({
        verdict: "undecided",
        observed: `average 156 yd over 2 shots; 3 shots short of 5; average 150 yd over 1 shot; 3 shots short of 4 in ${HERE}; 6 yd more`,
        settles: "the 3 shots not hit yet",
        cautions: [`Of 4 shots in ${HERE} only 1 is there.`],
      });
    });

    test("a spread of one shot", () => {
      const spread = `spread of carry falls by at least 1 yd against ${HERE}`;
      expect(judge(spread, [150], [150, 152]).settles).toBe("a spread needs 2 shots or more");
      expect(judge(spread, [150, 152], [150]).settles).toBe(`a spread needs 2 shots or more in ${HERE}`);
    });
  });

  test("only shots as required count, on either side", () => {
    const shots = now({ carry: [155, 100] }, earlier({ carry: [150, 90] }, { admitted: "TF" }), {
      admitted: "TF",
    });
    expect(evaluate(criterion("change", `carry gains 5 yd against ${HERE}`), shots)).toMatchObject({
      verdict: "met",
      observed: `average 155 yd over 1 shot as required; average 150 yd over 1 shot as required in ${HERE}; 5 yd more`,
      cautions: [
        "1 shot did not meet what the block requires and is not in the average.",
        `1 shot did not meet what the block requires and is not in the average of ${HERE}.`,
      ],
    });
  });

  test("a change from one club to another is cautioned about", () => {
    const shots = now({ carry: [155] }, earlier({ carry: [150] }, { club: "8-iron" }), { club: "7-iron" });
    expect(evaluate(criterion("change", `carry gains 5 yd against ${HERE}`), shots).cautions).toEqual([
      `These shots were hit with 7-iron, those in ${HERE} with 8-iron: the clubs have a part in the change.`,
    ]);
  });

  test("its metric is read", () => {
    expect(metricsReadBy(criterion("change", `carry gains 5 yd against ${HERE}`))).toEqual(["carry"]);
  });
});

describe("against usual numbers", () => {
  test("of the shots hit", () => {
    const shots = now({ carry: [146, 148] }, usual("carry", 150));
    expect(evaluate(criterion("change", "carry loses no more than 4 yd against usual"), shots)).toMatchObject(
      {
        verdict: "met",
        observed: "average 147 yd over 2 shots; usual 150 yd; 3 yd less",
        cautions: [],
        comparison: { against: "usual", before: expect.closeTo(150 * YARD, 9) },
      },
    );
  });

  test("a usual spread, where one is stated", () => {
    const spread = criterion("change", "spread of carry falls by at least 20 % against usual");
    expect(evaluate(spread, now({ carry: [146, 148] }, usual("carry", 150, 6)))).toMatchObject({
      verdict: "met",
      observed: "spread 1 yd over 2 shots; usual 6 yd; 76 % less",
    });
    expect(evaluate(spread, now({ carry: [146, 148] }, usual("carry", 150)))).toMatchObject({
      verdict: "not-measured",
      settles: "the usual spread of carry, which is not stated",
    });
  });

  test("other numbers have no usual", () => {
    const best = criterion("change", "best carry gains 5 yd against usual");
    expect(evaluate(best, now({ carry: [146, 148] }, usual("carry", 150)))).toMatchObject({
      verdict: "not-measured",
      settles: "something to compare with: usual numbers have no best",
    });
  });

  const gains = criterion("change", "carry gains at least 1 yd against usual at 80 % confidence");
  const readings = { carry: [152, 154, 153, 155, 151] }; // average 153, spread 1.58

  test("as ability: one sample against the value alone, which is taken as exact", () => {
    // 3 yd more, less 0.941 · 1.58/√5 = 0.67
    expect(evaluate(gains, now(readings, usual("carry", 150)))).toMatchObject({
      verdict: "met",
      interval: {
        confidence: 0.8,
        method: "one-sided limits of Student's t",
        text: "2 yd to 4 yd more",
      },
      cautions: ["The usual average carry is taken as exact: how far it varies is not stated."],
      comparison: { smallestShown: expect.closeTo(0.665 * YARD, 3) },
    });
    expect(evaluate(gains, now(readings, usual("carry", 150, 6))).cautions).toEqual([
      "The usual average carry is taken as exact: of how many shots it is, is not stated.",
    ]);
    expect(
      evaluate(
        {
          ...gains,
          movement: { ...gains.movement, amount: { ...gains.movement.amount, value: 2.5 * YARD } },
        },
        now(readings, usual("carry", 150)),
      ),
    ).toMatchObject({
      verdict: "undecided",
      settles: "about 4 more shots if the player goes on as observed (estimate)",
    });
  });

  test("as ability: two samples where spread and count of the usual are known", () => {
    expect(evaluate(gains, now(readings, usual("carry", 150, 6, 60)))).toMatchObject({
      verdict: "met",
      interval: { method: "one-sided limits of Welch's t" },
      cautions: [],
    });
    expect(evaluate(gains, now(readings, usual("carry", 150, 6, 4)))).toMatchObject({ verdict: "undecided" });
  });

  test("as ability: medians and spreads", () => {
    const median = criterion("change", "median carry gains at least 1 yd against usual at 80 % confidence");
    expect(evaluate(median, now(readings, usual("carry", 150, 6, 60)))).toMatchObject({
      verdict: "met",
      interval: { text: "2 yd to 4 yd more" },
      cautions: ["The usual median carry is taken as exact."],
    });
    const spread = criterion(
      "change",
      "spread of carry falls by at least 20 % against usual at 80 % confidence",
    );
    expect(evaluate(spread, now(readings, usual("carry", 150, 6)))).toMatchObject({
      verdict: "met",
      interval: { method: "chi-square limits, for normally distributed shots" },
    });
    expect(evaluate(spread, now(readings, usual("carry", 150, 6, 60)))).toMatchObject({
      verdict: "met",
      interval: { method: "F limits of the ratio, for normally distributed shots" },
    });
  });
});

describe("as ability", () => {
  test("averages: the reference table", () => {
    const columns = [
      "baseline",
      "now",
      "confidence",
      "lower_each_side_C",
      "upper_each_side_C",
      "gain_at_least",
      "verdict",
    ] as const;
    for (const row of oracleRows("statistics/welch.csv", columns)) {
      const gain = numberIn(row.gain_at_least);
      const movement = gain < 0 ? `loses at most ${-gain} yd` : `gains ${gain} yd`;
      const gains = criterion("change", `carry ${movement} against ${HERE}`);
      const shots = now({ carry: numbersIn(row.now) }, earlier({ carry: numbersIn(row.baseline) }));
      const { verdict, interval } = evaluate({ ...gains, confidence: numberIn(row.confidence) }, shots);
      expect(verdict, JSON.stringify(row)).toBe(row.verdict);
      expectLimits(interval, row);
    }
  });

  test("medians: the reference table of the shift by ranks", () => {
    const columns = [
      "baseline",
      "now",
      "confidence",
      "lower_each_side_C",
      "upper_each_side_C",
      "gain_at_least",
      "verdict",
      "shift_now_minus_baseline",
    ] as const;
    for (const row of oracleRows(
      "statistics/hodges_lehmann_shift.csv",
      columns,
      (row) => row.lower_each_side_C !== "",
    )) {
      const gains = criterion("change", `median carry gains ${row.gain_at_least} yd against ${HERE}`);
      const shots = now({ carry: numbersIn(row.now) }, earlier({ carry: numbersIn(row.baseline) }));
      const { verdict, interval, value } = evaluate(
        { ...gains, confidence: numberIn(row.confidence) },
        shots,
      );
      expect(verdict, JSON.stringify(row)).toBe(row.verdict);
      expectNear(
        (value ?? Number.NaN) / YARD,
        numberIn(row.shift_now_minus_baseline),
        { absolute: 1e-9 },
        row,
      );
      expectLimits(interval, row);
    }
  });

  test("spreads in %: the reference table of the ratio", () => {
    const columns = [
      "baseline",
      "now",
      "confidence",
      "lower_each_side_C",
      "upper_each_side_C",
      "direction",
    ] as const;
    for (const row of oracleRows("statistics/spread_ratio.csv", columns)) {
      const shots = now({ carry: numbersIn(row.now) }, earlier({ carry: numbersIn(row.baseline) }));
      const at = (movement: string) =>
        evaluate(
          {
            ...criterion("change", `spread of carry ${movement} against ${HERE}`),
            confidence: numberIn(row.confidence),
          },
          shots,
        );
      expect(at("rises by at least 0 %").verdict === "met").toBe(row.direction === "rose");
      expect(at("falls by at least 0 %").verdict === "met").toBe(row.direction === "fell");
      const { interval } = at("rises by at least 0 %");
      expectNear(1 + (interval?.low ?? Number.NaN), numberIn(row.lower_each_side_C), { relative: 1e-9 }, row);
      expectNear(
        1 + (interval?.high ?? Number.NaN),
        numberIn(row.upper_each_side_C),
        { relative: 1e-9 },
        row,
      );
    }
  });

  describe("averages: how many new shots would do, or that the baseline is too short", () => {
    const columns = [
      "case",
      "n_so_far_or_baseline_n",
      "gap_or_share",
      "sd_or_baseline_sd",
      "sd_now",
      "confidence",
      "total_shots_or_new_block_size",
    ] as const;
    const rows = oracleRows("statistics/shots_to_decide.csv", columns, (row) => row.case.startsWith("Welch"));

    test.each(rows)("a gap of $gap_or_share over $n_so_far_or_baseline_n shots at $confidence", (row) => {
      const old = withSpread(numberIn(row.sd_or_baseline_sd), numberIn(row.n_so_far_or_baseline_n));
      const fresh = withSpread(numberIn(row.sd_now), 2).map(
        (value) => value + 20 + numberIn(row.gap_or_share),
      );
      const gains = criterion("change", `carry gains 20 yd against ${HERE}`);
      const { settles } = evaluate(
        { ...gains, confidence: numberIn(row.confidence) },
        now({ carry: fresh }, earlier({ carry: old })),
      );
      const total = row.total_shots_or_new_block_size;
      expect(settles).toBe(
        total.startsWith("never")
          ? `a longer baseline: with its ${old.length} shots no number of new shots can decide`
          : `about ${numberIn(total) - 2} more shots if the player goes on as observed (estimate)`,
      );
    });
  });

  const steady = [150, 152, 148, 151, 149, 150, 153, 147];

  test("averages, with all that belongs to the evidence", () => {
    const loses = `carry loses no more than 4 yd against ${HERE} at 80 % confidence`;
    expect(
      judge(
        loses,
        steady.map((value) => value - 2),
        steady,
      ),
    ).toMatchObject({
      verdict: "met",
      required: `in the long run, average carry falls by at most 4 yd against ${HERE}, at 80 % confidence`,
      observed: `average 148 yd over 8 shots; average 150 yd over 8 shots in ${HERE}; 2 yd less`,
      interval: {
        confidence: 0.8,
        method: "one-sided limits of Welch's t",
        text: "1 yd to 3 yd less",
      },
      // t(0.8; 14) = 0.868 times 2/√4
      comparison: { smallestShown: expect.closeTo(0.868 * YARD, 3) },
    });
  });

  test("averages in %: the limits of the ratio are where Welch's t is just decided", () => {
    const at = (movement: string) =>
      judge(
        `carry ${movement} against ${HERE} at 80 % confidence`,
        steady.map((value) => value * 0.96),
        steady,
      );
    const { interval } = at("falls by at least 2 %");
    const [low, high] = [interval?.low ?? Number.NaN, interval?.high ?? Number.NaN];
    expect(interval?.text).toBe("3 % to 5 % less");
    const percentOf = (share: number, inwards: number) => `${-100 * share + inwards} %`;
    expect(at(`falls by at least ${percentOf(high, -0.001)}`).verdict).toBe("met");
    expect(at(`falls by at least ${percentOf(high, 0.001)}`).verdict).toBe("undecided");
    expect(at(`falls by at most ${percentOf(low, 0.001)}`).verdict).toBe("met");
    expect(at(`falls by at most ${percentOf(low, -0.001)}`).verdict).toBe("undecided");
    expect(at("stays within 2 %").verdict).toBe("missed");
    expect(at("stays within 5 %").verdict).toBe("met");
    // The same claim, said in yards of a baseline that does not vary: 2 % of 150 yd are 3 yd.
    const exact = steady.map(() => 150);
    const inYards = judge(
      `carry falls by at least 3 yd against ${HERE} at 80 % confidence`,
      steady,
      exact,
    ).interval;
    const inPercent = judge(
      `carry falls by at least 2 % against ${HERE} at 80 % confidence`,
      steady,
      exact,
    ).interval;
    expectNear(
      150 * YARD * (inPercent?.high ?? Number.NaN),
      inYards?.high ?? Number.NaN,
      { absolute: 1e-9 },
      {},
    );
  });

  test("averages in % of a baseline that may be zero", () => {
    const gains = `carry gains 10 % against ${HERE} at 95 % confidence`;
    expect(judge(gains, [20, 22, 21], [1, 30, 2])).toMatchObject({
      verdict: "undecided",
      interval: { high: null, text: expect.stringMatching(/ on one side, no limit on the other$/) },
    });
  });

  test("spreads in a unit: both chi-square limits at half the error", () => {
    const wild = steady.map((value) => 150 + 6 * (value - 150));
    const falls = `spread of carry falls by at least 2 yd against ${HERE} at 80 % confidence`;
    expect(judge(falls, steady, wild)).toMatchObject({
      verdict: "met",
      interval: {
        method: "the chi-square limits of both spreads, for normally distributed shots (Bonferroni)",
      },
    });
    const livelier = steady.map((value) => 150 + 2 * (value - 150));
    expect(judge(falls, steady, livelier).verdict).toBe("undecided");
    expect(judge(falls, steady, steady).verdict).toBe("missed");
  });

  test("a short baseline of a spread", () => {
    const falls = `spread of carry falls by at least 20 % against ${HERE} at 95 % confidence`;
    expect(judge(falls, steady.slice(0, 4), [147.2, 150, 152.8]).settles).toBe(
      "a longer baseline: with its 3 shots no number of new shots can decide",
    );
  });

  test("too close to call is no fault of the baseline", () => {
    const gains = `carry gains 2 yd against ${HERE} at 80 % confidence`;
    expect(
      judge(
        gains,
        steady.map((value) => value + 2),
        steady,
      ).settles,
    ).toBe(
      "too close to call: not even 1,000 shots in all would decide it if the player goes on as observed (estimate)",
    );
  });

  test("limits on both sides of no change, the nearer first", () => {
    const gains = (by: number) =>
      judge(
        `carry gains 2 yd against ${HERE} at 80 % confidence`,
        steady.map((value) => value + by),
        steady,
      ).interval?.text;
    expect(gains(0)).toBe("1 yd less to 1 yd more");
    expect(gains(0.3)).toBe("0.6 yd less to 1.2 yd more");
    expect(gains(0.6)).toBe("no change to 1 yd more");
  });

  test("a range is missed by limits of half the error only, and those are shown", () => {
    const stays = `carry stays within 1 yd against ${HERE} at 80 % confidence`;
    expect(
      judge(
        stays,
        steady.map((value) => value + 3),
        steady,
      ),
    ).toMatchObject({
      verdict: "missed",
      interval: { confidence: 0.9 },
    });
  });

  test("too few shots", () => {
    const gains = `carry gains 2 yd against ${HERE} at 90 % confidence`;
    expect(judge(gains, [155], steady).settles).toBe(
      "2 shots or more with a reading: 1 is too few to show it",
    );
    expect(judge(gains, steady, [150]).settles).toBe(`2 shots or more in ${HERE}`);
    const median = `median carry gains 2 yd against ${HERE} at 95 % confidence`;
    expect(judge(median, [155], [150, 151, 152]).settles).toBe(
      "3 shots or more with a reading: 1 is too few to show it",
    );
  });

  test("only at the planned number of shots", () => {
    const gains = criterion("change", `carry gains 2 yd against ${HERE} at 90 % confidence`);
    expect(
      evaluate(gains, now({ carry: [155, 156, 157] }, earlier({ carry: steady }), { asked: 4 })),
    ).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: "the shot not hit yet: ability is judged on all 4",
    });
  });

  test.each([
    ["best carry gains 5 yd", "change of the best"],
    ["90th percentile of carry gains 5 yd", "change of the 90th percentile"],
    ["middle 80 % of carry falls by at least 5 yd", "change of the middle 80 %"],
    ["median carry gains 5 %", "change of the median in %"],
  ])("%s has no reading as ability", (text, what) => {
    expect(judge(`${text} against ${HERE} at 80 % confidence`, [150, 155, 160], steady)).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: `a sentence without the confidence: the ${what} is judged on the shots hit only`,
    });
  });
});

describe("readings that may be off", () => {
  const gains = criterion("change", `carry gains at least 2 yd against ${HERE}`);
  const uncertainty = { carry: { random: 1, systematic: 3 } };
  const judgeIn = (isSameSession: boolean, confidence: number | null = null, gain = 3) =>
    evaluate(
      { ...gains, confidence },
      now(
        { carry: [150 + gain, 151 + gain, 149 + gain, 150 + gain] },
        earlier({ carry: [150, 151, 149, 150] }, { uncertainty, isSameSession }),
        { uncertainty },
      ),
    );

  test("what they share within a session cancels", () => {
    // √(1/4 + 1/4) = 0.71, times 1.645 is 1.16; with what they do not share √(0.5 + 18) = 4.3
    expect(judgeIn(true, null, 3.2)).toMatchObject({
      verdict: "met",
      required: `average carry rises by at least 2 yd against ${HERE}, at 95 % probability`,
      interval: {
        confidence: 0.95,
        method: "what the readings may be off by",
        text: "2.04 yd to 4.36 yd more",
      },
    });
    expect(judgeIn(true)).toMatchObject({
      verdict: "undecided",
      observed: `average 153 yd over 4 shots; average 150 yd over 4 shots in ${HERE}; 3 yd more; probability that it is so: 92 %`,
      settles: "surer readings: the change lies too near a limit for the instrument to tell",
    });
    expect(judgeIn(false, null, 8).verdict).toBe("undecided");
  });

  test("between sessions no number of shots makes up for it", () => {
    expect(judgeIn(true, 0.9).verdict).toBe("met");
    expect(judgeIn(false, 0.9)).toMatchObject({
      verdict: "undecided",
      interval: { method: "one-sided limits of Welch's t, with what the readings of both may be off by" },
      settles:
        "no number of shots decides it: what the readings of either may be off by together is more than the gap",
    });
  });

  test("spreads are without what readings scatter by themselves", () => {
    const spread = criterion("change", `spread of carry falls by at least 1 yd against ${HERE}`);
    const shots = now({ carry: [149, 151] }, earlier({ carry: [147, 153] }, { uncertainty }), {
      uncertainty,
    });
    const hit = evaluate(spread, shots);
    // √(18 − 1) − √(2 − 1)
    expect(hit.value).toBeCloseTo((1 - Math.sqrt(17)) * YARD, 9);
    expect(hit.cautions).toContain(
      "What the instrument scatters by itself, from shot to shot, is taken off the spreads.",
    );
    for (const amount of ["1 yd", "20 %"]) {
      const claim = criterion(
        "change",
        `spread of carry falls by at least ${amount} against ${HERE} at 80 % confidence`,
      );
      expect(evaluate(claim, shots)).toMatchObject({
        verdict: "undecided",
        interval: {
          method: "the chi-square limits of both spreads, for normally distributed shots (Bonferroni)",
        },
      });
    }
  });

  test("of medians and others it is a caution", () => {
    const median = criterion("change", `median carry gains 1 yd against ${HERE}`);
    const shots = now({ carry: [152] }, earlier({ carry: [150] }, { uncertainty }), { uncertainty });
    expect(evaluate(median, shots).cautions).toEqual([
      "How far readings of carry may be off is not in the change of the median: it is judged as if they were exact.",
    ]);
  });
});

describe("a baseline that was unusually bad", () => {
  const shots = (was: readonly number[], hand: "right" | "left" = "right") => {
    const baseline = earlier({ carry: was, "club-path": was }, { hand });
    const usualNumber = (metric: string) =>
      usual(metric, metric === "carry" ? 150 : hand === "left" ? -5 : 5);
    return measured(
      { carry: [155], "club-path": [hand === "left" ? -9 : 9] },
      { hand, against: ({ kind }, metric) => (kind === "usual" ? usualNumber(metric) : baseline) },
    );
  };
  const gains = criterion("change", `carry gains 5 yd against ${HERE}`);
  const caution = `The average of 146 yd in ${HERE} is unusually bad, the usual is 150 yd: after such a baseline some gain comes without any change.`;

  test("is cautioned about where a gain is claimed", () => {
    expect(evaluate(gains, shots([144, 146, 148])).cautions).toEqual([caution]);
    expect(evaluate(gains, shots([140, 146, 159])).cautions).toEqual([]); // within its own error
    expect(evaluate(gains, shots([152, 154, 156])).cautions).toEqual([]);
    expect(
      evaluate(criterion("change", `carry falls by 5 yd against ${HERE}`), shots([144, 146, 148])).cautions,
    ).toEqual([]);
    expect(
      evaluate(criterion("change", `carry stays within 5 yd against ${HERE}`), shots([144, 146, 148]))
        .cautions,
    ).toEqual([]);
  });

  test("on the side that is bad for either hand", () => {
    const moves = criterion("change", `club-path moves at least 2° in-to-out against ${HERE}`);
    const [right] = evaluate(moves, shots([1, 2, 3])).cautions;
    expect(right).toMatch(/^The average of 2\.0° in-to-out/);
    expect(evaluate(moves, shots([-1, -2, -3], "left")).cautions).toEqual([right]);
  });
});

test.each([
  [`carry loses no more than 4 yd against ${HERE}`, `the average carry is at most 4 yd less than in ${HERE}`],
  [
    "spread of offline falls by at least 20 % against the last session",
    "the spread of offline (standard deviation) is at least 20 % less than in the last session",
  ],
  ["carry gains 5 yd against usual", "the average carry is at least 5 yd more than usual"],
  ["median carry stays within 5 yd against usual", "the median carry is within 5 yd of the usual one"],
  [
    'best carry stays within 5 yd against session "Monday"',
    'the best carry is within 5 yd of what it was in session "Monday"',
  ],
  [
    "club-path moves at least 2° in-to-out against usual",
    "the average club-path is at least 2° farther in-to-out than usual",
  ],
])("in a sentence: %s", (text, sense) => {
  expect(sentence(criterion("change", text))).toBe(`Over the block's shots, ${sense}.`);
  expect(sentence(criterion("change", text), true)).toBe(
    `Over the block's shots that are as required, ${sense}.`,
  );
  expect(sentence(criterion("change", `${text} at 80 % confidence`))).toBe(
    `In the long run, the player's ${sense.replace(/^the /, "")}, shown at 80 % confidence.`,
  );
});

function expectLimits(
  interval: { low: number | null; high: number | null } | null,
  row: { lower_each_side_C: string; upper_each_side_C: string },
) {
  const inYards = (limit: number | null = null) => (limit === null ? undefined : limit / YARD);
  expectNear(inYards(interval?.low), numberIn(row.lower_each_side_C), { absolute: 1e-8 }, row);
  expectNear(inYards(interval?.high), numberIn(row.upper_each_side_C), { absolute: 1e-8 }, row);
}

/** Values about zero with this standard deviation. */
function withSpread(spread: number, n: number): number[] {
  const steps = Array.from({ length: n }, (_, index) => index - (n - 1) / 2);
  const squares = steps.reduce((sum, step) => sum + step * step, 0);
  return steps.map((step) => (spread * step) / Math.sqrt(squares / (n - 1)));
}
