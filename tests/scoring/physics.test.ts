/** Geometry and the flight model between the tables and the verdicts, from text to report. */
import { describe, expect, test } from "vitest";
import { COEFFICIENTS } from "../../server/flight/coefficients.ts";
import { fly } from "../../server/flight/fly.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import { drillwright, folderWith } from "../cli/command-line.ts";
import { draw, randomFrom } from "../support/generator.ts";

const DEGREE = Math.PI / 180;
const RPM = (2 * Math.PI) / 60;

const PLAN = `plan "Distance" {
  for 5-iron

  block "Hit" test {
    30 shots
    success {
      carry stays within 4 m against session "Still"
      standard-carry stays within 4 m against session "Still"
    }
  }
}

player "P-41" {
  right-handed
}

source "Table" {
  column "Ball" is ball-speed in m/s
  column "Launch" is launch-angle in ° positive up
  column "Start" is start-direction in ° positive right
  column "Spin" is spin-rate in rpm
  column "Axis" is spin-axis in ° positive right
  column "Carry" is carry in m
}

session "Still" {
  plan "Distance"
  player "P-41"
  date 2026-10-05
  data "still.csv" from "Table"
  wind calm
  temperature 15 °C
  altitude 0 m
  humidity 0 %
  ball "new" carries 100 %
}

session "Windy" {
  plan "Distance"
  player "P-41"
  date 2026-10-12
  data "windy.csv" from "Table"
  wind 5 m/s head
  temperature 15 °C
  altitude 0 m
  humidity 0 %
  ball "new" carries 100 %
}
`;

/** Thirty shots of one and the same swing, flown in a wind along the target line (m/s, tail positive). */
function shots(seed: number, along: number): string {
  const random = randomFrom(seed);
  const surroundings = { ...REFERENCE, wind: { along, across: 0, exponent: 0 } };
  const rows = Array.from({ length: 30 }, () => {
    const [ball, launch, start, spin, axis] = [
      draw([53, 0.8], random),
      draw([15, 0.8], random),
      draw([0, 1], random),
      draw([5200, 250], random),
      draw([0, 3], random),
    ] as const;
    const { carry } = fly(
      {
        ballSpeed: ball,
        launchAngle: launch * DEGREE,
        startDirection: start * DEGREE,
        spinRate: spin * RPM,
        spinAxis: axis * DEGREE,
      },
      surroundings,
      COEFFICIENTS.ss94_flat,
    );
    return [ball, launch, start, spin, axis, carry].map((value) => value.toFixed(4)).join(",");
  });
  return `Ball,Launch,Start,Spin,Axis,Carry\n${rows.join("\n")}\n`;
}

async function report(text: string, windy = shots(6, -5)): Promise<ScoreReport> {
  const folder = folderWith({ "plan.drill": text, "still.csv": shots(5, 0), "windy.csv": windy });
  const { stdout, stderr } = await drillwright(folder, [
    ..."score plan.drill --session Windy --format json".split(" "),
  ]);
  const reports = JSON.parse(stdout) as { reports: ScoreReport[] };
  const [first] = reports.reports;
  if (first === undefined) throw new Error(stderr);
  return first;
}

const goalsOf = ({ blocks }: ScoreReport) =>
  blocks.flatMap(({ criteria }) =>
    criteria.map(({ verdict, evidence }) => ({ verdict, isEstimate: evidence.isEstimate })),
  );

test("a headwind moves the carry, and the standard carry not: it is an estimate, and says so", async () => {
  const windy = await report(PLAN);
  expect(goalsOf(windy)).toEqual([
    { verdict: "missed", isEstimate: false },
    { verdict: "met", isEstimate: true },
  ]);
  expect(windy.notes.join("\n")).toMatch(/standard-carry is an estimate of the flight model for 30 shots/);
});

test("without the wind and the air nothing is estimated, and the reason is said", async () => {
  const bare = PLAN.replaceAll(/^ {2}(wind|temperature|altitude|humidity|ball) .*\n/gm, "");
  const windy = await report(bare);
  expect(goalsOf(windy)[1]).toEqual({ verdict: "not-measured", isEstimate: false });
  expect(windy.notes.join("\n")).toMatch(/standard-carry could not be estimated for 30 shots: /);
});

describe("readings that do not fit what the model makes of the others", () => {
  /** The windy shots, the carry of some made so many times as long. */
  const stretched = (factor: number, isWrong: (shot: number) => boolean) => {
    const [head = "", ...rows] = shots(6, -5).trim().split("\n");
    const changed = rows.map((row, shot) => {
      const cells = row.split(",");
      const carry = Number(cells.pop()) * (isWrong(shot) ? factor : 1);
      return [...cells, carry.toFixed(1)].join(",");
    });
    return `${[head, ...changed].join("\n")}\n`;
  };

  test("are none where shots flew as they were launched", async () => {
    expect((await report(PLAN)).findings).toEqual([]);
  });

  test("are pointed at in their rows", async () => {
    const { findings } = await report(
      PLAN,
      stretched(1.6, (shot) => shot === 3),
    );
    expect(findings).toEqual([
      {
        code: "value-inconsistent",
        severity: "warning",
        file: "windy.csv",
        line: 5,
        column: null,
        text: null,
        message: expect.stringMatching(
          /^carry is 2\d\d yd; ball-speed, launch-angle, start-direction, spin-rate and spin-axis by the flight model, an estimate, make it 1\d\d yd to 1\d\d yd\. A ball that flies unlike a new one does that, .* It is kept as it was read\.$/,
        ),
      },
    ]);
  });

  test("are told once where they are many: then it is the table, or the air", async () => {
    const { findings } = await report(
      PLAN,
      stretched(1.6, (shot) => shot % 2 === 0),
    );
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ line: null, severity: "warning" });
    expect(findings[0]?.message).toMatch(
      /^carry does not fit the other readings at 15 of 30 shots, so that .* At line 2, carry is /,
    );
  });

  test("are told of the shots that have such a reading", async () => {
    const half = stretched(1.6, (shot) => shot % 2 === 0);
    const [head, ...rows] = half.split("\n");
    const fewer = rows.map((row, shot) => (shot % 6 === 1 ? row.replace(/,[^,]+$/, ",") : row));
    const { findings } = await report(PLAN, [head, ...fewer].join("\n"));
    expect(findings.map(({ message }) => message)).toContainEqual(
      expect.stringMatching(/^carry does not fit the other readings at 15 of 25 shots, /),
    );
  });

  test("are none of a range ball that carries as short as the session says", async () => {
    const short = stretched(0.75, () => true);
    expect((await report(PLAN, short)).findings).toHaveLength(1);
    expect((await report(PLAN.replaceAll("carries 100 %", "carries 75 %"), short)).findings).toEqual([]);
  });
});
