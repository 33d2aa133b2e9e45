import { expect, test } from "vitest";
import { check } from "./checked-files.ts";

// What is said of a name depends on what is looked for, and on what else the name may be.

const block = (...lines: string[]) => `
plan "Gate" {
  block "Start" {
    10 shots
${lines.map((line) => `    ${line}`).join("\n")}
  }
}`;

test.each([
  [
    "a unit where a metric belongs",
    block("target mph at least 3 m/s"),
    "`mph` is no metric that is known here. It is a unit of speed.",
    [],
  ],
  [
    "a club where a metric belongs",
    block("target 7-iron at least 150 yd"),
    "`7-iron` is no metric that is known here. It is a club.",
    [],
  ],
  [
    "a name like no other",
    block("target sparkle at least 3 m/s"),
    "`sparkle` is no metric that is known here. Declare it with `metric`, or add a `use` of the file that does.",
    [],
  ],
  [
    "a club as tables spell it",
    'plan "Gate" {\n  for gw\n  block "Start" {\n    10 shots\n  }\n}',
    "`gw` is no club that is known here. Did you mean `gap-wedge`?",
    ["Write gap-wedge"],
  ],
  [
    "a word of the trade for a metric",
    block("target aoa at least 1° down"),
    "`aoa` is no metric that is known here. Did you mean `attack-angle`?",
    ["Write attack-angle"],
  ],
  [
    "a metric's name with a word too many",
    block("target high-carry at least 150 yd"),
    "`high-carry` is no metric that is known here. Did you mean `carry`?",
    ["Write carry"],
  ],
  [
    "a code that is a digit away from another player's",
    'player "P-07" {\n  right-handed\n}\n\nsource "Bay" {\n  column "Carry" is carry in m\n}\n\nplan "Gate" {\n  block "Start" {\n    10 shots\n  }\n}\n\nsession "First" {\n  plan "Gate"\n  player "P-01"\n  data "a.csv" from "Bay"\n}',
    '"P-01" is no player that is known here. Declare it with `player`, or add a `use` of the file that does.',
    [],
  ],
  [
    "a unit of nothing",
    block("target carry at least 150 furlong"),
    "`furlong` is no unit that is known here. Amounts of length are written in `m`, `cm`, `mm`, `yd`, `ft` or `in`.",
    [],
  ],
  [
    "a direction before its unit",
    block("target start-direction at most 2 right °"),
    "A unit is missing before the direction word `right`: write `2° right`.",
    ["Write 2° right"],
  ],
  [
    "a direction of another metric",
    block("target attack-angle at most 2° left"),
    "`left` is no direction of `attack-angle`. Its directions are `up` and `down`.",
    ["Write up", "Write down"],
  ],
  [
    "a direction by another word",
    block("target attack-angle at most 2° downward"),
    "`downward` is no direction of `attack-angle`. Did you mean `down`?",
    ["Write down"],
  ],
  [
    "a direction that coaches shorten",
    block("target club-path at most 2° inside-out"),
    "`inside-out` is no direction of `club-path`. Did you mean `in-to-out`?",
    ["Write in-to-out"],
  ],
  [
    "what is straight, where an amount belongs",
    block("target face-angle within 2° of square"),
    "What is straight is said with `±`: `within ±2°`.",
    ["Write within ±2°"],
  ],
  [
    "a unit of an area in words",
    block("success area of the 80 % ellipse of carry and offline at most 200 sq yd"),
    "A square is part of its unit: `yd²`.",
    ["Write yd²"],
  ],
  [
    "a group of none",
    block("success none of {", "  3 in a row with carry below 100 yd", "}"),
    "A group has no `none of`. Write `all of`, and on each line what must hold instead.",
    [],
  ],
  [
    "a direction of a time",
    'plan "Gate" {\n  time 40 min left\n  block "Start" {\n    10 shots\n  }\n}',
    "This amount has no direction. Take `left` out.",
    ["Take left out"],
  ],
  [
    "a side of a column without sides",
    'source "Bay" {\n  column "Carry" is carry in m positive right\n}',
    "`carry` has no sides, so `right` says nothing about it. Take it out.",
    ["Take positive right out"],
  ],
])("%s", async (_, text, message, fixes) => {
  const found = await check(text);
  expect(found.map(({ code }) => code)).toEqual(["name-must-be-known"]);
  expect(found[0]?.message.startsWith(message), found[0]?.message).toBe(true);
  expect(found[0]?.fixes.map(({ title }) => title)).toEqual(fixes);
});

test("a degree of the air has its sign, and so it is offered", async () => {
  const [unit] = await check(
    `${block()}\nplayer "P-1" {\n  right-handed\n}\nsource "Bay" {\n  column "Carry" is carry in m\n}\nsession "First" {\n  plan "Gate"\n  player "P-1"\n  data "a.csv" from "Bay"\n  temperature 18 C\n}`,
  );
  expect(unit?.message).toBe("`C` is no unit that is known here. Did you mean `°C`?");
  expect(unit?.fixes.map(({ title }) => title)).toEqual(["Write °C"]);
});

test("one mistake, one message: what hangs on an unknown name waits for it", async () => {
  const unknown = block("target sparkle at least 3 furlong left");
  expect((await check(unknown)).map(({ message }) => message.split(" ", 1)[0])).toEqual([
    "`sparkle`",
    "`furlong`",
  ]);
  const session =
    'session "First" {\n  plan "Gtae"\n  player "P-1"\n  data "a.csv" from "Bay"\n  block "Strat" from row 2\n}';
  const declared = `${block()}\nplayer "P-1" {\n}\nsource "Bay" {\n  column "Carry" is carry in m\n}\n${session}`;
  expect((await check(declared)).map(({ message }) => message)).toEqual([
    '"Gtae" is no plan that is known here. Did you mean "Gate"?',
  ]);
});
