/**
 * How long scoring takes in the process, without reading files: run with `node tests/bench/scoring.bench.ts`.
 * It prints medians and decides nothing. The figures should grow with shots times criteria.
 */
import { scoreSession } from "../../server/scoring/score-session.ts";
import type { Shot } from "../../shared/session-data.ts";
import { metricCalled } from "../criteria/words.ts";
import { data, input, instrument, plan } from "../scoring/practice.ts";

const RUNS = 21;
const WARM_UP = 5;

/** What nothing is stated of is exact; else own errors only, or errors in common as well. */
const ACCURACIES = {
  exact: undefined,
  "own errors": instrument("club-path 0.4 random", "face-to-path 0.5 random", "carry 2 random"),
  "errors in common": instrument(
    "club-path 0.4 random 0.3 systematic",
    "face-to-path 0.5 random 0.3 systematic",
    "carry 2 random 1.5 systematic",
  ),
};

for (const [shots, criteria, accuracy] of [
  [200, 20, "exact"],
  [10_000, 30, "exact"],
  [60, 20, "own errors"],
  [60, 20, "errors in common"],
] as const) {
  const session = data(shotsOf(shots));
  const unit = ACCURACIES[accuracy];
  const scoring = input(
    plan({
      shots,
      target: ["club-path within 2° of 1° in-to-out", "face-to-path within ±2°"],
      require: "attack-angle between 6° down and 2° down",
      leaveOut: "smash-factor below 1.15",
      success: Array.from({ length: criteria }, (_, index) => goal(index, shots)),
    }),
    unit === undefined ? {} : { instrument: unit },
  );
  const times = Array.from({ length: WARM_UP + RUNS }, () => {
    // Of this thread: what else the machine does is not counted.
    const start = process.threadCpuUsage();
    scoreSession(scoring, session, { version: "bench" });
    const { user, system } = process.threadCpuUsage(start);
    return (user + system) / 1000;
  }).slice(WARM_UP);
  const median = times.toSorted((a, b) => a - b)[Math.floor(RUNS / 2)] ?? Number.NaN;
  console.log(
    `${shots} shots, ${criteria} criteria, ${accuracy}: ${median.toFixed(2)} ms (median of ${RUNS})`,
  );
}

/** Every kind of criterion in turn. */
function goal(index: number, shots: number): string {
  const goals = [
    `at least ${Math.floor(shots / 2)} of ${shots} shots on target`,
    "at least 40 % of shots with carry at least 150 yd; offline within ±10 yd",
    "at least 30 % of shots on target at 80 % confidence",
    "4 in a row with club-path within ±2°",
    "average club-path between 1° out-to-in and 3° in-to-out at 90 % confidence",
    "median carry at least 148 yd",
    "spread of offline at most 9 yd",
    "90th percentile of carry at least 155 yd",
    "middle 80 % of carry spans at most 30 yd",
    "area of the 80 % ellipse of offline and carry at most 900 yd²",
    `any of { at least ${Math.floor(shots / 3)} of ${shots} shots on target / average carry at least 140 yd }`,
    `at most ${shots} full-effort swings`,
  ];
  return goals[index % goals.length] ?? "";
}

/** Scattered readings from a fixed sequence: the same shots in every run. */
function shotsOf(count: number): Shot[] {
  let state = 1;
  const scatter = (centre: number, width: number, metric: string) => {
    state = (state * 48_271) % 2_147_483_647;
    return (centre + width * (state / 2_147_483_647 - 0.5)) * metricCalled(metric).unit.factor;
  };
  return Array.from({ length: count }, (_, index) => ({
    row: { file: "shots.csv", line: index + 2 },
    values: {
      "club-path": scatter(1, 6, "club-path"),
      "face-to-path": scatter(0, 5, "face-to-path"),
      "attack-angle": scatter(-4, 5, "attack-angle"),
      "smash-factor": scatter(1.35, 0.3, "smash-factor"),
      carry: scatter(150, 30, "carry"),
      offline: scatter(0, 30, "offline"),
    },
    categories: {},
    derived: [],
    club: null,
    time: null,
    block: "Gate",
    excluded: null,
  }));
}
