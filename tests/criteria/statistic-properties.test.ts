/** What must hold for every statistic, whatever the shots. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evaluate } from "../../language/criteria/criteria.ts";
import { type MeasuredCircumstances, measured } from "./measured-shots.ts";
import { criterion } from "./words.ts";

const NAMES = [
  "average club-path",
  "median club-path",
  "30th percentile of club-path",
  "best club-path",
  "worst club-path",
] as const;
const WIDTHS = ["spread of club-path", "middle 60 % of club-path spans"] as const;

const sure = fc.constantFrom("", " at 60 % confidence", " at 80 % confidence", " at 95 % confidence");
const tenths = fc.integer({ min: -40, max: 40 }).map((value) => value / 10);
const reading = fc.oneof({ weight: 7, arbitrary: tenths }, { weight: 1, arbitrary: fc.constant(null) });
const readings = fc.array(reading, { minLength: 1, maxLength: 14 });
const circumstances: fc.Arbitrary<MeasuredCircumstances> = fc.constantFrom(
  {},
  { uncertainty: { "club-path": { random: 0.3, systematic: 0 } } },
  { uncertainty: { "club-path": { random: 0.4, systematic: 0.3 } }, decisionLevel: 0.8 },
);
/** A statistic, and its tolerance in tenths of a degree about 0.5° in-to-out. */
const claims = fc.tuple(fc.constantFrom(...NAMES, ...WIDTHS), sure);

function claim([name, sure]: readonly [string, string], tolerance: number) {
  const isWidth = WIDTHS.some((width) => width === name);
  const range = isWidth ? `at most ${tolerance / 10}°` : `within ${tolerance / 10}° of 0.5° in-to-out`;
  return criterion("statistic", `${name} ${range}${sure}`);
}

const shots = (list: readonly (number | null)[], more: MeasuredCircumstances = {}) =>
  measured({ "club-path": list }, more);

const tolerance = fc.integer({ min: 1, max: 40 });

test("the order of the shots plays no part", () => {
  const orders = readings.chain((list) =>
    fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
  );
  fc.assert(
    fc.property(claims, tolerance, orders, circumstances, (words, width, [one, other], more) => {
      const { verdict, value, settles } = evaluate(claim(words, width), shots(one, more));
      const shuffled = evaluate(claim(words, width), shots(other, more));
      expect(shuffled).toMatchObject({ verdict, settles });
      if (value === null) expect(shuffled.value).toBeNull();
      else expect(shuffled.value).toBeCloseTo(value, 12);
    }),
    { numRuns: 200 },
  );
});

test("a narrower tolerance never turns missed into met", () => {
  fc.assert(
    fc.property(claims, tolerance, tolerance, readings, circumstances, (words, one, other, list, more) => {
      const wide = evaluate(claim(words, Math.max(one, other)), shots(list, more)).verdict;
      const narrow = evaluate(claim(words, Math.min(one, other)), shots(list, more)).verdict;
      if (wide === "missed") expect(narrow).not.toBe("met");
      if (narrow === "met") expect(wide).toBe("met");
    }),
    { numRuns: 300 },
  );
});

test("a left-hander who is the mirror image of a right-hander has the same verdict and the same words", () => {
  fc.assert(
    fc.property(claims, tolerance, readings, circumstances, (words, width, list, more) => {
      const mirrored = list.map((value) => (value === null ? null : -value));
      const { verdict, observed, settles, interval } = evaluate(claim(words, width), shots(list, more));
      const left = evaluate(claim(words, width), shots(mirrored, { ...more, hand: "left" }));
      expect(left).toMatchObject({ verdict, observed, settles });
      expect(endsOf(left.interval?.text)).toEqual(endsOf(interval?.text));
    }),
    { numRuns: 200 },
  );
});

test("a statement about ability is never more than the shots say: what it meets, the shots hit meet", () => {
  const exact = fc.array(tenths, { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(fc.constantFrom(...NAMES.slice(0, 2), ...WIDTHS), tolerance, exact, (name, width, list) => {
      const ability = evaluate(claim([name, " at 80 % confidence"], width), shots(list)).verdict;
      const hit = evaluate(claim([name, ""], width), shots(list)).verdict;
      if (ability === "met") expect(hit).toBe("met");
      if (ability === "missed") expect(hit).toBe("missed");
    }),
    { numRuns: 200 },
  );
});

describe("what was unknown and turns up", () => {
  const rows = fc.array(fc.tuple(reading, tenths, fc.constantFrom(..."TTTTU")), {
    minLength: 1,
    maxLength: 10,
  });

  test("never turns met into missed or back, where a single shot decides", () => {
    const best = fc.tuple(fc.constantFrom("best club-path", "worst club-path"), fc.constant(""));
    fc.assert(
      fc.property(best, tolerance, rows, fc.array(tenths, { maxLength: 3 }), (words, width, list, toCome) => {
        const admitted = list.map(([, , letter]) => letter).join("");
        const before = evaluate(
          claim(words, width),
          shots(
            list.map(([seen]) => seen),
            { admitted, asked: list.length + toCome.length },
          ),
        ).verdict;
        const known = [...list.map(([seen, found]) => seen ?? found), ...toCome];
        for (const letter of ["T", "F"]) {
          const settled = admitted.replaceAll("U", letter) + "T".repeat(toCome.length);
          const after = evaluate(claim(words, width), shots(known, { admitted: settled })).verdict;
          if (before === "met") expect(after).toBe("met");
          if (before === "missed") expect(after).toBe("missed");
        }
      }),
      { numRuns: 300 },
    );
  });

  test("never decides what more shots leave open: too few known decide nothing", () => {
    fc.assert(
      fc.property(
        claims,
        tolerance,
        fc.array(tenths, { minLength: 1, maxLength: 4 }),
        (words, width, list) => {
          if (words[0].startsWith("best") || words[0].startsWith("worst")) return;
          const mostlyUnknown = [...list, ...list.map(() => null)];
          expect(evaluate(claim(words, width), shots(mostlyUnknown)).verdict).toBe("undecided");
        },
      ),
    );
  });
});

test("twenty thousand shots are judged as ten are", () => {
  const many = Array.from({ length: 20_000 }, (_, index) => ((index * 7919) % 61) / 10 - 3);
  for (const name of [...NAMES, ...WIDTHS]) {
    for (const sure of ["", " at 80 % confidence"]) {
      const { verdict, shotsUsed } = evaluate(claim([name, sure], 400), shots(many));
      const isExtreme = name.startsWith("best") || name.startsWith("worst");
      expect([verdict, shotsUsed]).toEqual([isExtreme && sure !== "" ? "undecided" : "met", 20_000]);
    }
  }
});

/** Both ends of a range, which is written from left to right for either hand. */
function endsOf(text = ""): string[] {
  return text.split(/ to (?=\d)/).sort();
}
