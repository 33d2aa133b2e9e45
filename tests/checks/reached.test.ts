/** What a session must state hangs on all that its plan speaks of: in its drills, windows and findings too. */
import { expect, test } from "vitest";
import { check } from "./checked-files.ts";

const session = (declarations: string, lines: string) => `${declarations}

player "P-1" {
  right-handed
}
source "Bay" {
  column "Carry" is carry in m
}
session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  ${lines}
}`;

const found = async (declarations: string, lines: string) =>
  (await check(session(declarations, lines))).map(({ code }) => code);

const inDrill = (metric: string) => `
drill "Far" {
  10 shots
  success average ${metric} at least 30 m
}
plan "Gate" {
  block "Start" from "Far" test
}`;

const inWindow = (metric: string) => `
window "Far" is ${metric} at least 30 m
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 6 of 10 shots inside "Far"
  }
}`;

const inFinding = (metric: string) => `
finding "Short" {
  when average ${metric} at most 30 m
  check "The strike."
}
plan "Gate" {
  look for "Short"
  block "Start" baseline {
    10 shots
  }
}`;

const inEllipse = (metric: string) => `
plan "Gate" {
  block "Start" test {
    10 shots
    success area of the 80 % ellipse of offline and ${metric} at most 250 m²
  }
}`;

const PLACES = [
  ["a drill", inDrill],
  ["a window", inWindow],
  ["a finding", inFinding],
  ["an ellipse", inEllipse],
] as const;

test.each(PLACES)(
  "the air is asked for where %s holds the standardised carry against something",
  async (_, plan) => {
    expect(await found(plan("standard-carry"), "wind calm")).toEqual(["conditions-should-be-stated"]);
    expect(await found(plan("carry"), "wind calm")).toEqual([]);
  },
);

test.each(PLACES)("the ball is asked for where %s holds a distance against something", async (_, plan) => {
  expect(await found(plan("carry"), 'ball "range"')).toEqual(["ball-could-state-its-carry"]);
  expect(await found(plan("apex"), 'ball "range"')).toEqual([]);
});

test("an instrument tells of a metric that a formula needs twice", async () => {
  const twice = `
instrument "Bay unit" {
  coverage 95 %
  reads club-speed within 1 mph random
  reads ball-speed within 1 mph random
}
metric strike is ratio {
  shown in one to 0.01
  formula smash-factor * smash-factor
}
plan "Gate" {
  block "Start" test {
    10 shots
    success average strike at least 1.9
  }
}`;
  expect(await found(twice, 'instrument "Bay unit"')).toEqual([]);
  expect(
    await found(twice.replace("  reads club-speed within 1 mph random\n", ""), 'instrument "Bay unit"'),
  ).toEqual(["instrument-could-cover-the-goals"]);
});
