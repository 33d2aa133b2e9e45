/** Goals that are said to be at odds are met together by none of thousands of results, judged as scoring judges them. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { goalsAgainstEachOther } from "../../language/analysis/possibility/goals-together.ts";
import { idleGoals } from "../../language/analysis/possibility/idle-goals.ts";
import { type Meaning, Meanings } from "../../language/checks/meanings.ts";
import { Memory } from "../../language/checks/remembered.ts";
import { evaluate } from "../../language/criteria/criteria.ts";
import type { CountedShots } from "../../language/criteria/criterion.ts";
import { isPlan } from "../../language/generated/tree/ast.ts";
import { meets } from "../../shared/condition.ts";
import type { Criterion, Hand } from "../../shared/plan-model.ts";
import { services, withChecked } from "../checks/checked-files.ts";
import { shotsLike } from "../criteria/shots.ts";
import { randomNumbers } from "./shots.ts";

const YARD = 0.9144;
/** For each plan of which something is said; a few for any other, which show that results can meet goals. */
const RESULTS = 150;
const FEW = 20;

const yards = fc.integer({ min: 1, max: 6 }).map((step) => 5 * step);
const sided = (metric: string) =>
  fc
    .tuple(fc.constantFrom("at least", "at most"), yards, fc.constantFrom("left", "right"))
    .map(([bound, amount, side]) => `${metric} ${bound} ${amount} yd ${side}`);
const plain = (metric: string) =>
  fc.oneof(
    fc
      .tuple(fc.constantFrom("at least", "at most"), yards)
      .map(([bound, amount]) => `${metric} ${bound} ${130 + amount} yd`),
    fc.tuple(yards, yards).map(([one, other]) => `${metric} between ${130 + one} yd and ${130 + other} yd`),
  );

const goalAbout = (tested: (metric: string) => fc.Arbitrary<string>, metric: string) =>
  fc.oneof(
    fc
      .tuple(fc.constantFrom("least", "most"), fc.integer({ min: 1, max: 9 }), tested(metric))
      .map(([bound, count, asked]) => `at ${bound} ${count} of 10 shots with ${asked}`),
    fc
      .tuple(fc.constantFrom("least", "most"), fc.integer({ min: 1, max: 9 }), tested(metric))
      .map(([bound, tenths, asked]) => `at ${bound} ${10 * tenths} % of shots with ${asked}`),
    fc
      .tuple(fc.integer({ min: 2, max: 6 }), tested(metric))
      .map(([length, asked]) => `${length} in a row with ${asked}`),
    fc
      .tuple(
        fc.constantFrom("average", "median", "best", "worst", "25th percentile of", "90th percentile of"),
        tested(metric),
      )
      .map(([statistic, asked]) => `${statistic} ${asked}`),
    fc
      .tuple(fc.constantFrom("least", "most"), yards)
      .map(([bound, amount]) => `spread of ${metric} at ${bound} ${amount} yd`),
    fc
      .tuple(fc.constantFrom("least", "most"), yards)
      .map(([bound, amount]) => `middle 80 % of ${metric} spans at ${bound} ${amount} yd`),
  );

const plan = fc
  .constantFrom(goalAbout(plain, "carry"), goalAbout(sided, "offline"))
  .chain((goal) =>
    fc.tuple(
      fc.constantFrom("10 shots", "at least 10 shots"),
      fc.array(goal, { minLength: 2, maxLength: 4 }),
    ),
  )
  .map(
    ([shots, goals]) =>
      `plan "Gate" {\n  for 7-iron\n  block "Start" {\n    ${shots}\n    success {\n      ${goals.join("\n      ")}\n    }\n  }\n}\n`,
  );

/** Readings of ten shots, in SI: of a few sizes, most of them beside the limits that goals name. */
function result(metric: string, random: () => number): number[] {
  const middle = metric === "carry" ? 150 : 0;
  const size = () => YARD * (middle + 5 * Math.round(14 * random() - 7) + Math.floor(3 * random()) - 1);
  const sizes = Array.from({ length: 1 + Math.floor(4 * random()) }, size);
  return Array.from({ length: 10 }, () => sizes[Math.floor(sizes.length * random())] as number);
}

function counted(
  metric: string,
  values: readonly number[],
  hand: Hand,
  { vocabulary }: Meaning,
): CountedShots {
  const player = { hand, level: null };
  const shots = values.map((value) => ({ values: { [metric]: value }, names: {}, club: "7-iron" }));
  return {
    ...shotsLike("U".repeat(values.length), { hand }),
    clubs: values.map(() => "7-iron"),
    metric: (name) => vocabulary.metrics.get(name) as never,
    values: (name) => values.map((value) => (name === metric ? value : undefined)),
    meeting: (subject) =>
      shots.map((shot) =>
        subject.kind === "meeting" ? meets(subject.condition, shot as never, player) : undefined,
      ),
  };
}

function judge(meaning: Meaning, random: () => number, seen: Record<string, number>): void {
  const { success } = meaning.block;
  const metric = JSON.stringify(success).includes('"carry"') ? "carry" : "offline";
  const note = (what: string) => {
    seen[what] = (seen[what] ?? 0) + 1;
  };
  const atOdds = goalsAgainstEachOther(meaning).map(({ location, related }) => {
    const places = new Set([location, ...related.map((other) => other.location)]);
    return success.filter((goal) => places.has(goal.location));
  });
  const idle = new Set(idleGoals(meaning).map(({ location }) => location));
  if (atOdds.length > 0) note("at odds");
  const isMet = (goal: Criterion, shots: CountedShots) => evaluate(goal, shots).verdict === "met";
  const results = atOdds.length + idle.size > 0 ? RESULTS : FEW;
  for (let count = 0; count < results; count++) {
    const values = result(metric, random);
    const shots = counted(metric, values, count % 2 === 0 ? "right" : "left", meaning);
    const met = new Set(success.filter((goal) => isMet(goal, shots)));
    if (met.size === success.length) note("met");
    for (const goals of atOdds) {
      expect(
        goals.every((goal) => met.has(goal)),
        `${goals.map(({ text }) => text).join("\n")}\n${values}`,
      ).toBe(false);
    }
    for (const goal of success)
      if (idle.has(goal.location)) expect(evaluate(goal, shots).verdict).not.toBe("missed");
  }
}

test("no result meets goals that are called impossible together", async () => {
  const seen: Record<string, number> = {};
  const random = randomNumbers(20261126);
  await fc.assert(
    fc.asyncProperty(plan, (text) =>
      withChecked(text, {}, ({ document }) => {
        const meanings = new Meanings(
          document,
          services.names.Names,
          () => false,
          () => [],
          new Memory(),
        );
        for (const node of document.parseResult.value.declarations.filter(isPlan)) {
          for (const meaning of meanings.of(node)) judge(meaning, random, seen);
        }
      }),
    ),
    { numRuns: 400, seed: 20261126 },
  );
  expect(seen["at odds"]).toBeGreaterThan(25);
  expect(seen.met).toBeGreaterThan(100);
}, 120_000);
