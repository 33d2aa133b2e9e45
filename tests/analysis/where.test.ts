/** Where something is said, what is said beside it, and when nothing is. */
import { expect, test } from "vitest";
import { check, withChecked } from "../checks/checked-files.ts";

const CODE = "targets-must-hold-together";

const CONFLICT = `    10 shots
    target carry at least 150 yd
    require carry at most 140 yd
`;

async function linesOf(text: string, others: Readonly<Record<string, string>> = {}) {
  const found = await check(text, others);
  return found.map(({ code, range: { start } }) => `${start.line + 1} ${code}`);
}

test("the other lines go along, with the file they stand in", async () => {
  const drills = `drill "Length" {
  10 shots
  target carry at least 150 yd
}
`;
  const plan = `use "./drills"

plan "Gate" {
  block "Start" from "Length" {
    require carry at most 140 yd
  }
}
`;
  const related = await withChecked(plan, { "drills.drill": drills }, ({ document }) =>
    document.diagnostics?.map(({ range, relatedInformation }) => ({
      line: range.start.line + 1,
      relatedInformation,
    })),
  );
  expect(related).toEqual([
    {
      line: 5,
      relatedInformation: [
        {
          message: "target carry at least 150 yd",
          location: {
            uri: "file:///examples/drills.drill",
            range: { start: { line: 2, character: 2 }, end: { line: 2, character: 30 } },
          },
        },
      ],
    },
  ]);
});

test("with goals go those that they are at odds with, not they themselves", async () => {
  const plan = `plan "Gate" {
  block "Start" test {
    20 shots
    success {
      worst carry at least 150 yd
      average carry at most 145 yd
    }
  }
}
`;
  const said = await withChecked(plan, {}, ({ document }) =>
    (document.diagnostics ?? [])
      .filter(({ code }) => code === "goals-must-hold-together")
      .map(({ range, relatedInformation = [] }) => [
        range.start.line + 1,
        ...relatedInformation.map(({ location }) => location.range.start.line + 1),
      ]),
  );
  expect(said).toEqual([[6, 5]]);
});

test("what is wrong with a drill itself is said in its file, and not where it is used", async () => {
  const drills = `drill "Length" (longest: length = 140 yd) {
  10 shots
  target carry at least 150 yd
  require carry at most longest
}
`;
  const plan = (use: string) => `use "./drills"\n\nplan "Gate" {\n  block "Start" from ${use}\n}\n`;
  await withChecked(plan('"Length"'), { "drills.drill": drills }, ({ found }, others) => {
    expect(found).toEqual([]);
    const inDrill = others.get("drills.drill")?.found ?? [];
    expect(inDrill.map(({ code, range }) => [code, range.start.line + 1])).toEqual([[CODE, 4]]);
  });
  const sound = drills.replace("140", "160");
  expect(await linesOf(plan('"Length"'), { "drills.drill": sound })).toEqual([]);
  expect(await linesOf(plan('"Length" with longest = 120 yd'), { "drills.drill": sound })).toEqual([
    `4 ${CODE}`,
  ]);
});

test("a drill without defaults is looked at where it is used", async () => {
  const text = `drill "Length" (longest: length) {
  10 shots
  target carry at least 150 yd
  require carry at most longest
}

plan "Gate" {
  block "Far" from "Length" with longest = 180 yd
  block "Near" from "Length" with longest = 120 yd
}
`;
  expect(await linesOf(text)).toEqual([`9 ${CODE}`]);
});

test("a block that is being typed takes nothing away from the others, and nothing is said of it", async () => {
  const text = `plan "Gate" {
  block "Start" {
${CONFLICT}  }
  block "Typing" {
${CONFLICT}    target carry at least
  }
  block "End" {
${CONFLICT}  }
}
`;
  const found = await linesOf(text);
  expect(found.filter((line) => line.endsWith(CODE))).toEqual([`5 ${CODE}`, `16 ${CODE}`]);
  expect(found.filter((line) => line.endsWith("syntax"))).toHaveLength(1);
});

test("one mistake, one message: nothing is made of a line or a word that is wrong already", async () => {
  const unit = `plan "Gate" {\n  block "Start" {\n    10 shots\n    target carry at least 150 °\n  }\n}\n`;
  expect(await linesOf(unit)).toEqual(["4 unit-must-fit"]);
  const unknown = `plan "Gate" {\n  block "Start" {\n${CONFLICT}    target sparkle at least 3 yd\n  }\n}\n`;
  expect(await linesOf(unknown)).toEqual([`5 ${CODE}`, "6 name-must-be-known"]);
  const window = `window "W" is carry at least 150 °\n\nplan "Gate" {\n  block "Start" {\n${CONFLICT}    target inside "W"\n  }\n}\n`;
  expect(await linesOf(window)).toEqual(["1 unit-must-fit"]);
});

test("a used file that cannot be read says nothing", async () => {
  const drills = `drill "Length" {\n  10 shots\n  target carry at least 150 yd\n  require carry at most\n}\n`;
  const plan = `use "./drills"\n\nplan "Gate" {\n  block "Start" from "Length" {\n    require carry at most 140 yd\n  }\n}\n`;
  expect(await linesOf(plan, { "drills.drill": drills })).toEqual([]);
});

test("formulas that need themselves, and shots without a number, lead to nothing", async () => {
  const round = `metric first is length {\n  formula second + second\n}\n\nmetric second is length {\n  formula first + first\n}\n\nplan "Gate" {\n  block "Start" {\n    10 shots\n    target first at least 5 m\n  }\n}\n`;
  expect(new Set((await linesOf(round)).map((line) => line.split(" ")[1]))).toEqual(
    new Set(["formula-must-not-need-itself"]),
  );
  const none = `plan "Gate" {\n  block "Start" {\n    target carry at least 150 yd\n    success at least 70 % of shots on target at 90 % confidence\n  }\n}\n`;
  expect(await linesOf(none)).toEqual(["2 block-must-have-shots"]);
});
