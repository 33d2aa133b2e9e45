/** How often goals about ability are called met while they are false, or missed while they are true. */
import { scoreSession } from "../../../server/scoring/score-session.ts";
import type { CriterionResult } from "../../../shared/score-report.ts";
import type { Shot } from "../../../shared/session-data.ts";
import { data, input, instrument, plan } from "../../scoring/practice.ts";
import type { Player } from "./players.ts";
import { type Random, random } from "./random.ts";

/** In yards: what the readings scatter by themselves, and what all readings of a session are off together. */
const ACCURACY = { random: 2, systematic: 1.5 };
const UNIT = instrument(
  `carry ${ACCURACY.random} random ${ACCURACY.systematic} systematic`,
  `offline ${ACCURACY.random} random ${ACCURACY.systematic} systematic`,
);

export type Readings = "exact" | "off, and the instrument is stated" | "off, and nothing is stated";

/** Carries of a player: 150 yd on average, with a standard deviation of 6 yd; the line is missed by 6 yd. */
const AIM = 150;
const SPREAD = 6;

/** What is true of a player in the long run, in standard deviations. */
interface Truth {
  readonly median: number;
  readonly thirtieth: number;
  readonly ninetieth: number;
}

const MANY = 200_000;

function truthOf(player: Player, size: number): Truth {
  const source = random(99);
  const shots = Array.from({ length: Math.ceil(MANY / size) }, () => player.shots(source, size)).flat();
  const sorted = Float64Array.from(shots).sort();
  const at = (share: number) => sorted[Math.floor(share * sorted.length)] ?? Number.NaN;
  return { median: at(0.5), thirtieth: at(0.3), ninetieth: at(0.9) };
}

/** A goal whose claim is exactly at the limit between true and false, where mistakes are most likely. */
export interface Goal {
  readonly name: string;
  readonly shots: number;
  readonly block: "Short" | "Long" | "After";
  readonly text: (truth: Truth, sure: string) => string;
}

const yards = (deviations: number) => (AIM + SPREAD * deviations).toFixed(9);

export const GOALS: readonly Goal[] = [
  {
    name: "share of 70 %",
    shots: 30,
    block: "Long",
    text: ({ thirtieth }, sure) => `at least 70 % of shots with carry at least ${yards(thirtieth)} yd${sure}`,
  },
  {
    name: "average, one limit",
    shots: 12,
    block: "Short",
    text: (_, sure) => `average carry at least ${yards(0)} yd${sure}`,
  },
  {
    name: "average, narrow range",
    shots: 12,
    block: "Short",
    text: (_, sure) => `average carry within 2 yd of ${AIM - 2} yd${sure}`,
  },
  {
    name: "median",
    shots: 12,
    block: "Short",
    text: ({ median }, sure) => `median carry at least ${yards(median)} yd${sure}`,
  },
  {
    name: "90th percentile",
    shots: 30,
    block: "Long",
    text: ({ ninetieth }, sure) => `90th percentile of carry at most ${yards(ninetieth)} yd${sure}`,
  },
  {
    name: "spread",
    shots: 12,
    block: "Short",
    text: (_, sure) => `spread of carry at most ${SPREAD} yd${sure}`,
  },
  {
    name: "area of the 80 % ellipse",
    shots: 12,
    block: "Short",
    // π·χ²·sd·sd, where χ² with two degrees of freedom exceeds 3.2189 once in five times.
    text: (_, sure) =>
      `area of the 80 % ellipse of offline and carry at most ${(Math.PI * 3.218875824868201 * SPREAD * SPREAD).toFixed(9)} yd²${sure}`,
  },
  {
    name: "change of average",
    shots: 12,
    block: "After",
    text: (_, sure) => `carry gains 5 yd against "Short"${sure}`,
  },
  {
    name: "change of median",
    shots: 12,
    block: "After",
    text: (_, sure) => `median carry gains 5 yd against "Short"${sure}`,
  },
  {
    name: "change of spread",
    shots: 12,
    block: "After",
    text: (_, sure) => `spread of offline falls by at least 20 % against "Short"${sure}`,
  },
  {
    name: "any of two averages",
    shots: 12,
    block: "Short",
    text: (_, sure) =>
      `any of { average carry at least ${yards(0)} yd${sure} / average offline at least 0 yd right${sure} }`,
  },
];

export interface Rates {
  readonly met: number;
  readonly missed: number;
  readonly undecided: number;
}

/** For each goal and confidence how often it was called what. */
export function ratesOf(
  player: Player,
  readings: Readings,
  confidences: readonly number[],
  sessions: number,
): ReadonlyMap<string, Rates> {
  const counts = new Map<string, { met: number; missed: number }>();
  const scoring = planFor(player, confidences);
  const source = random(20_261_012);
  for (let session = 0; session < sessions; session++) {
    const shots = sessionOf(player, readings, source);
    const stated = readings === "off, and the instrument is stated" ? { instrument: UNIT } : {};
    const report = scoreSession(input(scoring, stated), data(shots), { version: "bench" });
    for (const { id, verdict } of report.blocks.flatMap(({ criteria }) => criteria) as CriterionResult[]) {
      const count = counts.get(id) ?? { met: 0, missed: 0 };
      if (verdict === "met") count.met++;
      if (verdict === "missed") count.missed++;
      counts.set(id, count);
    }
  }
  return new Map(
    [...counts].map(([id, { met, missed }]) => [
      id,
      { met: met / sessions, missed: missed / sessions, undecided: 1 - (met + missed) / sessions },
    ]),
  );
}

/** The id under which a goal at a confidence stands in the rates. */
export function idOf(goal: Goal, confidence: number): string {
  return `${goal.name} ${confidence}`;
}

function planFor(player: Player, confidences: readonly number[]) {
  const truths = { Short: truthOf(player, 12), After: truthOf(player, 12), Long: truthOf(player, 30) };
  const sizes = { Short: 12, After: 12, Long: 30 };
  const blocks = (["Short", "After", "Long"] as const).map((name) => {
    const goals = GOALS.filter(({ block }) => block === name).flatMap((goal) =>
      confidences.map((confidence) => ({
        id: idOf(goal, confidence),
        text: goal.text(truths[name], ` at ${confidence * 100} % confidence`),
      })),
    );
    return { words: { name, shots: sizes[name], success: goals.map(({ text }) => text) }, goals };
  });
  const made = plan(...blocks.map(({ words }) => words));
  return {
    ...made,
    blocks: made.blocks.map((block, place) => ({
      ...block,
      success: block.success.map((criterion, index) => ({
        ...criterion,
        id: blocks[place]?.goals[index]?.id ?? criterion.id,
      })),
    })),
  };
}

function sessionOf(player: Player, readings: Readings, source: Random): Shot[] {
  const isOff = readings !== "exact";
  const shared = {
    carry: isOff ? ACCURACY.systematic * source.normal() : 0,
    offline: isOff ? ACCURACY.systematic * source.normal() : 0,
  };
  const read = (value: number, metric: keyof typeof shared) =>
    (value + (isOff ? shared[metric] + ACCURACY.random * source.normal() : 0)) * 0.9144;
  let line = 1;
  const block = (name: string, count: number, gain: number, spread: number): Shot[] => {
    const carries = player.shots(source, count);
    const sides = player.shots(source, count);
    return carries.map((carry, shot) => ({
      row: { file: "shots.csv", line: ++line },
      values: {
        carry: read(AIM + gain + SPREAD * carry, "carry"),
        offline: read(SPREAD * spread * (sides[shot] ?? 0), "offline"),
      },
      categories: {},
      derived: [],
      club: null,
      time: null,
      block: name,
      excluded: null,
    }));
  };
  return [...block("Short", 12, 0, 1), ...block("After", 12, 5, 0.8), ...block("Long", 30, 0, 1)];
}
