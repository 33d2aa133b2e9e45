/** The dispersion ellipse of two metrics. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evaluate, metricsReadBy, sentence } from "../../language/criteria/criteria.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { type MeasuredCircumstances, measured } from "./measured-shots.ts";
import { bounds, criterion } from "./words.ts";

const area = criterion("ellipse", "area of the 80 % ellipse of offline and carry at most 250 yd²");
const major = criterion("ellipse", "major axis of the 80 % ellipse of offline and carry at most 25 yd");

const YARD = 0.9144;

/** Twelve shots about 2 yd right of the target, at 150 yd. */
const OFFLINE = [-3, 7, 1, 4, -1, 5, 2, 0, 6, 3, -2, 2];
const CARRY = [148, 151, 153, 147, 150, 152, 146, 155, 149, 150, 151, 148];

function landed(
  offline: readonly (number | null)[],
  carry: readonly (number | null)[],
  more: MeasuredCircumstances = {},
) {
  return measured({ offline, carry }, more);
}

describe("of the shots hit", () => {
  test("the reference table", () => {
    const columns = [
      "x_across",
      "y_along",
      "content",
      "semi_axis_major",
      "semi_axis_minor",
      "area_content",
    ] as const;
    for (const row of oracleRows("statistics/ellipse.csv", columns)) {
      const shots = landed(numbersIn(row.x_across), numbersIn(row.y_along));
      const size = (measure: (typeof area)["measure"]) =>
        evaluate({ ...area, measure, share: numberIn(row.content) }, shots).value ?? undefined;
      const relative = 1e-9;
      expectNear(size("area"), numberIn(row.area_content) * YARD * YARD, { relative }, row);
      expectNear(size("major axis"), 2 * numberIn(row.semi_axis_major) * YARD, { relative }, row);
      expectNear(size("minor axis"), 2 * numberIn(row.semi_axis_minor) * YARD, { relative }, row);
    }
  });

  test("an area, and which ellipse it is that of", () => {
    expect(evaluate(area, landed(OFFLINE, CARRY))).toEqual({
      verdict: "met",
      required: "area of the shots' own 80 % ellipse of offline and carry at most 250 yd²",
      observed: "area 83 yd² over 12 shots",
      brief: "83 yd²",
      value: expect.closeTo(82.76 * YARD ** 2, 2),
      shotsUsed: 12,
      tally: null,
      interval: null,
      settles: null,
      deciding: OFFLINE.map((_, index) => index),
      cautions: [
        "This is the ellipse of these 12 shots, and of few shots it is too small: one that holds the next shot with a probability of 80 % has 1.4 times the area.",
      ],
    });
  });

  test("an axis from end to end", () => {
    expect(evaluate(major, landed(OFFLINE, CARRY))).toMatchObject({
      verdict: "met",
      observed: "major axis 11 yd over 12 shots",
    });
    const minor = criterion("ellipse", "minor axis of the 80 % ellipse of offline and carry at most 9 yd");
    expect(evaluate(minor, landed(OFFLINE, CARRY))).toMatchObject({
      verdict: "missed",
      observed: "minor axis 9.2 yd over 12 shots",
    });
  });

  test("fewer than three shots have none", () => {
    expect(evaluate(area, landed([1, 2], [150, 155]))).toMatchObject({
      verdict: "undecided",
      observed: "2 readings of offline and carry only",
      value: null,
      settles: "an ellipse needs 3 shots or more",
    });
  });

  test("shots on a line have no area, and it says so", () => {
    expect(evaluate(area, landed([1, 2, 3, 4], [150, 152, 154, 156]))).toMatchObject({
      verdict: "met",
      brief: "0 yd²",
      cautions: [
        "All shots lie on a line, so that the ellipse has no area: the readings are probably coarser than the shots differ.",
      ],
    });
  });

  test("an axis of two kinds of amounts has no length", () => {
    const mixed = criterion("ellipse", "major axis of the 80 % ellipse of club-path and carry at most 5°");
    const shots = measured({ "club-path": [1, 2, 0, 3], carry: [150, 152, 149, 151] });
    expect(evaluate(mixed, shots)).toMatchObject({
      verdict: "undecided",
      settles: "two metrics of the same kind: club-path and carry have no length in common",
    });
  });

  test("a share that is none", () => {
    expect(evaluate({ ...area, share: 1 }, landed(OFFLINE, CARRY))).toMatchObject({
      verdict: "undecided",
      settles: "a share between 0 % and 100 %",
    });
  });

  test("a shot without one of the readings is left out, as long as most have both", () => {
    expect(evaluate(area, landed([...OFFLINE, null], [...CARRY, 150]))).toMatchObject({
      verdict: "met",
      shotsUsed: 12,
      cautions: ["1 shot without readings of offline and carry is not in the ellipse.", expect.any(String)],
    });
    expect(evaluate(area, landed([1, 2, 4, null, null], [150, 151, 152, 150, null]))).toMatchObject({
      verdict: "undecided",
      settles: "readings of offline and carry for 1 more of the 5 shots: 3 are too few",
    });
    expect(evaluate(area, landed([null, null], [150, 151]))).toMatchObject({
      verdict: "not-measured",
      observed: "no reading of offline and carry in 2 shots",
      settles: "readings of offline",
    });
  });

  test("it is settled when all shots are hit", () => {
    expect(evaluate(area, landed(OFFLINE, CARRY, { asked: 14 }))).toMatchObject({
      verdict: "undecided",
      observed: "area 83 yd² over 12 shots; 2 shots short of 14",
      settles: "the 2 shots not hit yet",
    });
  });

  test("what the readings may be off by is not in it", () => {
    const shots = landed(OFFLINE, CARRY, { uncertainty: { carry: { random: 1, systematic: 1 } } });
    expect(evaluate(area, shots).cautions).toContain(
      "How far readings of carry may be off is not in the ellipse: it is judged as if they were exact.",
    );
  });

  test("both metrics are read", () => {
    expect(metricsReadBy(area)).toEqual(["offline", "carry"]);
  });
});

describe("as ability", () => {
  test("the reference table", () => {
    const columns = [
      "x_across",
      "y_along",
      "confidence",
      "lower_each_side_C",
      "upper_each_side_C",
      "limit_at_most",
      "verdict",
    ] as const;
    for (const row of oracleRows("statistics/ellipse_area_limits.csv", columns)) {
      const claim = {
        ...area,
        share: 0.9,
        confidence: numberIn(row.confidence),
        bounds: bounds(`at most ${row.limit_at_most} yd²`),
      };
      const { verdict, interval } = evaluate(claim, landed(numbersIn(row.x_across), numbersIn(row.y_along)));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict);
      const inYards = (limit: number | null = null) => (limit === null ? undefined : limit / (YARD * YARD));
      expectNear(inYards(interval?.low), numberIn(row.lower_each_side_C), { relative: 1e-9 }, row);
      expectNear(inYards(interval?.high), numberIn(row.upper_each_side_C), { relative: 1e-9 }, row);
    }
  });

  const at80 = criterion(
    "ellipse",
    "area of the 80 % ellipse of offline and carry at most 90 yd² at 80 % confidence",
  );

  test("undecided: about how many more shots", () => {
    expect(evaluate(at80, landed(OFFLINE, CARRY))).toMatchObject({
      verdict: "undecided",
      required:
        "in the long run, area of the 80 % ellipse of offline and carry at most 90 yd², at 80 % confidence",
      interval: {
        confidence: 0.8,
        method: "exact chi-square limits, for shots that are normally distributed in both metrics",
        text: "72.7 yd² to 124.9 yd²",
      },
      settles: "about 130 more shots if the player goes on as observed (estimate)",
      cautions: [],
    });
  });

  test("only at the planned number of shots", () => {
    expect(evaluate(at80, landed(OFFLINE, CARRY, { asked: 13 }))).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: "the shot not hit yet: ability is judged on all 13",
    });
  });

  test("shots that do not look normal are cautioned about", () => {
    const wild = [...OFFLINE.slice(0, -1), 60];
    expect(evaluate(at80, landed(wild, CARRY)).cautions).toEqual([
      "The shots do not look normally distributed: these limits then promise too much, and more shots do not help.",
    ]);
  });

  test("an axis has no reading as ability", () => {
    expect(evaluate({ ...major, confidence: 0.8 }, landed(OFFLINE, CARRY))).toMatchObject({
      verdict: "undecided",
      settles:
        "a sentence without the confidence: the major axis of an ellipse is judged on the shots hit only",
    });
    expect(evaluate({ ...area, confidence: 1 }, landed(OFFLINE, CARRY)).settles).toBe(
      "a confidence of at least 50 % and less than 100 %",
    );
  });
});

test.each([
  [
    area,
    false,
    "Over the block's shots, the area of the 80 % ellipse of offline and carry is at most 250 yd²: the ellipse drawn from these shots, which holds 80 % of many shots that scatter as they do.",
  ],
  [
    major,
    true,
    "Over the block's shots that are as required, the major axis, from end to end, of the 80 % ellipse of offline and carry is at most 25 yd: the ellipse drawn from these shots, which holds 80 % of many shots that scatter as they do.",
  ],
  [
    { ...area, confidence: 0.9 },
    false,
    "In the long run, the area of the ellipse that holds 80 % of the player's shots, by offline and carry, is at most 250 yd², shown at 90 % confidence.",
  ],
] as const)("in a sentence", (claim, isRequiring, text) => {
  expect(sentence(claim, isRequiring)).toBe(text);
});

describe("whatever the shots", () => {
  const cloud = fc.array(fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 130, max: 170 })), {
    minLength: 3,
    maxLength: 15,
  });
  const claims = fc.constantFrom(
    area,
    major,
    criterion("ellipse", "area of the 90 % ellipse of offline and carry at most 300 yd² at 80 % confidence"),
  );
  const judge = (claim: typeof area, shots: readonly (readonly [number, number])[], side = 1) =>
    evaluate(
      claim,
      landed(
        shots.map(([x]) => side * x),
        shots.map(([, y]) => y),
      ),
    );

  test("their order, and the side they are on, play no part", () => {
    fc.assert(
      fc.property(claims, cloud, (claim, shots) => {
        const { verdict, brief } = judge(claim, shots);
        expect(judge(claim, shots.toReversed())).toMatchObject({ verdict, brief });
        expect(judge(claim, shots, -1)).toMatchObject({ verdict, brief });
      }),
    );
  });

  test("a narrower limit never turns missed into met", () => {
    fc.assert(
      fc.property(claims, cloud, fc.nat(400), fc.nat(400), (claim, shots, one, other) => {
        const limited = (limit: number) => {
          if (claim.bounds.kind !== "at most") throw new Error("The claims are upper limits.");
          const value = limit * claim.bounds.limit.unit.factor;
          return judge(
            { ...claim, bounds: { kind: "at most", limit: { ...claim.bounds.limit, value } } },
            shots,
          ).verdict;
        };
        const [wide, narrow] = [limited(Math.max(one, other)), limited(Math.min(one, other))];
        if (wide === "missed") expect(narrow).toBe("missed");
        if (narrow === "met") expect(wide).toBe("met");
      }),
    );
  });
});
