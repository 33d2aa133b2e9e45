/** How often goals about the shots hit are called met, or missed, although the shots themselves say otherwise. */
import { meets } from "../../../language/criteria/condition.ts";
import { scoreSession } from "../../../server/scoring/score-session.ts";
import type { Shot } from "../../../shared/session-data.ts";
import { mean } from "../../../shared/statistics/summary.ts";
import { condition, metricCalled } from "../../criteria/words.ts";
import { data, input, instrument, plan } from "../../scoring/practice.ts";
import { type Random, random } from "./random.ts";

/** Twelve paths that scatter by 1.5°, read with 0.5° of scatter and 0.4° in common. */
const SHOTS = 12;
const SPREAD = 1.5;
const ACCURACY = { random: 0.5, systematic: 0.4 };
const UNIT = instrument(`club-path ${ACCURACY.random} random ${ACCURACY.systematic} systematic`);

const WITHIN = condition("club-path within ±2°");

/** A goal, and whether it was reached by the true paths. */
export interface Goal {
  readonly name: string;
  readonly text: string;
  readonly isReached: (truths: readonly boolean[], paths: readonly number[]) => boolean;
}

export const GOALS: readonly Goal[] = [
  {
    name: "at least 8 of 12",
    text: "at least 8 of 12 shots with club-path within ±2°",
    isReached: (truths) => truths.filter(Boolean).length >= 8,
  },
  {
    name: "at most 25 % of shots",
    text: "at most 25 % of shots with club-path above 2° right",
    isReached: (_, paths) => paths.filter((path) => path > 2).length <= 3,
  },
  {
    name: "4 in a row",
    text: "4 in a row with club-path within ±2°",
    isReached: (truths) => longestRun(truths) >= 4,
  },
  {
    name: "average within ±1°",
    text: "average club-path within ±1°",
    isReached: (_, paths) => Math.abs(mean(paths) ?? Number.NaN) <= 1,
  },
];

function longestRun(truths: readonly boolean[]): number {
  let longest = 0;
  let run = 0;
  for (const truth of truths) {
    run = truth ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** Of the sessions that were called so, the share in which it is wrong; and how many were called so. */
export interface Wrong {
  readonly met: number;
  readonly missed: number;
  readonly falselyMet: number;
  readonly falselyMissed: number;
}

/** @param level null where no instrument is stated */
export function wrongVerdicts(level: number | null, sessions: number): ReadonlyMap<string, Wrong> {
  const made = plan({ shots: SHOTS, success: GOALS.map(({ text }) => text) });
  const scoring = input(
    { ...made, decisionLevel: level ?? 0.95 },
    level === null ? {} : { instrument: UNIT },
  );
  const source = random(20_261_012);
  const counts = GOALS.map(() => ({ met: 0, missed: 0, falselyMet: 0, falselyMissed: 0 }));
  for (let session = 0; session < sessions; session++) {
    const { paths, shots } = sessionOf(source);
    const truths = paths.map((path) => isWithin(path));
    const report = scoreSession(scoring, data(shots), { version: "bench" });
    for (const [place, { verdict }] of (report.blocks[0]?.criteria ?? []).entries()) {
      const count = counts[place];
      if (count === undefined) continue;
      const isReached = GOALS[place]?.isReached(truths, paths) ?? false;
      if (verdict === "met") count.met++;
      if (verdict === "met" && !isReached) count.falselyMet++;
      if (verdict === "missed") count.missed++;
      if (verdict === "missed" && isReached) count.falselyMissed++;
    }
  }
  return new Map(
    GOALS.map(({ name }, place) => {
      const { met, missed, falselyMet, falselyMissed } = counts[place] ?? {
        met: 0,
        missed: 0,
        falselyMet: 0,
        falselyMissed: 0,
      };
      return [
        name,
        {
          met: met / sessions,
          missed: missed / sessions,
          falselyMet: falselyMet / met,
          falselyMissed: falselyMissed / missed,
        },
      ];
    }),
  );
}

function isWithin(degrees: number): boolean {
  const values = { "club-path": degrees * metricCalled("club-path").unit.factor };
  return meets(WITHIN, { values, categories: {}, club: null }, { hand: "right", level: null }) === true;
}

/** The aim differs from session to session, so that goals are reached in some and not in others. */
function sessionOf(source: Random): { readonly paths: number[]; readonly shots: Shot[] } {
  const aim = 4 * (source.uniform() - 0.5);
  const shared = ACCURACY.systematic * source.normal();
  const paths = Array.from({ length: SHOTS }, () => aim + SPREAD * source.normal());
  const shots = paths.map((path, index) => ({
    row: { file: "shots.csv", line: index + 2 },
    values: {
      "club-path":
        (path + shared + ACCURACY.random * source.normal()) * metricCalled("club-path").unit.factor,
    },
    categories: {},
    derived: [],
    club: null,
    time: null,
    block: "Gate",
    excluded: null,
  }));
  return { paths, shots };
}
