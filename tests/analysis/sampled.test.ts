/** What is called impossible is not hit by any of thousands of shots, which are judged as scoring judges them. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { conflictsIn } from "../../language/analysis/possibility/block-conflicts.ts";
import { demandsOf } from "../../language/analysis/possibility/demand.ts";
import { goalConflictsIn } from "../../language/analysis/possibility/goal-conflicts.ts";
import { idleGoals } from "../../language/analysis/possibility/idle-goals.ts";
import { redundantLines } from "../../language/analysis/possibility/redundancy.ts";
import type { Remark } from "../../language/analysis/subject.ts";
import { type Meaning, Meanings } from "../../language/checks/meanings.ts";
import { Memory } from "../../language/checks/remembered.ts";
import { isPlan } from "../../language/generated/tree/ast.ts";
import { claimOf, meets, type PlayerTraits, type Readings } from "../../shared/condition.ts";
import type { Condition, Location } from "../../shared/plan-model.ts";
import { isInside } from "../../shared/statistics/interval.ts";
import { services, withChecked } from "../checks/checked-files.ts";
import { randomNumbers, shotsAround } from "./shots.ts";

const SHOTS = 150;

const whole = (min: number, max: number) => fc.integer({ min, max });

/** A range of a metric: its unit, amounts from … to, and its direction words. */
const rangeOf = (unit: string, min: number, max: number, words?: fc.Arbitrary<string>) => {
  const amount = fc
    .tuple(whole(min, max), words ?? fc.constant(""))
    .map(([value, word]) => `${value}${unit}${word === "" ? "" : ` ${word}`}`);
  return fc.oneof(
    amount.map((limit) => `at least ${limit}`),
    amount.map((limit) => `at most ${limit}`),
    fc.tuple(amount, amount).map(([one, other]) => `between ${one} and ${other}`),
    fc.tuple(whole(1, 4), amount).map(([width, middle]) => `within ${width}${unit} of ${middle}`),
  );
};

const sides = (...words: readonly string[]) => fc.constantFrom(...words);

/** Metrics that hang together, so that blocks are often in conflict and often are not. */
const FAMILIES = [
  fc.oneof(
    rangeOf("°", 0, 6, sides("in-to-out", "out-to-in", "left", "right")).map((range) => `club-path ${range}`),
    rangeOf("°", 0, 6, sides("open", "closed", "left", "right")).map((range) => `face-angle ${range}`),
    rangeOf("°", 0, 6, sides("open", "closed", "left", "right")).map((range) => `face-to-path ${range}`),
    sides('inside "Neutral"', 'outside "Neutral"'),
  ),
  fc.oneof(
    rangeOf(" mph", 70, 120).map((range) => `club-speed ${range}`),
    rangeOf(" mph", 90, 170).map((range) => `ball-speed ${range}`),
    sides("at least 1.3", "at most 1.4", "at least 1.5", "between 1.3 and 1.45").map(
      (range) => `smash-factor ${range}`,
    ),
  ),
  fc.oneof(
    rangeOf(" yd", 20, 180).map((range) => `carry ${range}`),
    rangeOf(" yd", 20, 180).map((range) => `total ${range}`),
    rangeOf(" yd", 0, 30).map((range) => `roll ${range}`),
    rangeOf(" yd", 0, 40, sides("left", "right")).map((range) => `offline ${range}`),
  ),
  fc.oneof(
    rangeOf(" yd", 0, 20, sides("draw", "fade", "left", "right")).map((range) => `curve ${range}`),
    rangeOf("°", 0, 4, sides("left", "right")).map((range) => `start-direction ${range}`),
    rangeOf("°", 0, 4, sides("push", "pull")).map((range) => `start-side ${range}`),
    rangeOf(" yd", 0, 20, sides("left", "right")).map((range) => `offline ${range}`),
    sides("at least 100 yd", "between 140 yd and 160 yd").map((range) => `carry ${range}`),
    fc
      .subarray(["straight", "draw", "fade", "hook", "push", "pull-fade"], { minLength: 1, maxLength: 2 })
      .map((names) => `shape is ${names.join(" or ")}`),
  ),
];

const block = fc.constantFrom(...FAMILIES).chain((tests) => {
  const condition = fc.oneof(
    { weight: 5, arbitrary: tests },
    { weight: 1, arbitrary: fc.tuple(tests, tests).map((both) => both.join(" and ")) },
    { weight: 1, arbitrary: fc.tuple(tests, tests).map((either) => either.join(" or ")) },
  );
  const line = fc
    .tuple(sides("target", "target", "require", "require", "leave out shots where"), condition)
    .map(([keyword, asked]) => `    ${keyword} ${asked}`);
  const average = tests.filter((asked) => !/^(shape|inside|outside)/.test(asked));
  const goal = fc.oneof(
    condition.map((asked) => `    success at least 3 of 10 shots with ${asked}`),
    condition.map((asked) => `    success at most 3 of 10 shots with ${asked}`),
    average.map((asked) => `    success average ${asked}`),
  );
  return fc.tuple(
    fc.array(line, { minLength: 1, maxLength: 5 }),
    fc.array(goal, { minLength: 1, maxLength: 2 }),
  );
});

const plan = block.map(
  ([lines, goals]) => `window "Neutral" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path within 2° of 4° in-to-out
}

plan "Gate" {
  block "Start" {
    5 shots with 7-iron
    5 shots with driver
${[...lines, ...goals].join("\n").replaceAll("with inside", "inside").replaceAll("with outside", "outside")}
  }
}
`,
);

/** Holds what is said of a block against shots, and counts what was seen. */
function judge(meaning: Meaning, random: () => number, seen: Record<string, number>): void {
  const { block, vocabulary } = meaning;
  const note = (what: string) => {
    seen[what] = (seen[what] ?? 0) + 1;
  };
  const demands = demandsOf(meaning);
  const conditions = demands.map(({ condition }) => condition);
  const goals: Condition[] = block.success.flatMap((goal) => {
    if ("subject" in goal && goal.subject.kind === "meeting") return [goal.subject.condition];
    if (goal.kind !== "statistic") return [];
    return [{ anyOf: [{ allOf: [{ kind: "number", metric: goal.metric, bounds: goal.bounds }] }] }];
  });
  const players: PlayerTraits[] = [
    { hand: "right", level: null },
    { hand: "left", level: null },
  ];
  const conflicts = conflictsIn(meaning);
  const needless = redundantLines(meaning);
  const impossible = goalConflictsIn(meaning);
  const idle = idleGoals(meaning);
  let hasShot = false;

  for (const player of players) {
    for (const club of ["7-iron", "driver"]) {
      for (const shot of shotsAround([...conditions, ...goals], player, club, vocabulary, SHOTS, random)) {
        const does = (asked: (typeof demands)[number]) =>
          meets(asked.condition, shot, player) === asked.truth;
        hasShot ||= demands.every(does);
        for (const { demands: some, circumstances } of conflicts) {
          const concerns = circumstances.some((at) => at.hand === player.hand && (at.club ?? club) === club);
          if (concerns) expect(some.every(does), lines(some, shot)).toBe(false);
        }
        for (const remark of needless) {
          const by = demands.filter(({ location }) => isAmong(location, remark));
          const [demand] = demands.filter(({ location }) => location === remark.location);
          if (by.every(does)) expect(demand && does(demand), lines(by, shot)).toBe(true);
        }
        for (const { goal, remark, concernsAll } of impossible) {
          if (
            goal.kind !== "count" ||
            goal.bound !== "least" ||
            goal.subject.kind !== "meeting" ||
            !concernsAll
          )
            continue;
          const by = demands.filter(({ location }) => isAmong(location, remark));
          if (by.every(does))
            expect(meets(goal.subject.condition, shot, player), lines(by, shot)).toBe(false);
        }
        for (const remark of idle) checkIdle(remark, shot, player);
      }
    }
  }
  for (const conflict of conflicts)
    note(conflict.demands.length > 2 ? "conflict of several lines" : "conflict");
  if (needless.length > 0) note("needless line");
  if (impossible.length > 0) note("impossible goal");
  if (idle.length > 0) note("idle goal");
  if (hasShot) note("possible");

  function checkIdle(remark: Remark, shot: Readings, player: PlayerTraits): void {
    const idleGoal = block.success.find(({ location }) => location === remark.location);
    const by = demands.filter(({ location }) => isAmong(location, remark));
    const isGiven = by.every((asked) => meets(asked.condition, shot, player) === asked.truth);
    if (!isGiven || idleGoal === undefined) return;
    if (idleGoal.kind === "statistic") {
      const { interval, slack } = claimOf(idleGoal.bounds, player.hand);
      expect(isInside(shot.values[idleGoal.metric] ?? Number.NaN, interval, slack)).toBe(true);
    } else if (idleGoal.kind === "count" && idleGoal.subject.kind === "meeting") {
      expect(meets(idleGoal.subject.condition, shot, player)).toBe(idleGoal.bound === "least");
    }
  }
}

function isAmong(location: Location, { related }: Remark): boolean {
  return related.some((other) => other.location === location);
}

function lines(demands: readonly { text: string }[], { values }: Readings): string {
  return `${demands.map(({ text }) => text).join("\n")}\n${JSON.stringify(values)}`;
}

test("no shot does what is called impossible", async () => {
  const seen: Record<string, number> = {};
  const random = randomNumbers(20261126);
  await fc.assert(
    fc.asyncProperty(plan, (text) =>
      withChecked(text, {}, ({ document }) => {
        if (document.parseResult.parserErrors.length > 0) return; // `shape is draw or carry …`
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
  // Every kind of thing was said often enough to be held against shots, and possible blocks were found to be possible.
  for (const what of ["possible", "conflict", "conflict of several lines", "needless line"]) {
    expect(seen[what], what).toBeGreaterThan(10);
  }
  expect(seen["impossible goal"]).toBeGreaterThan(10);
  expect(seen["idle goal"]).toBeGreaterThan(3);
}, 120_000);
