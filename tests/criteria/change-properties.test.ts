/** What must hold for every change, whatever the shots. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { evaluate } from "../../language/criteria/criteria.ts";
import { type MeasuredCircumstances, measured, otherShots } from "./measured-shots.ts";
import { criterion } from "./words.ts";

const sure = fc.constantFrom("", " at 60 % confidence", " at 80 % confidence", " at 95 % confidence");
const statistic = fc.constantFrom(
  "average",
  "median",
  "best",
  "30th percentile of",
  "spread of",
  "middle 60 % of",
);
const blockOf = (readings: fc.Arbitrary<number>) => fc.array(readings, { minLength: 1, maxLength: 12 });
const carry = blockOf(fc.integer({ min: 120, max: 170 }));
const path = blockOf(fc.integer({ min: -40, max: 40 }).map((tenths) => tenths / 10));
const circumstances: fc.Arbitrary<MeasuredCircumstances & { readonly isSameSession?: boolean }> =
  fc.constantFrom(
    {},
    { uncertainty: { carry: { random: 1, systematic: 1 } }, decisionLevel: 0.8 },
    { uncertainty: { carry: { random: 1, systematic: 1 } }, isSameSession: false },
  );

function judge(
  metric: string,
  [statistic, movement, sure]: readonly [string, string, string],
  now: readonly number[],
  before: readonly number[],
  more: MeasuredCircumstances & { readonly isSameSession?: boolean } = {},
) {
  const baseline = otherShots('"Then"', measured({ [metric]: before }, more), more.isSameSession ?? true);
  const against = () => baseline;
  const text = `${statistic} ${metric} ${movement} against "Then"${sure}`;
  return evaluate(criterion("change", text), measured({ [metric]: now }, { ...more, against }));
}

test("the order of the shots plays no part, on either side", () => {
  const movements = fc.constantFrom("gains 5 yd", "falls by at most 10 %", "stays within 8 yd");
  fc.assert(
    fc.property(
      fc.tuple(statistic, movements, sure),
      carry,
      carry,
      circumstances,
      (words, now, before, more) => {
        const { verdict, settles } = judge("carry", words, now, before, more);
        expect(judge("carry", words, now.toReversed(), before.toReversed(), more)).toMatchObject({
          verdict,
          settles,
        });
      },
    ),
    { numRuns: 150 },
  );
});

test("asking for more never turns missed into met", () => {
  const amounts = fc.tuple(
    fc.integer({ min: 0, max: 20 }),
    fc.integer({ min: 0, max: 20 }),
    fc.constantFrom("yd", "%"),
  );
  const atLeast = fc.constantFrom("gains at least", "falls by at least");
  const atMost = fc.constantFrom("loses at most", "rises by at most", "stays within");
  const verdictOn = (
    words: readonly [string, string, string],
    amount: string,
    now: readonly number[],
    before: readonly number[],
    more: MeasuredCircumstances,
  ) => judge("carry", [words[0], `${words[1]} ${amount}`, words[2]], now, before, more).verdict;
  const asks = fc.oneof(fc.tuple(atLeast, fc.constant(1)), fc.tuple(atMost, fc.constant(-1)));
  fc.assert(
    fc.property(
      statistic,
      asks,
      sure,
      amounts,
      carry,
      carry,
      circumstances,
      (name, [ask, sign], sure, [one, other, unit], now, before, more) => {
        const [less, much] = [Math.min(one, other), Math.max(one, other)];
        const [easy, hard] = sign === 1 ? [less, much] : [much, less];
        const words = [name, ask, sure] as const;
        const onEasy = verdictOn(words, `${easy} ${unit}`, now, before, more);
        const onHard = verdictOn(words, `${hard} ${unit}`, now, before, more);
        if (onEasy === "missed") expect(onHard).not.toBe("met");
        if (onHard === "met") expect(onEasy).toBe("met");
      },
    ),
    { numRuns: 200 },
  );
});

test("a left-hander who is the mirror image of a right-hander has the same verdict and the same words", () => {
  const movements = fc.constantFrom(
    "moves at least 1° in-to-out",
    "moves at most 1° out-to-in",
    "stays within 1°",
  );
  const widths = fc.constantFrom("rises by at most 1°", "falls by at least 20 %", "stays within 1°");
  const words = fc.oneof(
    fc.tuple(fc.constantFrom("average", "median", "best", "worst", "30th percentile of"), movements, sure),
    fc.tuple(fc.constantFrom("spread of", "middle 60 % of"), widths, sure),
  );
  const mirrored = (list: readonly number[]) => list.map((value) => -value);
  fc.assert(
    fc.property(words, path, path, (words, now, before) => {
      const { verdict, observed, brief, settles, interval } = judge("club-path", words, now, before);
      const left = judge("club-path", words, mirrored(now), mirrored(before), { hand: "left" });
      expect(left).toMatchObject({ verdict, observed, brief, settles });
      // On both sides a range is written from left to right for either hand.
      const endsOf = (text = "") => text.split(/ to (?=\d|no)/).sort();
      expect(endsOf(left.interval?.text)).toEqual(endsOf(interval?.text));
    }),
    { numRuns: 200 },
  );
});

test("with left for right the verdict on the same shots to the other side is the same", () => {
  const movements = fc.constantFrom(
    "moves at least 1 yd right",
    "moves at most 2 yd left",
    "stays within 2 yd",
  );
  const names = fc.constantFrom("average", "median", "best", "worst");
  // Yards to either side, so few that two shots are often as far to either.
  const offline = blockOf(fc.integer({ min: -4, max: 4 }));
  const swapped = (text: string) =>
    text.replace(/left|right/, (word) => (word === "left" ? "right" : "left"));
  const mirrored = (list: readonly number[]) => list.map((value) => -value);
  fc.assert(
    fc.property(names, movements, offline, offline, (name, movement, now, before) => {
      const { verdict } = judge("offline", [name, movement, ""], now, before);
      const words = [name, swapped(movement), ""] as const;
      expect(judge("offline", words, mirrored(now), mirrored(before)).verdict).toBe(verdict);
    }),
    { numRuns: 200 },
  );
});

test("a change and the way back are opposite", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("average", "median", "spread of"),
      sure,
      carry,
      carry,
      (name, sure, now, before) => {
        const forth = judge("carry", [name, "gains at least 3 yd", sure], now, before).verdict;
        const back = judge("carry", [name, "loses at least 3 yd", sure], before, now).verdict;
        if (now.length >= 2 && before.length >= 2) expect(back).toBe(forth);
      },
    ),
    { numRuns: 150 },
  );
});

test("thousands of shots on either side are judged as ten are", () => {
  const many = Array.from({ length: 3000 }, (_, index) => 150 + ((index * 7919) % 61) / 10 - 3);
  const more = many.map((value) => value + 10);
  for (const name of ["average", "median", "spread of"]) {
    const words = [
      name,
      name === "spread of" ? "rises by at most 2 yd" : "gains 5 yd",
      " at 80 % confidence",
    ] as const;
    expect(judge("carry", words, more, many).verdict).toBe("met");
  }
});
