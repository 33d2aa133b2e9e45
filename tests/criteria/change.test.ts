/** Changes of a number of the shots hit against what there was before. */
import { describe, expect, test } from "vitest";
import { evaluate, metricsReadBy, sentence } from "../../language/criteria/criteria.ts";
import { earlier, HERE, judge, now, YARD } from "./changes.ts";
import { measured, otherShots, usual } from "./measured-shots.ts";
import { criterion } from "./words.ts";

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

  test("numbers that are less than a step apart are told as finely as the difference", () => {
    expect(judge(`carry loses no more than 4 yd against ${HERE}`, [149.4], [149.8]).observed).toBe(
      `average 149.4 yd over 1 shot; average 149.8 yd over 1 shot in ${HERE}; 0.4 yd less`,
    );
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

  test("of medians it is their difference, not the shift that ability is judged by", () => {
    const [now, was] = [
      [150, 160, 190],
      [140, 150, 151],
    ];
    expect(judge(`median carry gains 10 yd against ${HERE}`, now, was)).toMatchObject({
      verdict: "met",
      brief: "10 yd more",
    });
    // The middle of the nine differences -1, 0, 9, 10, 10, 20, 39, 40, 50
    expect(judge(`median carry gains 9 yd against ${HERE} at 60 % confidence`, now, was).brief).toBe(
      "10 yd more",
    );
    expect(judge(`median carry gains 10 yd against ${HERE}`, [150, 160, 165], [140, 156, 157]).brief).toBe(
      "4 yd more",
    );
    // -7, -6, 3, 4, 8, 9, 10, 20, 25
    expect(
      judge(`median carry gains 10 yd against ${HERE} at 60 % confidence`, [150, 160, 165], [140, 156, 157])
        .brief,
    ).toBe("8 yd more");
  });

  test("numbers that are not the same are not shown as no change", () => {
    expect(judge(`carry gains 5 yd against ${HERE}`, [150.4], [150.2])).toMatchObject({
      observed: `average 150.4 yd over 1 shot; average 150.2 yd over 1 shot in ${HERE}; 0.2 yd more`,
    });
  });

  test("the shift that is judged need not be the difference of the medians, and says what it is", () => {
    const observed = judge(
      `median carry gains 9 yd against ${HERE} at 60 % confidence`,
      [150, 160, 165],
      [140, 156, 157],
    ).observed;
    expect(observed).toBe(
      `median 160 yd over 3 shots; median 156 yd over 3 shots in ${HERE}; 8 yd more, the middle of all differences`,
    );
  });

  test("of two as far to either side the better is the best, and the worse the worst", () => {
    const judged = (text: string, offline: readonly number[]) =>
      evaluate(criterion("change", text), now({ offline }, earlier({ offline: [-5] })));
    expect(judged(`best offline stays within 2 yd against ${HERE}`, [-4, 4])).toMatchObject({
      verdict: "met",
      brief: "1 yd farther right",
    });
    expect(judged(`worst offline stays within 2 yd against ${HERE}`, [-4, 4])).toMatchObject({
      verdict: "missed",
      brief: "9 yd farther right",
    });
  });

  test("exactly as much as claimed counts, in spite of binary fractions", () => {
    const shots = now({ "smash-factor": [0.3] }, earlier({ "smash-factor": [0.1] }));
    expect(evaluate(criterion("change", `smash-factor gains 0.2 against ${HERE}`), shots).verdict).toBe(
      "met",
    );
  });

  test("an amount in % is a share of what it was, but of what is read in % itself", () => {
    const smash = now({ "smash-factor": [1.4] }, earlier({ "smash-factor": [1.3] }));
    expect(evaluate(criterion("change", `smash-factor gains 10 % against ${HERE}`), smash)).toMatchObject({
      verdict: "missed",
      required: `average smash-factor rises by at least 10 % of what it was against ${HERE}`,
      brief: "8 % more",
    });
    const effort = now({ effort: [70] }, earlier({ effort: [60] }));
    expect(evaluate(criterion("change", `effort gains 10 % against ${HERE}`), effort)).toMatchObject({
      verdict: "met",
      required: `average effort rises by at least 10 % against ${HERE}`,
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

    test("a share of what is below zero", () => {
      expect(judge(`carry gains 10 % against ${HERE}`, [-4], [-5])).toMatchObject({
        verdict: "undecided",
        brief: "",
        settles: "an amount instead of a share: what it was is not above zero",
      });
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

  test("but not where it is not known with which club a shot was hit", () => {
    const gains = criterion("change", `carry gains 5 yd against ${HERE}`);
    const known = measured({ carry: [150, 150] }, { club: "7-iron" });
    const partly = { ...known, clubs: ["7-iron", null] };
    const unknown = { ...known, clubs: [null, null] };
    for (const [after, before] of [
      [known, partly],
      [partly, known],
      [known, unknown],
      [unknown, known],
    ] as const) {
      const shots = { ...after, against: () => otherShots(HERE, before) };
      expect(evaluate(gains, shots).cautions).toEqual([]);
    }
  });

  test("that spreads of few shots are rough is said of the shots hit, and of ability what its limits rely on", () => {
    const shots = now({ carry: [149, 151, 150] }, earlier({ carry: [145, 155, 150] }));
    const cautions = (confidence: string) =>
      evaluate(
        criterion("change", `spread of carry falls by at least 1 yd against ${HERE}${confidence}`),
        shots,
      ).cautions;
    expect(cautions("")).toEqual([
      "A spread over 3 shots is rough: luck alone often makes it a third smaller or larger.",
    ]);
    expect(cautions(" at 80 % confidence")).toEqual([
      "The limits rely on shots that are normally distributed, which cannot be seen in fewer than 5 shots.",
    ]);
  });

  test("its metric is read", () => {
    expect(metricsReadBy(criterion("change", `carry gains 5 yd against ${HERE}`))).toEqual(["carry"]);
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
      evaluate(criterion("change", `carry gains no more than 5 yd against ${HERE}`), shots([144, 146, 148]))
        .cautions,
    ).toEqual([]);
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
    'the best carry (the largest value, or where there are sides the shot nearest to zero) is within 5 yd of what it was in session "Monday"',
  ],
  [
    "90th percentile of carry gains 5 yd against usual",
    "the 90th percentile of carry (90 % of the shots are below it) is at least 5 yd more than usual",
  ],
  [
    "worst carry loses no more than 5 yd against usual",
    "the worst carry (the smallest value) is at most 5 yd less than usual",
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
