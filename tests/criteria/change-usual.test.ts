/** Changes against the player's usual numbers. */
import { expect, test } from "vitest";
import { evaluate } from "../../language/criteria/criteria.ts";
import { now, YARD } from "./changes.ts";
import { usual } from "./measured-shots.ts";
import { criterion } from "./words.ts";

test("of the shots hit", () => {
  const shots = now({ carry: [146, 148] }, usual("carry", 150));
  expect(evaluate(criterion("change", "carry loses no more than 4 yd against usual"), shots)).toMatchObject({
    verdict: "met",
    observed: "average 147 yd over 2 shots; usual 150 yd; 3 yd less",
    cautions: [],
    comparison: { against: "usual", before: expect.closeTo(150 * YARD, 9) },
  });
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

test("as ability: a usual number of a single shot is taken as exact", () => {
  expect(evaluate(gains, now(readings, usual("carry", 150, 6, 1)))).toMatchObject({
    verdict: "met",
    interval: { method: "one-sided limits of Student's t" },
    cautions: ["The usual average carry is taken as exact."],
  });
});

test("as ability: a share of the usual is as many yards of it", () => {
  const usualNumber = usual("carry", 150);
  const inPercent = criterion("change", "carry gains at least 1.6 % against usual at 80 % confidence");
  const inYards = criterion("change", "carry gains at least 2.4 yd against usual at 80 % confidence");
  const [percent, yards] = [inPercent, inYards].map((claim) => evaluate(claim, now(readings, usualNumber)));
  expect(percent).toMatchObject({
    verdict: "undecided",
    settles: "about 1 more shot if the player goes on as observed (estimate)",
    comparison: { smallestShown: expect.closeTo(0.665 * YARD, 3) },
  });
  expect(percent?.settles).toBe(yards?.settles);
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
