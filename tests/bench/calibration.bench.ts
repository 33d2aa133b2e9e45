/**
 * How often verdicts are wrong, by simulation: run with `node tests/bench/calibration.bench.ts [SESSIONS]`. It writes
 * `language/reference/calibration.md`. The sessions are the same in every run; of 4,000 the rates are known to about ±1 %.
 */
import { writeFileSync } from "node:fs";
import { GOALS, idOf, type Rates, type Readings, ratesOf } from "./calibration/ability.ts";
import { PLAYERS, type Player } from "./calibration/players.ts";
import { GOALS as GOALS_OF_SHOTS, wrongVerdicts } from "./calibration/shots-hit.ts";

const SESSIONS = Number(process.argv[2] ?? 4000);
const CONFIDENCES = [0.8, 0.9, 0.95];
const LEVELS = [0.8, 0.9, 0.95];

type Cells = readonly string[];

/** A table as the formatter of the project would leave it. */
function table(head: Cells, rows: readonly Cells[]): string {
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column]?.length ?? 0)));
  const line = (cells: Cells) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(" | ")} |`;
  return [line(head), line(widths.map((width) => "-".repeat(width))), ...rows.map(line)].join("\n");
}

const percent = (share: number) => (Number.isNaN(share) ? "–" : `${Math.round(100 * share)} %`);

/** `18 / 21 / 61`: called met, missed, undecided, in percent. */
function cell(rates: Rates | undefined): string {
  if (rates === undefined) return "–";
  return [rates.met, rates.missed, rates.undecided].map((rate) => Math.round(100 * rate)).join(" / ");
}

const atTheLimit = (player: Player, readings: Readings, confidences: readonly number[]) => {
  const rates = ratesOf(player, readings, confidences, SESSIONS);
  console.error(`${player.name}, ${readings}`);
  return rates;
};

const [normal, ...others] = PLAYERS;
if (normal === undefined) throw new Error("There is no player to simulate.");
const exact = atTheLimit(normal, "exact", CONFIDENCES);
const byConfidence = GOALS.map((goal) => [
  goal.name,
  String(goal.shots),
  ...CONFIDENCES.map((confidence) => cell(exact.get(idOf(goal, confidence)))),
]);

const scenarios = [
  ...others.map((player) => ({ name: player.name, rates: atTheLimit(player, "exact", [0.8]) })),
  {
    name: "instrument stated",
    rates: atTheLimit(normal, "off, and the instrument is stated", [0.8]),
  },
  { name: "not stated", rates: atTheLimit(normal, "off, and nothing is stated", [0.8]) },
];
const byScenario = GOALS.map((goal) => [
  goal.name,
  ...scenarios.map(({ rates }) => cell(rates.get(idOf(goal, 0.8)))),
]);

const exactShots = wrongVerdicts(null, SESSIONS);
const byLevel = LEVELS.map((level) => ({ level, wrong: wrongVerdicts(level, SESSIONS) }));
const shotsHit = GOALS_OF_SHOTS.map(({ name }) => [
  name,
  ...[exactShots, ...byLevel.map(({ wrong }) => wrong)].map((wrong) => {
    const {
      met = 0,
      missed = 0,
      falselyMet = Number.NaN,
      falselyMissed = Number.NaN,
    } = wrong.get(name) ?? {};
    const open = Math.round(100 * (1 - met - missed));
    return `${percent(falselyMet).replace(" %", "")} / ${percent(falselyMissed).replace(" %", "")} / ${open}`;
  }),
]);

const page = `## How often verdicts are wrong

Measured by simulation, ${SESSIONS.toLocaleString("en")} sessions each, the same in every run. Rates are known to about ±1 %.

**Ability.** A confidence promises that a goal is called met while it is false, or missed while it is true, at most so often: at 80 % in 20 of 100 sessions. Mistakes are most likely where the player is exactly at the limit, so that is where they were counted. Each cell: called met / called missed / undecided, in percent of the sessions. At the limit each of the first two is to be no more than what the confidence allows.

${table(["goal", "shots", ...CONFIDENCES.map((confidence) => `at ${confidence * 100} %`)], byConfidence)}

The promise is exact for shots that are normally distributed and independent. At 80 % confidence, where they are not, and where readings are off by 2 yd from shot to shot and 1.5 yd in common while the shots scatter by 6 yd:

${table(["goal", ...scenarios.map(({ name }) => name)], byScenario)}

Skewed: skewness 1. One wild in ten: with three times the spread. Drifting: by one standard deviation from the first shot to the last. Following on: each shot resembles the one before by 0.3. A spread and an ellipse do not forgive wild shots, an average does not forgive shots that follow on: the report cautions about both where they show. With the instrument stated, averages, spreads, shares and changes of them take it into account; percentiles, medians and ellipses do not, and say so.

**Shots hit, with readings that may be off.** Twelve shots that scatter by 1.5°, read with 0.5° of scatter and 0.4° in common, with an aim that differs from session to session. Each cell: of the sessions called met those in which the shots did not reach the goal / of those called missed those in which they did / undecided, in percent. The promise of a level is about the readings alone, as if nothing were known beforehand: where most shots hit, a reading outside is wrong more often than one inside, so "missed" errs somewhat more than "met".

${table(["goal", "taken as exact", ...LEVELS.map((level) => `decided at ${level * 100} %`)], shotsHit)}
`;

writeFileSync(new URL("../../language/reference/calibration.md", import.meta.url), page);
console.log(page);
