/** What is offered at the cursor `<|>`, and what the text becomes when an offer is taken. */

import { describe, expect, test } from "vitest";
import { InsertTextFormat } from "vscode-languageserver";
import { SNIPPETS } from "../../language/editor/completion/snippets.ts";
import { openEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

/** A block of a plan with one line to be typed. */
const line = (text: string) =>
  `plan "P" {\n  for 7-iron\n  block "B" test {\n    10 shots\n    ${text}\n  }\n}\n`;

/** The sample's session with one line to be typed. */
const sessionLine = (text: string) =>
  `use "../library/range"\nuse "../plans/gate"\n\nsession "S" {\n  plan "Seven-iron: \\"gate\\""\n  ${text}\n}\n`;

async function offersIn(text: string): Promise<string[]> {
  return (await openEditor({ "a.drill": text })).offers();
}

describe("metrics", () => {
  test("come with their dimension and the first sentence about them", async () => {
    const editor = await openEditor({ "a.drill": line("target <|>") });
    const { items } = await editor.completion();
    expect(items.find(({ label }) => label === "spin-axis")).toMatchObject({
      detail: "angle",
      labelDetails: { description: "angle" },
      documentation: { kind: "markdown", value: "Sideways tilt of the axis the ball turns about." },
    });
  });

  test("are found by the beginnings of their words", async () => {
    expect(await offersIn(line("target path<|>"))).toEqual(["club-path", "face-to-path"]);
    expect(await offersIn(line("target club-<|>"))).toEqual(["club-speed", "club-path"]);
  });

  test("are found by other words of the trade, where none begins like that", async () => {
    const editor = await openEditor({ "a.drill": line("target aoa<|>") });
    const { items } = await editor.completion();
    expect(items).toMatchObject([
      { label: "attack-angle", filterText: "aoa", labelDetails: { detail: " aoa", description: "angle" } },
    ]);
    expect(await editor.accept("attack-angle")).toBe(line("target attack-angle"));
    expect(await offersIn(line("10 shots with pw<|>"))).toContain("pitching-wedge");
  });

  test("replace the word they stand for, whole", async () => {
    const editor = await openEditor({ "a.drill": line("target club-<|>speed within ±2°") });
    expect(await editor.accept("club-path")).toBe(line("target club-path within ±2°"));
  });
});

describe("units", () => {
  test("are those of the metric, the one it is shown in first", async () => {
    expect(await offersIn(line("target carry at least 140 <|>"))).toEqual(
      expect.arrayContaining(["yd", "m", "ft"]),
    );
    const offers = await offersIn(line("target carry at least 140 <|>"));
    expect(offers[0]).toBe("yd");
    expect(offers).not.toContain("°");
    expect(offers).not.toContain("mph");
    expect((await offersIn(line("target low-point at least 1 <|>")))[0]).toBe("in");
  });

  test("are set apart from a number that ends at the cursor, but for the degree sign", async () => {
    const yards = await openEditor({ "a.drill": line("target carry at least 140<|>") });
    expect(await yards.accept("yd")).toBe(line("target carry at least 140 yd"));
    const degrees = await openEditor({ "a.drill": line("target club-path within ±2<|>") });
    expect(await degrees.accept("°")).toBe(line("target club-path within ±2°"));
    const percent = await openEditor({ "a.drill": line("target effort at most 80<|>") });
    expect(await percent.accept("%")).toBe(line("target effort at most 80 %"));
  });

  test("have another spelling once it has been begun", async () => {
    expect(await offersIn(line("target carry at least 140 <|>"))).not.toContain("yards");
    expect(await offersIn(line("target carry at least 140 ya<|>"))).toEqual(["yard", "yards"]);
  });

  test("of a plan's time are times", async () => {
    expect(await offersIn('plan "P" {\n  time 50 <|>\n}')).toEqual(
      expect.arrayContaining(["s", "ms", "min", "h"]),
    );
    expect(await offersIn('plan "P" {\n  time 50 <|>\n}')).not.toContain("m");
  });

  test("of a column are those of its metric", async () => {
    const offers = await offersIn('source "S" {\n  column "Carry" is carry in <|>\n}');
    expect(offers).toContain("yd");
    expect(offers).not.toContain("°");
  });

  test("of one's own metric are those of the dimension it was given", async () => {
    expect(await offersIn("metric wait is duration {\n  plausible between 0 s and 5 <|>\n}")).toContain("ms");
    expect(await offersIn("metric wait is duration {\n  shown in <|>\n}")).not.toContain("yd");
  });
});

describe("direction words", () => {
  test("are those of the metric, with what they mean for each hand", async () => {
    const editor = await openEditor({ "a.drill": line("target club-path at most 2° <|>") });
    const { items } = await editor.completion();
    const words = items.filter(({ sortText }) => sortText?.startsWith("1")).map(({ label }) => label);
    expect(words).toEqual(["right", "in-to-out", "left", "out-to-in"]);
    expect(items.find(({ label }) => label === "in-to-out")?.documentation).toBe(
      "right for a right-hander, left for a left-hander",
    );
  });

  test("are not said of a metric without sides, of a tolerance, or of a spread", async () => {
    expect(await offersIn(line("target carry at least 140 yd <|>"))).not.toContain("left");
    expect(await offersIn(line("target club-path within ±2° <|>"))).not.toContain("left");
    expect(await offersIn(line("success spread of club-path at most 2° <|>"))).not.toContain("left");
    expect(await offersIn(line("target club-path within 2° of 1° <|>"))).toContain("left");
  });

  test("are set apart from a unit that ends at the cursor", async () => {
    const editor = await openEditor({ "a.drill": line("target club-path at most 2°<|>") });
    expect(await editor.accept("left")).toBe(line("target club-path at most 2° left"));
  });

  test("belong to the metric named last", async () => {
    const offers = await offersIn(line("target club-path within ±2° and attack-angle at least 2° <|>"));
    expect(offers).toContain("down");
    expect(offers).not.toContain("in-to-out");
  });
});

describe("texts", () => {
  const expected = sessionLine('block "Gate" from row 3');

  test.each([
    ["no quotation mark", "block <|> from row 3"],
    ["a first letter", "block G<|> from row 3"],
    ["both quotation marks", 'block "<|>" from row 3'],
    ["a part between quotation marks", 'block "Ga<|>" from row 3'],
    ["another name between quotation marks", 'block "Ga<|>p" from row 3'],
  ])("are put in quotation marks once, after %s", async (_what, typed) => {
    const editor = await openEditor({ ...SAMPLE, "sessions/second.drill": sessionLine(typed) });
    expect(await editor.accept("Gate")).toBe(expected);
  });

  test("get the closing mark that is missing", async () => {
    const editor = await openEditor({ ...SAMPLE, "sessions/second.drill": sessionLine('block "Ga<|>') });
    expect(await editor.accept("Gate")).toBe(sessionLine('block "Gate"'));
  });

  test("keep quotation marks in them apart from those around them", async () => {
    const text = 'use "../plans/gate"\nsession "S" {\n  plan <|>\n}';
    const editor = await openEditor({ ...SAMPLE, "sessions/second.drill": text });
    expect(await editor.accept('Seven-iron: "gate"')).toBe(text.replace("<|>", '"Seven-iron: \\"gate\\""'));
  });

  test("that are free are left to the writer", async () => {
    expect(await offersIn(line('cue "<|>"'))).toEqual([]);
    expect(await offersIn(line('cue "Bru<|>'))).toEqual([]);
  });
});

test("a session's blocks are those of its plan", async () => {
  const editor = await openEditor({ ...SAMPLE, "sessions/second.drill": sessionLine("block <|>") });
  expect(await editor.offers()).toEqual(["Wake up", "Gate"]);
});

describe("names of files that are not used", () => {
  const library = { "library/own.drill": "metric own-score is ratio\nmetric own-time is duration\n" };

  test("bring their `use` along, at the top of the file", async () => {
    const editor = await openEditor({ ...library, "plans/a.drill": line("target own-s<|> at least 1") });
    expect(await editor.accept("own-score")).toBe(
      `use "../library/own"\n\n${line("target own-score at least 1")}`,
    );
  });

  test("bring it behind those that are there, and in the file's own line ends", async () => {
    const text = `use "../library/other"\r\n${line("target own-s<|> at least 1")}`;
    const editor = await openEditor({ ...library, "plans/a.drill": text });
    expect(await editor.accept("own-score")).toBe(
      text.replace("own-s<|>", "own-score").replace("\r\n", '\r\nuse "../library/own"\r\n'),
    );
  });

  test("bring it below a comment about the file", async () => {
    const editor = await openEditor({
      ...library,
      "plans/a.drill": `// My plans.\n\n${line("target own-s<|>")}`,
    });
    expect(await editor.accept("own-score")).toBe(
      `// My plans.\n\nuse "../library/own"\n\n${line("target own-score")}`,
    );
  });

  test("are not offered before a word of the vocabulary has been begun", async () => {
    const editor = await openEditor({ ...library, "plans/a.drill": line("target <|>") });
    expect(await editor.offers()).not.toContain("own-score");
    expect((await editor.completion()).isIncomplete).toBe(true);
  });

  test("stand below those that are known, and say where they come from", async () => {
    const editor = await openEditor({ ...SAMPLE, "sessions/new.drill": 'session "S" {\n  player <|>\n}' });
    const { items } = await editor.completion();
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({ label: "P-07", detail: "from ../library/range" });
  });

  test("are as many as a list can show, among a thousand files", async () => {
    const many = Object.fromEntries(
      Array.from({ length: 1000 }, (_, i) => [`plans/p${i}.drill`, `plan "Plan ${i}" {\n}\n`]),
    );
    const editor = await openEditor({
      ...many,
      "a.drill": 'use "./plans/p7"\nsession "S" {\n  plan "<|>"\n}',
    });
    const { items, isIncomplete } = await editor.completion();
    expect(items).toHaveLength(1 + 30);
    expect(isIncomplete).toBe(true);
    expect((await editor.offers())[0]).toBe("Plan 7");
    const narrowed = await openEditor({ ...many, "a.drill": 'session "S" {\n  plan "Plan 99<|>"\n}' });
    expect(await narrowed.offers()).toEqual(expect.arrayContaining(["Plan 99", "Plan 990", "Plan 999"]));
    expect((await narrowed.completion()).isIncomplete).toBe(false);
  });
});

describe("paths", () => {
  test("of `use` are the files not used yet, the nearest first, without their ending", async () => {
    const text = 'use "./gate"\nuse <|>\n';
    const editor = await openEditor({ ...SAMPLE, "plans/a.drill": text, "plans/b.drill": 'plan "B" {\n}' });
    expect(await editor.offers()).toEqual([
      "./b",
      "../library/range",
      "../library/words",
      "../sessions/first",
    ]);
    expect(await editor.accept("./b")).toBe(text.replace("<|>", '"./b"'));
    const { items } = await editor.completion();
    expect(items.find(({ label }) => label === "../library/range")?.detail).toBe("P-07 and Field");
  });

  test("replace what is typed between quotation marks", async () => {
    const editor = await openEditor({ ...SAMPLE, "plans/a.drill": 'use "../lib<|>x"\n' });
    expect(await editor.accept("../library/range")).toBe('use "../library/range"\n');
  });

  test("of tables go from folder to folder", async () => {
    const inFolder = (path: string) =>
      openEditor({ ...SAMPLE, "sessions/b.drill": sessionLine(`data "${path}"`) });
    expect(await (await inFolder("<|>")).offers()).toEqual(["../"]);
    expect(await (await inFolder("../<|>")).offers()).toEqual(
      expect.arrayContaining(["../data/", "../library/", "../../"]),
    );
    const data = await inFolder("../data/<|>");
    expect(await data.offers()).toEqual(["../data/first.csv", "../data/old/", "../data/second.csv"]);
    expect(await data.accept("../data/first.csv")).toBe(sessionLine('data "../data/first.csv"'));
  });
});

describe("words of the language", () => {
  test("that stand together are one offer, and punctuation is none", async () => {
    const offers = await offersIn(line("<|>"));
    expect(offers).toContain("leave out shots where");
    expect(offers).toContain("at least");
    for (const offer of offers) expect(offer).toMatch(/\p{L}/u);
    expect(await offersIn(line("success 3 <|>"))).toEqual(["in a row", "rd percentile", "of"]);
    expect(await offersIn(line("8 shots at 50 <|>"))).toEqual(["% effort"]);
  });

  test("come with what the grammar says about them", async () => {
    const editor = await openEditor({ "a.drill": 'plan "P" {\n  block "B" <|>\n}' });
    const { items } = await editor.completion();
    expect(items.map(({ label }) => label)).toEqual(
      "from warm-up baseline blocked serial random test retention transfer free-play".split(" "),
    );
    expect(items[6]?.documentation).toMatchObject({ value: "A test of what was practised, without help." });
  });

  test("that begin the next statement are offered in the next line", async () => {
    expect(await offersIn(line("8 shots with 7-iron <|>"))).toEqual(["at"]);
    expect(await offersIn(line("8 shots with 7-iron\n    <|>"))).toContain("cue");
  });

  test("say `shot` of one only", async () => {
    expect(await offersIn(line("1 <|>"))).toContain("shot");
    expect(await offersIn(line("2 <|>"))).not.toContain("shot");
  });

  test("are not offered where a name is to be found", async () => {
    expect(await offersIn("metric <|>")).toEqual([]);
    expect(await offersIn('plan "<|>"')).toEqual([]);
  });
});

describe("ready-made pieces", () => {
  const filled = (body: string) => {
    const values = new Map(
      [...body.matchAll(/\$\{(\d+):([^}]*)\}/g)].map(([, number, value]) => [number, value]),
    );
    return body.replace(/\$\{(\d+)(?::[^}]*)?\}/g, (_, number: string) => values.get(number) ?? "");
  };
  const inBlock = (text: string) => line(text);
  const around: Readonly<Record<string, (text: string) => string>> = {
    Block: (text) => `plan "P" {\n${text}\n}`,
    Shots: (text) => `plan "P" {\n  for 7-iron\n  block "B" {\n${text}\n  }\n}`,
    Success: inBlock,
    CountCriterion: (text) => inBlock(`target carry at least 1 yd\nsuccess {\n${text}\n}`),
    ShareCriterion: (text) => inBlock(`target carry at least 1 yd\nsuccess ${text}`),
    GroupCriterion: (text) => inBlock(`target carry at least 1 yd\nsuccess {\n${text}\n}`),
    Summary: (text) => inBlock(`success ${text}`),
    Span: (text) => inBlock(`success ${text}`),
    EllipseCriterion: (text) => inBlock(`success ${text}`),
    Next: (text) => `plan "P" {\n${text}\n}`,
  };

  test.each(Object.entries(SNIPPETS).flatMap(([rule, snippets]) => snippets.map((s) => [rule, s] as const)))(
    "%s is offered where it can stand, and reads without a mistake in its form",
    async (rule, { label, body }) => {
      const place = around[rule] ?? ((text: string) => text);
      const editor = await openEditor({ "a.drill": place("<|>") });
      const { items } = await editor.completion();
      const item = items.find((candidate) => candidate.label === label);
      expect(item).toMatchObject({ insertTextFormat: InsertTextFormat.Snippet, textEdit: { newText: body } });
      const { document } = await openEditor({ "a.drill": place(filled(body)) });
      expect(document.parseResult.lexerErrors.concat()).toEqual([]);
      expect(document.parseResult.parserErrors.map(({ message }) => message)).toEqual([]);
    },
  );

  test("stand in for the bare word, and leave it where the line goes on", async () => {
    const { items } = await (await openEditor({ "a.drill": "pl<|>" })).completion();
    expect(items.filter(({ label }) => label === "plan")).toHaveLength(1);
    const before = await (await openEditor({ "a.drill": 'pl<|> "P" {\n}' })).completion();
    expect(before.items.filter(({ label }) => label === "plan")).toMatchObject([
      { textEdit: { newText: "plan" } },
    ]);
  });

  test("of a plan asks nobody to swing without a warm-up and a caution", () => {
    const [plan] = SNIPPETS.Plan ?? [];
    expect(plan?.body).toContain("warm-up");
    expect(plan?.body).toContain("caution");
  });
});

describe("drills", () => {
  const drills = `drill "Gate" (width: angle = 3°, hits: ratio = 7, iron: club = 7-iron) {
  10 shots with <|>
  target start-direction within ±2°
  success at least 7 of 10 shots on target
}
`;
  const using = (text: string) => `${drills.replace("<|>", "iron")}plan "P" {\n  ${text}\n}\n`;

  test("are offered by name behind `from`", async () => {
    expect(await offersIn(using('block "B" from <|>'))).toEqual(["Gate"]);
  });

  test("take the arguments that they still lack", async () => {
    expect(await offersIn(using('block "B" from "Gate" with <|>'))).toEqual(["width", "hits", "iron"]);
    expect(await offersIn(using('block "B" from "Gate" with hits = 5, <|>'))).toEqual(["width", "iron"]);
    const editor = await openEditor({ "a.drill": using('block "B" from "Gate" with wi<|>') });
    expect(await editor.accept("width")).toBe(using('block "B" from "Gate" with width = '));
  });

  test("want a club or an amount, as their parameter says", async () => {
    expect(await offersIn(using('block "B" from "Gate" with width = <|>'))).toEqual([]);
    expect(await offersIn(using('block "B" from "Gate" with hits = 5,\n    iron = <|>'))).toContain("driver");
    expect(await offersIn('drill "D" (width: angle = <|>')).toEqual([]);
    expect(await offersIn('drill "D" (width: angle = 3°,\n  iron: club = <|>')).toContain("driver");
  });

  test("want units of their parameter's dimension", async () => {
    const offers = await offersIn(using('block "B" from "Gate" with width = 2 <|>'));
    expect(offers).toContain("°");
    expect(offers).not.toContain("yd");
  });

  test("offer their parameters where they fit", async () => {
    expect(await offersIn(drills)).toEqual(expect.arrayContaining(["iron", "driver"]));
    const at = (from: string, to: string) => drills.replace("<|>", "iron").replace(from, to);
    expect(await offersIn(at("±2°", "±<|>"))).toEqual(["width"]);
    expect(await offersIn(at("least 7", "least <|>"))).toEqual(["hits"]);
    expect(await offersIn(at("target start-direction within ±2°", "target carry at least <|>"))).toEqual([]);
  });
});

describe("goals of every kind", () => {
  test.each([
    ["success at least 3 of 5 shots with shape is <|>", ["straight", "draw", "hook"]],
    ["success 90<|>", []],
    ["success 22<|> ", []],
    ["success carry loses no more than 4 yd against <|>", ["usual", "the baseline"]],
    ["success spread of offline falls by at least 2 <|>", ["yd", "m", "%"]],
    ["success area of the 80 % ellipse of offline and carry at most 200 <|>", ["yd²", "m²"]],
    ["success middle 80 % of carry spans at most 12 <|>", ["yd", "m"]],
  ])("%s", async (statement, some) => {
    expect(await offersIn(line(statement))).toEqual(expect.arrayContaining(some));
  });

  test("hold a change against a block that came before", async () => {
    const offers = await offersIn(
      'plan "P" {\n  block "Before" {\n    5 shots\n  }\n  block "Now" {\n    5 shots\n    success carry gains 4 yd against <|>\n  }\n  block "Later" {\n    5 shots\n  }\n}\n',
    );
    expect(offers).toEqual(["Before", "usual", "the baseline", "the last session", "session"]);
  });

  test("have no sides where an amount is a width", async () => {
    const offers = await offersIn(line("success spread of offline falls by at least 2 yd <|>"));
    expect(offers).not.toContain("left");
    expect(offers).toContain("against");
  });

  test("of so many of a hundred have the ending of their number", async () => {
    const endings = async (number: number) =>
      (await offersIn(line(`success ${number} <|>`))).filter((offer) => offer.endsWith("percentile"));
    expect(await endings(90)).toEqual(["th percentile"]);
    expect(await endings(22)).toEqual(["nd percentile"]);
    expect(await endings(11)).toEqual(["th percentile"]);
  });
});

describe("circumstances of a session", () => {
  test.each([
    ["temperature 18 <|>", ["°C", "°F", "K"]],
    ["pressure 965 <|>", ["hPa", "mbar"]],
    ["wind 3 <|>", ["m/s", "mph"]],
    ["altitude 420 <|>", ["m", "ft"]],
  ])("%s", async (statement, some) => {
    const offers = await offersIn(`session "S" {\n  ${statement}\n}\n`);
    expect(offers).toEqual(expect.arrayContaining(some.filter((unit) => unit !== "mbar")));
    expect(offers).not.toContain("rpm");
  });
});

describe("a list that goes on in the next line", () => {
  /** The names alone: a list goes on with nothing else. */
  async function expectNames(text: string, some: readonly string[], none: readonly string[]): Promise<void> {
    const offers = await offersIn(text);
    expect(offers).toEqual(expect.arrayContaining([...some]));
    expect(offers.filter((offer) => none.includes(offer))).toEqual([]);
  }

  test("goes on with what it is a list of, and with no statement", async () => {
    const inPlan = (text: string) => `plan "P" {\n  time 40 min\n  ${text}\n}\n`;
    const statements = ["for", "needs", "block", "time"];
    await expectNames(inPlan("needs carry,\n      <|>"), ["club-path", "offline"], statements);
    await expectNames(inPlan("needs carry,\n      <|>\n  for 7-iron"), ["club-path"], statements);
    await expectNames(inPlan("needs carry, // and\n\n  <|>"), ["club-path"], statements);
    await expectNames(inPlan("for driver,\n    7-iron,\n <|>"), ["3-wood"], [...statements, "carry"]);
    expect(await offersIn(inPlan("needs carry,\n      club-p<|>"))).toEqual(["club-speed", "club-path"]);
    expect(await offersIn(inPlan("needs carry,\n      club-path <|>"))).toEqual([]);
    expect(await offersIn(inPlan("needs carry,\n      club-path\n  <|>"))).toContain("block");
  });

  test("has the units of what it is about", async () => {
    await expectNames(
      'curriculum "C" {\n  step "A" {\n    review after 7 d,\n        28 <|>\n  }\n}',
      ["d", "h"],
      ["yd", "°"],
    );
  });

  test("is found behind what cannot be read", async () => {
    const broken = 'plan "P" {\n  tiem 40 min,\n  for for\n  cue "open,\n';
    expect(await offersIn(`${broken}  needs carry,\n    <|>`)).toContain("club-path");
    expect(await offersIn(`${broken}  <|>`)).toContain("needs");
  });

  test("may stand between a name and its brace", async () => {
    const step = 'curriculum "C" {\n  step "A" after "B",\n      "D" {\n    <|>\n  }\n}';
    expect(await offersIn(step)).toEqual(expect.arrayContaining(["gate", "review after", "note"]));
    const drill =
      'drill "D" (width: angle = 3°,\n  far: length = 10 yd) blocked {\n  target offline within ±<|>\n}';
    expect(await offersIn(drill)).toEqual(["far"]);
  });
});

describe("a text that is not finished", () => {
  test("is read from the statement at the cursor, whatever is wrong elsewhere", async () => {
    const broken = `plan "A" {{ for \nblock "X" test {\n  shots 12 (\n  }\n}\n${line('cue "not closed\n    target <|>')}`;
    expect(await offersIn(broken)).toContain("club-path");
  });

  test("can have a statement over several lines", async () => {
    expect(await offersIn(line("target club-path within ±2°\n      and face-angle <|>"))).toContain("within");
    expect(await offersIn(line("target club-path\n      within 2° of 1° <|>"))).toContain("in-to-out");
    expect(await offersIn(line("target club-path\n    <|>"))).toEqual(
      expect.arrayContaining(["within", "cue"]),
    );
    expect(await offersIn(line("10 shots with\n      7-iron <|>"))).toEqual(["at"]);
    expect(await offersIn(line("target carry at least 140 yd\n      <|>"))).toContain("and");
    expect(await offersIn(line("target carry at least 140 yd\n    <|>"))).not.toContain("and");
  });

  test("has no word for what no statement starts with", async () => {
    const usual = "right-handed\n  usual carry 140 yd\n  misspelt <|>";
    expect(await offersIn(`player "P-07" {\n  ${usual}\n}`)).toEqual([]);
  });

  test("is read between braces whose opening cannot be", async () => {
    const inBlock = (opening: string) => `plan "P" {\n  ${opening} {\n    10 shots\n    <|>\n  }\n}`;
    for (const opening of [
      'block "B" tset',
      'block "B" from',
      'block "B" from "D" wth a = 1',
      "block B",
      "block",
    ]) {
      expect(await offersIn(inBlock(opening)), opening).toContain("target");
    }
  });

  test("is read in its own block where the brace of the one before is missing", async () => {
    const text = 'plan "P" {\n  block "A" test {\n    10 shots\n\n  block "B" test {\n    target <|>';
    expect(await offersIn(text)).toContain("club-path");
  });

  test("offers nothing in comments", async () => {
    expect(await offersIn(line("// target <|>"))).toEqual([]);
    expect(await offersIn(line("/* target\n <|> */"))).toEqual([]);
    expect(await offersIn("/** plan <|>")).toEqual([]);
  });

  test("can be all on one line", async () => {
    expect(await offersIn('plan "P" { block "B" test { 10 shots target <|>')).toContain("club-path");
    expect(await offersIn('plan "P" { for 7-iron <|>')).toContain("block");
  });
});
