/** What must hold for every text that a criterion gives people to read. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import type { Circumstances } from "./shots.ts";
import { shotsLike, shotsWith } from "./shots.ts";
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
    fc.constantFrom("average", "median", "spread of"),
    fc.constantFrom("at most 2°", "within ±0.5°"),
    sure,
  )
  .map(([statistic, range, sure]) => `${statistic} club-path ${range}${sure}`);

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

  test("about statistics", () => {
    const reading = fc.option(fc.integer({ min: -30, max: 30 }).map((tenths) => tenths / 10));
    fc.assert(
      fc.property(statistic, fc.array(reading, { maxLength: 6 }), circumstances, (text, readings, more) => {
        expectAllReadable(text, shotsWith("club-path", readings, fitted(more, readings.length)));
      }),
      { numRuns: 1000 },
    );
  });
});
