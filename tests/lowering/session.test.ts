/** What instruments, players and sessions come to: standard uncertainties, SI, target frame. */
import { describe, expect, test } from "vitest";
import { lowered } from "./lowered.ts";

const DEGREE = Math.PI / 180;
const YARD = 0.9144;

async function instrument(...lines: readonly string[]) {
  const { instruments } = await lowered(`instrument "Bay unit" {\n  ${lines.join("\n  ")}\n}\n`);
  return instruments[0]?.uncertainties ?? [];
}

describe("the figures of an instrument as standard uncertainties", () => {
  const READS = "reads carry within 3 yd random and 1.5 yd systematic";

  // z(97.5 %) and z(75 %) from a table of the normal law; limits are those of a uniform one.
  test.each([
    ["coverage 95 %", 1.959964],
    ["coverage 50 %", 0.67449],
    ["coverage factor 2", 2],
    ["coverage limits", 1.7320508],
    ["", 1],
  ])("%s", async (coverage, divisor) => {
    const [carry] = await instrument(coverage, READS);
    expect(carry?.random).toBeCloseTo((3 * YARD) / divisor, 5);
    expect(carry?.systematic).toBeCloseTo((1.5 * YARD) / divisor, 5);
  });

  test("a part that is not stated is zero", async () => {
    const lines = await instrument(
      "coverage factor 1",
      "reads club-path within 0.4° random for 7-iron, driver",
      "reads face-angle within 0.3° systematic",
    );
    expect(lines).toMatchObject([
      { metric: "club-path", systematic: 0, clubs: ["7-iron", "driver"] },
      { metric: "face-angle", random: 0, clubs: [] },
    ]);
    expect(lines[0]?.random).toBeCloseTo(0.4 * DEGREE, 12);
    expect(lines[1]?.systematic).toBeCloseTo(0.3 * DEGREE, 12);
  });
});

describe("a player's usual numbers", () => {
  const usual = async (hand: string) => {
    const { players } = await lowered(`player "P-07" {
  ${hand}
  usual club-path 2° out-to-in
  usual start-direction 3° right
  usual carry 150 yd spread 6 yd with 7-iron over 60 shots
}
`);
    return players[0];
  };

  test.each([
    ["right-handed", "right", -2],
    ["left-handed", "left", 2],
    ["", null, -2],
  ])("%s: what mirrors with the hand is mirrored", async (words, hand, path) => {
    const player = await usual(words);
    const [club, start] = player?.usual ?? [];
    expect(player?.hand).toBe(hand);
    expect(club?.value).toBeCloseTo(path * DEGREE, 12);
    expect(start?.value).toBeCloseTo(3 * DEGREE, 12);
  });

  test("with their spread, club and number of shots, where they are stated", async () => {
    const [path, , carry] = (await usual("right-handed"))?.usual ?? [];
    expect(path).toMatchObject({ spread: null, shots: null, club: null });
    expect(carry).toMatchObject({ metric: "carry", shots: 60, club: "7-iron" });
    expect(carry?.value).toBeCloseTo(150 * YARD, 12);
    expect(carry?.spread).toBeCloseTo(6 * YARD, 12);
  });
});

describe("a session", () => {
  const session = async (...lines: readonly string[]) => {
    const { sessions } = await lowered(`plan "Gate" {
  block "Gate" test {
    5 shots
  }
  block "Again" test {
    5 shots
  }
}

player "P-07" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-07"
  data "a.csv" from "Bay"
  ${lines.join("\n  ")}
}
`);
    return sessions[0];
  };

  test("states air and ball in SI, wind by where the air goes", async () => {
    const { conditions } =
      (await session(
        "wind 3 m/s head and 1 m/s right-to-left",
        "temperature minus 3 °C",
        "pressure 965 hPa",
        "altitude 420 m",
        "humidity 60 %",
        'ball "range" carries 92 %',
      )) ?? {};
    expect(conditions).toMatchObject({
      wind: { along: -3, across: -1 },
      temperature: expect.closeTo(270.15, 9),
      pressure: expect.closeTo(96_500, 6),
      altitude: 420,
      humidity: 0.6,
      ball: { name: "range", carryFactor: 0.92 },
    });
  });

  test.each([
    ["wind 2 m/s tail and 1 m/s left-to-right", { wind: { along: 2, across: 1 } }],
    ["temperature 20 °C", { temperature: expect.closeTo(293.15, 9) }],
    // (−4 + 459.67) · 5/9
    ["temperature minus 4 °F", { temperature: expect.closeTo(253.15, 9) }],
    ['ball "range"', { ball: { name: "range", carryFactor: null } }],
  ])("%s", async (line, conditions) => {
    expect((await session(line))?.conditions).toMatchObject(conditions);
  });

  test("says nothing of what it does not state", async () => {
    const nothing = { wind: null, temperature: null, pressure: null, altitude: null };
    expect(await session()).toMatchObject({
      date: null,
      instrument: null,
      starts: [],
      conditions: { ...nothing, humidity: null, ball: null },
    });
  });

  test("begins its blocks at rows, or at times in seconds after midnight", async () => {
    const starts = (await session('block "Gate" from 10:42', 'block "Again" from 10:58:30'))?.starts;
    expect(starts).toMatchObject([
      { block: "Gate", time: 38_520, row: null, file: null },
      { block: "Again", time: 39_510, row: null, file: null },
    ]);
    expect((await session('block "Gate" from row 40 of "a.csv"'))?.starts).toMatchObject([
      { block: "Gate", time: null, row: 40, file: "a.csv" },
    ]);
  });
});
