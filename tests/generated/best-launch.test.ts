/** The table of best launches, searched anew. */
import { expect, test } from "vitest";
import { bestLaunch } from "../../server/flight/best-launch.ts";
import { COEFFICIENTS, type CoefficientSet } from "../../server/flight/coefficients.ts";
import { DEGREE } from "../../server/flight/constants.ts";

const BALL_SPEEDS = { from: 24, step: 3, count: 25 };
const ATTACK_ANGLES = { from: -12.5, step: 2.5, count: 10 };

test("the table of best launches is what a search finds", async () => {
  const sets = Object.keys(COEFFICIENTS) as CoefficientSet[];
  const module = [
    "// Written by tests/generated/best-launch.test.ts. Do not edit.",
    "",
    "/** Ball speeds in m/s, attack angles in degrees, carry in m, spin loft in degrees: a line for each ball speed. */",
    "export const BEST_LAUNCHES = {",
    `  ballSpeeds: ${axis(BALL_SPEEDS)},`,
    `  attackAngles: ${axis(ATTACK_ANGLES)},`,
    ...sets.flatMap(tablesOf),
    "};",
    "",
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../server/flight/best-launch-table.ts");
});

function tablesOf(set: CoefficientSet): string[] {
  const best = values(BALL_SPEEDS).map((ballSpeed) =>
    values(ATTACK_ANGLES).map((attack) => bestLaunch({ ballSpeed }, attack * DEGREE, COEFFICIENTS[set])),
  );
  return [
    `  ${set}: {`,
    ...table(
      "carry",
      best.map((line) => line.map(({ carry }) => carry.toFixed(3))),
    ),
    ...table(
      "spinLoft",
      best.map((line) => line.map(({ spinLoft }) => ((spinLoft ?? Number.NaN) / DEGREE).toFixed(2))),
    ),
    "  },",
  ];
}

function table(name: string, lines: string[][]): string[] {
  const rows = lines.map((line) => `      [${line.map((cell) => String(Number(cell))).join(", ")}],`);
  return ["    // biome-ignore format: a table", `    ${name}: [`, ...rows, "    ],"];
}

function values({ from, step, count }: typeof BALL_SPEEDS): number[] {
  return Array.from({ length: count }, (_, index) => from + index * step);
}

function axis({ from, step, count }: typeof BALL_SPEEDS): string {
  return `{ from: ${from}, step: ${step}, count: ${count} }`;
}
