/** What must hold for every plan and all shots. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { verdictOfAll } from "../../language/criteria/verdict.ts";
import { Verdict } from "../../shared/score-report.ts";
import type { Shot } from "../../shared/session-data.ts";
import {
  type BlockWords,
  instrument,
  plan,
  type Stated,
  score,
  scoreBlock,
  table,
  verdictOn,
} from "./practice.ts";

/** A reading in tenths of a degree, so that it may well lie on a limit; or unknown. */
const reading = fc.integer({ min: -60, max: 60 }).map((tenths) => String(tenths / 10));
const maybe = fc.oneof({ weight: 6, arbitrary: reading }, { weight: 1, arbitrary: fc.constant("?") });

interface Pair {
  readonly path: string;
  readonly attack: string;
}
const pair = (cell: fc.Arbitrary<string>): fc.Arbitrary<Pair> => fc.record({ path: cell, attack: cell });
/** Mostly about as many shots as the block asks for, so that many criteria are decided. */
const pairs = fc.oneof(
  { weight: 1, arbitrary: fc.array(pair(maybe), { maxLength: 7 }) },
  { weight: 3, arbitrary: fc.array(pair(maybe), { minLength: 8, maxLength: 12 }) },
);

function shotsOf(readings: readonly Pair[]): Shot[] {
  return table(
    `club-path attack-angle\n${readings.map(({ path, attack }) => `${path} ${attack}`).join("\n")}`,
  ).slice(0, readings.length);
}

/** Criteria about shots with a path that is a tolerance about a centre. */
const least = [
  "at least 5 of 10 shots on target",
  "at least 60 % of shots on target",
  "at least 60 % of shots on target at 80 % confidence",
];
const most = [
  "at most 4 of 10 shots on target",
  "at most 30 % of shots on target",
  "at most 30 % of shots on target at 80 % confidence",
];
const runs = ["3 in a row on target"];
const statistics = [
  "average club-path within TOLERANCE",
  "median club-path within TOLERANCE",
  "spread of club-path at most TOLERANCE",
  "average club-path within TOLERANCE at 80 % confidence",
];

const groups = [
  "any of { at least 5 of 10 shots on target / 3 in a row on target }",
  "2 of { at least 60 % of shots on target at 80 % confidence / at least 70 % of shots on target / average club-path within TOLERANCE at 80 % confidence }",
];

/** Readings that are exact; that are off by themselves; and that are off in common as well. */
const exact: Stated = {};
const rough: Stated = { instrument: instrument("club-path 0.4 random", "attack-angle 0.5 random") };
const shifted: Stated = {
  instrument: instrument("club-path 0.3 random 0.3 systematic", "attack-angle 0.5 random"),
};
const biased: Stated = {
  instrument: instrument("club-path 0.2 random 0.4 systematic", "attack-angle 0.3 random 0.3 systematic"),
};
const accuracies = fc.constantFrom(exact, rough, shifted, biased);

const width = fc.integer({ min: 1, max: 40 });
const required = fc.constantFrom(undefined, "attack-angle between 4° down and 1° up");

function block(success: string, tenths: number, require?: string): BlockWords {
  const tolerance = `${tenths / 10}°`;
  return {
    shots: 10,
    target: `club-path within ${tolerance} of 1° in-to-out`,
    ...(require === undefined ? {} : { require }),
    success: success.replaceAll("TOLERANCE", tolerance),
  };
}

describe("the order of shots", () => {
  const shuffled = fc
    .array(pair(maybe), { minLength: 5, maxLength: 10 })
    .chain((readings) =>
      fc.tuple(fc.constant(readings), fc.shuffledSubarray(readings, { minLength: readings.length })),
    );

  test("decides nothing but runs", () => {
    fc.assert(
      fc.property(
        shuffled,
        fc.constantFrom(...least, ...most, ...statistics),
        width,
        required,
        accuracies,
        ([one, other], success, tenths, require, accuracy) => {
          const words = block(success, tenths, require);
          const verdict = verdictOn(words, shotsOf(one), accuracy);
          expect(verdictOn(words, shotsOf(other), accuracy)).toBe(verdict);
        },
      ),
    );
  });
});

describe("a shot that becomes a hit", () => {
  test("never unmakes a criterion that is met, nor repairs one that has too many", () => {
    fc.assert(
      fc.property(
        pairs.filter((readings) => readings.length > 0),
        fc.nat(),
        fc.constantFrom(...least, ...runs, ...most, groups[0] ?? ""),
        width,
        fc.constantFrom(exact, rough),
        (readings, place, success, tenths, accuracy) => {
          const better = readings.with(place % readings.length, { path: "1", attack: "0" });
          const before = verdictOn(block(success, tenths), shotsOf(readings), accuracy);
          const after = verdictOn(block(success, tenths), shotsOf(better), accuracy);
          if (before === (most.includes(success) ? "missed" : "met")) expect(after).toBe(before);
        },
      ),
    );
  });

  test("never turns one into the other where readings are off in common", () => {
    fc.assert(
      fc.property(
        pairs.filter((readings) => readings.length > 0),
        fc.nat(),
        fc.constantFrom(...least, ...runs),
        width,
        (readings, place, success, tenths) => {
          const better = readings.with(place % readings.length, { path: "1", attack: "0" });
          const before = verdictOn(block(success, tenths), shotsOf(readings), shifted);
          if (before === "met")
            expect(verdictOn(block(success, tenths), shotsOf(better), shifted)).not.toBe("missed");
        },
      ),
    );
  });
});

describe("a narrower tolerance", () => {
  test("never makes a missed criterion met", () => {
    fc.assert(
      fc.property(
        pairs,
        fc.constantFrom(...least, ...runs, ...statistics, ...groups),
        width,
        width,
        required,
        accuracies,
        (readings, success, one, other, require, accuracy) => {
          const verdict = (tenths: number) =>
            verdictOn(block(success, tenths, require), shotsOf(readings), accuracy);
          const wide = verdict(Math.max(one, other));
          const narrow = verdict(Math.min(one, other));
          if (wide === "missed") expect(narrow).not.toBe("met");
          if (narrow === "met") expect(wide).toBe("met");
        },
      ),
    );
  });
});

describe("a reading that was missing and turns up", () => {
  const completed = fc.array(fc.tuple(pair(maybe), pair(reading)), { minLength: 5, maxLength: 12 });

  test("never turns met into missed or back, where shots are counted", () => {
    fc.assert(
      fc.property(
        completed,
        fc.constantFrom(...least, ...most, ...runs),
        width,
        required,
        (rows, success, tenths, require) => {
          const known = rows.map(([seen, found]) => ({
            path: seen.path === "?" ? found.path : seen.path,
            attack: seen.attack === "?" ? found.attack : seen.attack,
          }));
          const before = verdictOn(block(success, tenths, require), shotsOf(rows.map(([seen]) => seen)));
          const after = verdictOn(block(success, tenths, require), shotsOf(known));
          if (before === "met" || before === "missed") expect(after).toBe(before);
        },
      ),
    );
  });

  test("never turns met into missed or back, where readings may be off", () => {
    fc.assert(
      fc.property(
        completed,
        fc.constantFrom(...least, ...most, ...runs),
        width,
        required,
        fc.constantFrom(rough, shifted, biased),
        (rows, success, tenths, require, accuracy) => {
          const words = block(success, tenths, require);
          const known = rows.map(([seen, found]) => ({
            path: seen.path === "?" ? found.path : seen.path,
            attack: seen.attack === "?" ? found.attack : seen.attack,
          }));
          const before = verdictOn(words, shotsOf(rows.map(([seen]) => seen)), accuracy);
          const after = verdictOn(words, shotsOf(known), accuracy);
          expect([before, after].toSorted()).not.toEqual(["met", "missed"]);
        },
      ),
    );
  });
});

describe("so many good shots at least, and the others at most", () => {
  const counted = fc
    .integer({ min: 0, max: 10 })
    .map((good) => [`at least ${good} of 10 shots GOOD`, `at most ${10 - good} of 10 shots BAD`] as const);
  const shared = fc
    .tuple(fc.integer({ min: 1, max: 19 }), fc.constantFrom("", " at 80 % confidence", " at 90 % confidence"))
    .map(
      ([twentieth, sure]) =>
        [
          `at least ${5 * twentieth} % of shots GOOD${sure}`,
          `at most ${100 - 5 * twentieth} % of shots BAD${sure}`,
        ] as const,
    );
  const goodAndBad = width.map(
    (tenths) => [`with club-path at most ${tenths / 10}°`, `with club-path above ${tenths / 10}°`] as const,
  );

  test("are the same goal, whatever the block requires and whatever is unknown", () => {
    fc.assert(
      fc.property(
        pairs,
        fc.oneof(counted, shared),
        goodAndBad,
        required,
        fc.constantFrom(exact, rough),
        (readings, [atLeast, atMost], [good, bad], require, accuracy) => {
          const words = {
            ...block("", 20, require),
            success: [atLeast.replace("GOOD", good), atMost.replace("BAD", bad)],
          };
          const [one, other] = scoreBlock(words, shotsOf(readings), accuracy).criteria;
          expect(other?.verdict).toBe(one?.verdict);
          const { hits, misses, unknown } = one?.evidence.tally ?? {};
          expect(other?.evidence.tally).toEqual({ hits: misses, misses: hits, unknown });
          expect(other?.evidence.rows).toEqual(one?.evidence.rows);
        },
      ),
      { numRuns: 500 },
    );
  });

  test("a shot that fails a requirement never helps", () => {
    fc.assert(
      fc.property(
        pairs.filter((readings) => readings.length > 0),
        fc.nat(),
        fc.constantFrom(...least, ...most, ...runs),
        width,
        (readings, place, success, tenths) => {
          const words = block(success, tenths, "attack-angle between 4° down and 1° up");
          const index = place % readings.length;
          const failing = readings.with(index, { path: readings[index]?.path ?? "?", attack: "6" });
          const before = verdictOn(words, shotsOf(readings));
          const after = verdictOn(words, shotsOf(failing));
          if (before === "missed") expect(after).toBe("missed");
          if (after === "met") expect(before).toBe("met");
        },
      ),
    );
  });
});

describe("a left-hander who is the mirror image of a right-hander", () => {
  test("gets the same verdicts from the same plan", () => {
    fc.assert(
      fc.property(
        pairs,
        fc.constantFrom(...least, ...most, ...runs, ...statistics, ...groups),
        width,
        required,
        accuracies,
        (readings, success, tenths, require, accuracy) => {
          const words = block(
            success.replace("within TOLERANCE", "between 1° out-to-in and TOLERANCE in-to-out"),
            tenths,
            require,
          );
          const mirrored = shotsOf(readings).map((shot) => {
            const path = shot.values["club-path"];
            return path === undefined ? shot : { ...shot, values: { ...shot.values, "club-path": -path } };
          });
          const right = scoreBlock(words, shotsOf(readings), { ...accuracy, hand: "right" });
          const left = scoreBlock(words, mirrored, { ...accuracy, hand: "left" });
          expect(left.criteria.map(({ verdict, evidence }) => [verdict, evidence.observed])).toEqual(
            right.criteria.map(({ verdict, evidence }) => [verdict, evidence.observed]),
          );
          expect(left.onTarget).toEqual(right.onTarget);
        },
      ),
    );
  });
});

describe("a group of verdicts", () => {
  const verdicts = fc.array(fc.constantFrom(...Verdict.options), { minLength: 1 });

  test("is met only when all are, missed as soon as one is, and not measured only when none is", () => {
    fc.assert(
      fc.property(verdicts, (group) => {
        const together = verdictOfAll(group);
        expect(together === "met").toBe(group.every((verdict) => verdict === "met"));
        expect(together === "missed").toBe(group.some((verdict) => verdict === "missed"));
        expect(together === "not-measured").toBe(group.every((verdict) => verdict === "not-measured"));
      }),
    );
  });

  test("does not depend on their order", () => {
    fc.assert(
      fc.property(verdicts, (group) => {
        expect(verdictOfAll(group.toReversed())).toBe(verdictOfAll(group));
      }),
    );
  });

  test("the plan's verdict is that of its blocks", () => {
    fc.assert(
      fc.property(
        pairs,
        fc.array(fc.constantFrom(...least, ...statistics), { maxLength: 4 }),
        width,
        (readings, success, tenths) => {
          const blocks = success.map((text, index) => ({ ...block(text, tenths), name: `Block ${index}` }));
          const shots = shotsOf(readings).map((shot, index) => ({ ...shot, block: `Block ${index % 4}` }));
          const report = score(plan({ name: "Warm-up", shots: 4 }, ...blocks), shots);
          expect(report.verdict).toBe(
            verdictOfAll(report.blocks.slice(1).flatMap(({ verdict }) => verdict ?? [])),
          );
        },
      ),
    );
  });
});

describe("no shot is lost", () => {
  test("every shot counts for its block or is set aside with a reason", () => {
    const marks = fc.array(
      fc.record({
        block: fc.constantFrom("Gate", "Test", "Elsewhere"),
        excluded: fc.constantFrom("-", "warm"),
      }),
    );
    fc.assert(
      fc.property(marks, (rows) => {
        const shots = table(
          `block excluded carry\n${rows.map(({ block, excluded }) => `${block} ${excluded} 150`).join("\n")}`,
        ).slice(0, rows.length);
        const report = score(plan({ shots: 3 }, { name: "Test", shots: "at least 2" }), shots);
        const counted = report.blocks.reduce((total, block) => total + block.shots.counted, 0);
        expect(counted + report.setAside.length).toBe(rows.length);
        expect(report.setAside.every(({ reason }) => reason !== "")).toBe(true);
      }),
    );
  });
});
