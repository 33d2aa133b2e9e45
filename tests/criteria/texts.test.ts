/** What must hold for every text that a criterion gives people to read. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import { measured, otherShots, usual } from "./measured-shots.ts";
import type { Circumstances } from "./shots.ts";
import { shotsLike } from "./shots.ts";
import { anyCriterion } from "./words.ts";

const sure = fc.constantFrom("", " at 80 % confidence", " at 99.9 % confidence");
const bound = fc.constantFrom("least", "most");
const small = fc.integer({ min: 1, max: 6 });
const subject = fc.constantFrom(
  "on target",
  "with carry at least 150 yd | carry below 120 yd; offline within ±5 yd",
);
const counted = fc.oneof(
  fc
    .tuple(bound, small, small, subject)
    .map(
      ([bound, one, other, subject]) =>
        `at ${bound} ${Math.min(one, other)} of ${Math.max(one, other)} shots ${subject}`,
    )
    .map((text) => text.replace("of 1 shots", "of 1 shot")),
  fc
    .tuple(bound, fc.integer({ min: 1, max: 99 }), subject, sure)
    .map(([bound, percent, subject, sure]) => `at ${bound} ${percent} % of shots ${subject}${sure}`),
  fc.tuple(small, subject).map(([length, subject]) => `${length} in a row ${subject}`),
);
const statistic = fc
  .tuple(
    fc.constantFrom(
      "average",
      "median",
      "spread of",
      "best",
      "worst",
      "90th percentile of",
      "21st percentile of",
      "middle 80 % of",
    ),
    fc.constantFrom("at most 2°", "within ±0.5°", "at least 1° right"),
    sure,
  )
  .map(([statistic, range, sure]) => `${statistic} club-path ${range}${sure}`);
const ellipse = fc
  .tuple(fc.constantFrom("area", "major axis"), sure)
  .map(([measure, sure]) => `${measure} of the 80 % ellipse of offline and carry at most 20 yd${sure}`);
const change = fc
  .tuple(
    fc.constantFrom("average", "median", "spread of", "best", "90th percentile of"),
    fc.constantFrom("gains 2 yd", "loses no more than 2 yd", "falls by at least 10 %", "stays within 5 yd"),
    fc.constantFrom('"Where we are"', "the last session", 'session "Monday"', "usual"),
    sure,
  )
  .map(([statistic, movement, what, sure]) => `${statistic} carry ${movement} against ${what}${sure}`);

const circumstances: fc.Arbitrary<Circumstances> = fc
  .record({
    more: fc.integer({ min: 0, max: 3 }),
    admitted: fc.option(fc.array(fc.constantFrom(..."TTTFU"))),
  })
  .map(({ more, admitted }) => ({
    asked: more,
    ...(admitted === null ? {} : { admitted: admitted.join("") }),
  }));

/** Shots asked for beyond those hit, and requirements for each shot. */
function fitted({ asked = 0, admitted }: Circumstances, size: number): Circumstances {
  return {
    asked: size + asked,
    ...(admitted === undefined ? {} : { admitted: admitted.slice(0, size).padEnd(size, "T") }),
  };
}

function expectReadable(text: string) {
  expect(text).not.toMatch(/\b(\w+) \1\b/); // the same word twice
  expect(text).not.toMatch(/\b1 shots\b|(?<!\b1)(?<=\d) shot\b/);
  expect(text).not.toMatch(/undefined|null|NaN|Infinity|-0\b/);
  expect(text).not.toMatch(/\s{2}|^\s|\s$|\s[,;:.]|[,;:]$/);
  expect(text).not.toMatch(/\d\.\d{5}/);
  expect(text).not.toBe("");
}

function expectAllReadable(text: string, shots: ReturnType<typeof shotsLike>) {
  const criterion = anyCriterion(text);
  const { required, observed, settles, interval, cautions } = evaluate(criterion, shots);
  const sentences = [sentence(criterion), sentence(criterion, true), ...cautions];
  for (const text of [required, observed, settles ?? "-", interval?.text ?? "-", ...sentences])
    expectReadable(text);
  for (const text of sentences) expect(text).toMatch(/^[A-Z0-9].*\.$/);
}

describe("every text reads right", () => {
  test("about counted shots", () => {
    const pattern = fc
      .array(fc.constantFrom(..."TTFFU"), { maxLength: 6 })
      .map((letters) => letters.join(""));
    fc.assert(
      fc.property(counted, pattern, circumstances, (text, pattern, more) => {
        expectAllReadable(text, shotsLike(pattern, fitted(more, pattern.length)));
      }),
      { numRuns: 1000 },
    );
  });

  test("about groups and loads", () => {
    const load = fc
      .tuple(bound, small, fc.constantFrom("", "full-effort "), fc.constantFrom("", " in the session"))
      .map(([bound, count, full, session]) => `at ${bound} ${count} ${full}swings${session}`)
      .map((text) => text.replace(/ 1 (full-effort )?swings/, " 1 $1swing"));
    const group = fc
      .tuple(fc.constantFrom("all", "any", "2"), counted, counted, load)
      .map(([needed, ...parts]) => `${needed} of { ${parts.join(" / ")} }`);
    const pattern = fc.array(fc.constantFrom(..."TTFFU"), { maxLength: 6 });
    const effort = fc.record({
      all: small,
      fullEffort: small,
      unknownEffort: fc.integer({ min: 0, max: 2 }),
    });
    fc.assert(
      fc.property(fc.oneof(load, group), pattern, effort, small, (text, letters, made, toCome) => {
        const swings = { ...made, toCome: { all: toCome, fullEffort: toCome - 1 } };
        const shots = { ...shotsLike(letters.join("")), swings: { block: swings, session: swings } };
        expectAllReadable(text, shots);
      }),
      { numRuns: 1000 },
    );
  });

  const reading = fc.option(fc.integer({ min: -30, max: 30 }).map((tenths) => tenths / 10));
  const uncertainty = fc.constantFrom({}, { uncertainty: { "club-path": { random: 0.3, systematic: 0.2 } } });

  test("about statistics", () => {
    fc.assert(
      fc.property(
        statistic,
        fc.array(reading, { maxLength: 6 }),
        circumstances,
        uncertainty,
        (text, readings, more, stated) => {
          const circumstances = { ...fitted(more, readings.length), ...stated };
          expectAllReadable(text, measured({ "club-path": readings }, circumstances));
        },
      ),
      { numRuns: 1000 },
    );
  });

  test("about ellipses", () => {
    const landed = fc.array(fc.tuple(reading, reading), { maxLength: 7 });
    fc.assert(
      fc.property(ellipse, landed, circumstances, (text, shots, more) => {
        const [offline, carry] = [shots.map(([x]) => x), shots.map(([, y]) => y)];
        expectAllReadable(text, measured({ offline, carry }, fitted(more, shots.length)));
      }),
      { numRuns: 500 },
    );
  });

  test("about changes", () => {
    const carries = fc.array(fc.option(fc.integer({ min: 1400, max: 1600 }).map((tenths) => tenths / 10)), {
      maxLength: 6,
    });
    const spread = fc.option(fc.constant(6));
    const count = fc.option(fc.constant(20));
    fc.assert(
      fc.property(
        change,
        carries,
        carries,
        circumstances,
        fc.tuple(spread, count),
        (text, now, before, more, [spread, count]) => {
          const shots = measured(
            { carry: now },
            {
              ...fitted(more, now.length),
              against: ({ kind }) =>
                kind === "usual"
                  ? usual("carry", 150, spread, count)
                  : otherShots('"Where we are"', measured({ carry: before })),
            },
          );
          expectAllReadable(text, shots);
        },
      ),
      { numRuns: 500 },
    );
  });
});
