import { expect, test } from "vitest";
import { check } from "./checked-files.ts";

// Wherever an amount can stand, its unit and its direction are looked at: what is marked `…` gives this finding alone.

const goal = (line: string) => `
plan "Gate" {
  block "Where we are" baseline {
    12 shots
  }
  block "Start" test {
    12 shots
    success ${line}
  }
}`;

const session = (line: string) => `
plan "Gate" {
  block "Start" {
    12 shots
  }
}
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
  ${line}
}`;

const drill = (parameter: string, use: string) => `
drill "Line" (${parameter}) {
  12 shots with 7-iron
  target start-direction within ±width
}
plan "Gate" {
  block "Start" from "Line"${use}
}`;

const player = (line: string) => `player "P-1" {\n  right-handed\n  ${line}\n}`;
const instrument = (line: string) => `instrument "Bay" {\n  coverage 95 %\n  ${line}\n}`;
const review = (line: string) => `
plan "Gate" {
  block "Start" {
    12 shots
  }
}
curriculum "Irons" {
  step "Gate" {
    ${line}
  }
}`;

test.each([
  ["wind in a length", session("wind 3 yd head"), "unit-must-fit", "Write m/s"],
  ["wind without a unit", session("wind 3 head"), "unit-must-be-stated", "Write 3 m/s"],
  ["temperature in metres", session("temperature 18 m"), "unit-must-fit", "Write °C"],
  ["temperature in an angle", session("temperature 18°"), "unit-must-fit", "Write °C"],
  ["temperature without a unit", session("temperature 18"), "unit-must-be-stated", "Write 18 °C"],
  ["pressure in percent", session("pressure 965 %"), "unit-must-fit", "Write hPa"],
  ["altitude in an angle", session("altitude 420°"), "unit-must-fit", "Write m"],
  ["reviews in metres", review("review after 7 m"), "unit-must-fit", "Write d"],
  [
    "a change in another unit",
    goal('carry gains at least 3° against "Where we are"'),
    "unit-must-fit",
    "Write yd",
  ],
  [
    "a move that does not say where",
    goal('club-path moves at least 2° against "Where we are"'),
    "direction-must-be-stated",
    "Write 2° in-to-out",
  ],
  [
    "a change of spread with a side",
    goal('spread of offline falls by at least 2 yd left against "Where we are"'),
    "width-must-have-no-direction",
    "Take left out",
  ],
  ["a span in another unit", goal("middle 80 % of carry spans at most 12 mph"), "unit-must-fit", "Write yd"],
  [
    "a span with a side",
    goal("middle 80 % of offline spans at most 12 yd left"),
    "width-must-have-no-direction",
    "Take left out",
  ],
  [
    "an area in a length",
    goal("area of the 80 % ellipse of offline and carry at most 250 yd"),
    "unit-must-fit",
    "Write yd²",
  ],
  [
    "an axis in an area",
    goal("major axis of the 80 % ellipse of offline and carry at most 25 yd²"),
    "unit-must-fit",
    "Write yd",
  ],
  [
    "what is usual without its side",
    player("usual club-path 2°"),
    "direction-must-be-stated",
    "Write 2° in-to-out",
  ],
  ["what is usual in another unit", player("usual carry 2°"), "unit-must-fit", "Write yd"],
  [
    "a usual spread with a side",
    player("usual offline 2 yd left spread 6 yd left"),
    "width-must-have-no-direction",
    "Take left out",
  ],
  ["accuracy in another unit", instrument("reads carry within 2° random"), "unit-must-fit", "Write yd"],
  [
    "accuracy with a side",
    instrument("reads club-path within 1° right random"),
    "width-must-have-no-direction",
    "Take right out",
  ],
  ["a default in another unit", drill("width: angle = 3 yd", ""), "unit-must-fit", "Write °"],
  ["a default without a unit", drill("width: angle = 3", ""), "unit-must-be-stated", "Write 3°"],
  [
    "an argument in another unit",
    drill("width: angle = 3°", " with width = 4 yd"),
    "unit-must-fit",
    "Write °",
  ],
  [
    "an argument without a unit",
    drill("width: angle = 3°", " with width = 4"),
    "unit-must-be-stated",
    "Write 4°",
  ],
])("%s", async (_, text, code, fix) => {
  const found = (await check(text)).filter(({ severity }) => severity !== "hint");
  expect(found.map(({ code, message }) => `${code}: ${message}`)).toEqual([
    expect.stringMatching(`^${code}: `),
  ]);
  expect(found[0]?.fixes[0]?.title).toBe(fix);
});

test.each([
  ["a change in percent", goal('carry gains at least 3 % against "Where we are"')],
  ["a change of a sided metric that stays", goal('club-path stays within 2° against "Where we are"')],
  ["a move with its side", goal('club-path moves at least 2° in-to-out against "Where we are"')],
  ["an area in square metres", goal("area of the 80 % ellipse of offline and carry at most 250 m²")],
  [
    "the air in other units",
    session("wind 7 mph head\n  temperature 50 °F\n  pressure 29 inHg\n  altitude 420 ft"),
  ],
  ["reviews in weeks", review("review after 1 week, 28 d")],
  ["what is usual with its side", player("usual club-path 2° out-to-in spread 1.5°")],
  ["accuracy in two parts", instrument("reads club-path within 0.8° random and 0.4° systematic")],
])("%s is well", async (_, text) => {
  expect((await check(text)).filter(({ severity }) => severity === "error")).toEqual([]);
});
