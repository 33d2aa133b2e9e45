/** What columns are taken for, by headers as people write them, over readings that hang together. */
import { beforeAll, describe, expect, test } from "vitest";
import { propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";
import { generatedShots, random } from "./generated-shots.ts";
import { HEADERS, type HeaderCase } from "./headers.ts";

let vocabulary: Vocabulary;
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

/** Tables in which no two columns mean the same, as few as will do. */
function tablesOf(cases: readonly HeaderCase[]): HeaderCase[][] {
  const tables: HeaderCase[][] = [];
  for (const each of cases) {
    const isFree = (table: readonly HeaderCase[]) => {
      const others = table.filter(([, meaning]) => meaning === each[1]).length;
      return each[1] === "nothing" ? others < 3 : others === 0;
    };
    const table = tables.find(isFree);
    if (table === undefined) tables.push([each]);
    else table.push(each);
  }
  return tables;
}

const clock = (time: number) => new Date(time * 1000).toISOString().slice(11, 19);

/** What stands in a cell, and which way the column is signed. */
function writer([, meaning, unit = ""]: HeaderCase, sign: number) {
  const factor =
    [...vocabulary.units.values()].flat().find(({ names }) => names.includes(unit))?.unit.factor ?? 1;
  const next = random(meaning.length + unit.length);
  return (shot: ReturnType<typeof generatedShots>[number], place: number): string => {
    switch (meaning) {
      case "club":
        return shot.club;
      case "block":
        return shot.block;
      case "player":
        return "P-07";
      case "date":
        return "2026-10-12";
      case "time":
        return clock(shot.time);
      case "order":
        return String(place + 1);
      case "shape":
        return shot.shape;
      case "nothing":
        return unit === "" ? (["good", "", "wet"][place % 3] ?? "") : (20 + 20 * next()).toFixed(1);
    }
    const value = (sign * (shot.values[meaning] ?? Number.NaN)) / factor;
    return value.toFixed(unit === "rpm" || unit === "mm" ? 0 : meaning === "smash-factor" ? 2 : 1);
  };
}

interface Outcome {
  readonly header: string;
  readonly expected: string;
  readonly found: string;
  readonly isUnitRight: boolean;
  /** Undefined where no sign was proposed. */
  readonly isSignRight: boolean | undefined;
}

function outcomes(seed: number): Outcome[] {
  const next = random(seed);
  return tablesOf(HEADERS).flatMap((cases) => {
    const shots = generatedShots(24, seed + cases.length, { path: 4 * next() - 2, face: 4 * next() - 2 });
    const signs = cases.map(([, meaning]) => {
      const isSided = (vocabulary.metrics.find(({ name }) => name === meaning)?.directions.length ?? 0) > 0;
      return isSided && meaning !== "launch-angle" && next() < 0.5 ? -1 : 1;
    });
    const cells = cases.map((each, place) => writer(each, signs[place] ?? 1));
    const rows = shots.map((shot, place) => cells.map((write) => write(shot, place)).join(";"));
    const text = `${cases.map(([header]) => header).join(";")}\n${rows.join("\n")}\n`;
    const { columns, failed } = propose([{ path: "shots.csv", content: text }], { vocabulary });
    expect(failed).toEqual([]);
    return cases.map(([header, expected, unit], place): Outcome => {
      const meaning = columns[place]?.meaning ?? null;
      const found = meaning === null ? "nothing" : "metric" in meaning ? meaning.metric : meaning.kind;
      const isMetric = meaning?.kind === "metric";
      const asksForUnit = columns[place]?.settle.some((question) => question.includes("unit")) === true;
      const proposed = isMetric
        ? vocabulary.metrics
            .find(({ name }) => name === meaning.metric)
            ?.directions.find(({ word }) => word === meaning.positive)
        : undefined;
      return {
        header,
        expected,
        found,
        isUnitRight: !isMetric || unit === undefined || meaning.unit.symbol === unit || asksForUnit,
        isSignRight: proposed === undefined ? undefined : proposed.sign === signs[place],
      };
    });
  });
}

describe("headers as people write them", () => {
  test("at least 95 of 100 are taken for what they are", () => {
    const all = outcomes(1);
    const wrong = all.filter(({ expected, found, isUnitRight }) => found !== expected || !isUnitRight);
    expect(all.length).toBeGreaterThanOrEqual(120);
    expect(wrong.length / all.length, JSON.stringify(wrong)).toBeLessThanOrEqual(0.05);
  });

  test("no sign is wrong, however columns are signed", () => {
    let proposed = 0;
    for (let seed = 1; seed <= 12; seed++) {
      for (const { header, isSignRight } of outcomes(seed)) {
        if (isSignRight !== undefined) proposed++;
        expect([seed, header, isSignRight]).not.toEqual([seed, header, false]);
      }
    }
    expect(proposed).toBeGreaterThan(0);
  });
});

/** What one column is taken for, above thirty readings of a metric in its shown unit. */
function taken(header: string, metric: string): string {
  const declared = vocabulary.metrics.find(({ name }) => name === metric);
  const rows = generatedShots(30, 5).map(({ values }) =>
    ((values[metric] ?? Number.NaN) / (declared?.unit.factor ?? 1)).toFixed(1),
  );
  const content = `${header};Remark\n${rows.map((cell) => `${cell};\n`).join("")}`;
  const { columns } = propose([{ path: "shots.csv", content }], { vocabulary });
  const meaning = columns[0]?.meaning ?? null;
  return meaning?.kind === "metric" ? meaning.metric : "nothing";
}

test.each([
  ["Launch angle (horizontal)", "start-direction"],
  ["Launch angle (vertical)", "launch-angle"],
  ["Launch Angle H", "start-direction"],
  ["Distance (carry) [yd]", "carry"],
  ["Distance (total) [yd]", "total"],
  ["Speed (ball) mph", "ball-speed"],
  ["Speed (club) mph", "club-speed"],
  ["Face (to path)", "face-to-path"],
  ["Ball mph", "ball-speed"],
  ["Club (mph)", "club-speed"],
  ["CHS mph", "club-speed"],
  ["Attack angle (AoA) [deg]", "attack-angle"],
  ["Carry (flat) [yd]", "carry"],
  ["Club speed (measured, mph)", "club-speed"],
])("what stands in brackets, or what the unit says, belongs to the name: %j is %s", (header, metric) => {
  expect(taken(header, metric)).toBe(metric);
});

test.each([
  ["Spin (side)", "spin-rate"],
  ["Wind mph", "club-speed"],
  ["Carry (target)", "carry"],
  ["Target carry (yd)", "carry"],
  ["Average ball speed (mph)", "ball-speed"],
  ["Ball speed (avg) mph", "ball-speed"],
  ["maxBallSpeedMph", "ball-speed"],
  ["Optimal carry [yd]", "carry"],
  ["Club speed change (mph)", "club-speed"],
  ["Spin efficiency", "spin-rate"],
  ["Time", "launch-angle"],
])("%j is no reading of a shot's %s", (header, metric) => {
  expect(taken(header, metric)).toBe("nothing");
});

test("a full stop behind the unit of a cell is no decimal point", () => {
  const content = `Carry;Path\n${Array.from({ length: 12 }, (_, at) => `${150 + at}.5 yd.;${at - 6}.0 deg.\n`).join("")}`;
  const { columns } = propose([{ path: "shots.csv", content }], { vocabulary });
  expect(columns.map(({ meaning }) => meaning)).toMatchObject([
    { metric: "carry", unit: { symbol: "yd" } },
    { metric: "club-path", unit: { symbol: "°" } },
  ]);
});

test("units with figures in them are units in a row of their own, too", () => {
  const content = `Ball speed;Carry\n[ms-1];[m]\n${Array.from({ length: 12 }, (_, at) => `${48 + at}.5;${140 + at}.0\n`).join("")}`;
  const { columns } = propose([{ path: "shots.csv", content }], { vocabulary });
  expect(columns.map(({ meaning, units }) => [meaning, units])).toMatchObject([
    [{ metric: "ball-speed", unit: { symbol: "m/s" } }, []],
    [{ metric: "carry", unit: { symbol: "m" } }, []],
  ]);
});

test("clubs are clubs where a number stands in every name", () => {
  const content = `Schläger;Carry (m)\n${Array.from({ length: 12 }, (_, at) => `Modell ${7 + (at % 2)};${140 + at}\n`).join("")}`;
  const { columns } = propose([{ path: "shots.csv", content }], { vocabulary });
  expect(columns[0]).toMatchObject({
    meaning: { kind: "club" },
    settle: [expect.stringContaining('"Modell 7"')],
  });
});
