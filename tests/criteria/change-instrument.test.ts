/** Changes of readings that may be off. */
import { expect, test } from "vitest";
import { evaluate } from "../../language/criteria/criteria.ts";
import { earlier, HERE, now, YARD } from "./changes.ts";
import { criterion } from "./words.ts";

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

test("a share of what it was is as many yards of it", () => {
  const judgeShare = (movement: string) =>
    evaluate(
      criterion("change", `carry ${movement} against ${HERE}`),
      now({ carry: [153, 153] }, earlier({ carry: [150, 150] }, { uncertainty }), { uncertainty }),
    );
  // √(1/2 + 1/2) = 1 yd: 3 − 1.645 of 150
  const yards = judgeShare("gains at least 1.5 yd");
  expect(yards).toMatchObject({ verdict: "undecided", interval: { text: "1 yd to 5 yd more" } });
  const share = judgeShare("gains at least 1 %");
  expect(share.verdict).toBe("undecided");
  expect(share.interval?.low).toBeCloseTo((yards.interval?.low ?? Number.NaN) / (150 * YARD), 12);
  expect(share.observed.split("; ").at(-1)).toBe(yards.observed.split("; ").at(-1));
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

test("the limits of spreads are without what readings scatter by themselves", () => {
  const limits = (amount: string, unit: number) => {
    const falls = criterion(
      "change",
      `spread of carry falls by at least ${amount} against ${HERE} at 80 % confidence`,
    );
    const was = earlier({ carry: [140, 150, 160, 150] }, { uncertainty });
    const { interval } = evaluate(falls, now({ carry: [148, 150, 152, 150] }, was, { uncertainty }));
    return [(interval?.low ?? Number.NaN) / unit, (interval?.high ?? Number.NaN) / unit];
  };
  // χ² with 3 degrees of freedom is 0.584374 at 10 % and 6.251389 at 90 %. The variances 200/3 and 8/3 yd² are at least
  // 31.993 and 1.280, at most 342.25 and 13.690; less 1 yd² of the readings that is 5.567 to 18.473 yd, and 0.529 to 3.562.
  const [least, most] = limits("1 yd", YARD);
  expect(least).toBeCloseTo(0.529 - 18.473, 3);
  expect(most).toBeCloseTo(3.562 - 5.567, 3);
  const [low, high] = limits("20 %", 1);
  expect(low).toBeCloseTo(0.529 / 18.473 - 1, 4);
  expect(high).toBeCloseTo(3.562 / 5.567 - 1, 4);
});

test("spreads of readings that are hardly off have the limits of exact ones", () => {
  const falls = criterion(
    "change",
    `spread of carry falls by at least 1 yd against ${HERE} at 80 % confidence`,
  );
  const judgeWith = (uncertainty: Record<string, { random: number; systematic: number }>) =>
    evaluate(
      falls,
      now({ carry: [148, 150, 152, 151] }, earlier({ carry: [140, 150, 160, 152] }, { uncertainty }), {
        uncertainty,
      }),
    ).interval;
  const [exact, hardly] = [judgeWith({}), judgeWith({ carry: { random: 1e-9, systematic: 0 } })];
  expect(hardly?.low).toBeCloseTo(exact?.low ?? Number.NaN, 9);
  expect(hardly?.high).toBeCloseTo(exact?.high ?? Number.NaN, 9);
});

test("of medians and others it is a caution", () => {
  const median = criterion("change", `median carry gains 1 yd against ${HERE}`);
  const shots = now({ carry: [152] }, earlier({ carry: [150] }, { uncertainty }), { uncertainty });
  expect(evaluate(median, shots).cautions).toEqual([
    "How far readings of carry may be off is not in the change of the median: it is judged as if they were exact.",
  ]);
  const shared = { carry: { random: 0, systematic: 3 } };
  const before = earlier({ carry: [150] }, { uncertainty: shared });
  expect(evaluate(median, now({ carry: [152] }, before)).cautions).toHaveLength(1);
});
