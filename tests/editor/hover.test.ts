/** What is said about the word at the cursor `<|>`. */
import { describe, expect, test } from "vitest";
import { openEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

const line = (text: string) =>
  `plan "P" {\n  for 7-iron\n  block "B" test {\n    10 shots\n    target club-path within ±2°\n    ${text}\n  }\n}\n`;

async function hoverOver(text: string): Promise<string> {
  return (await openEditor({ "a.drill": text })).hoverText();
}

/** The word the hover is about, as an editor marks it. */
async function marked(text: string): Promise<string | undefined> {
  const editor = await openEditor({ "a.drill": text });
  const range = (await editor.hover())?.range;
  return range && editor.document.textDocument.getText(range);
}

/** A file of the sample with the cursor in it. */
async function inSample(path: string, before: string, after: string): Promise<string> {
  const text = (SAMPLE[path] as string).replace(before + after, `${before}<|>${after}`);
  expect(text).toContain("<|>");
  return (await openEditor({ ...SAMPLE, [path]: text })).hoverText();
}

describe("vocabulary", () => {
  test("a metric: what it is, its sides for each hand, how it is shown, what is plausible", async () => {
    expect(await hoverOver(line("target club-<|>path within ±2°"))).toBe(`\`\`\`drillwright
metric club-path is angle
\`\`\`

Horizontal direction in which the club head moves at impact, against the target line.
In-to-out: away from the player through impact; out-to-in: towards the player.

Source: geometry, angle between the club head's velocity, seen from above, and the target line.

- \`right\`: the positive side, for every player
- \`in-to-out\`: right for a right-hander, left for a left-hander
- \`left\`: the negative side, for every player
- \`out-to-in\`: left for a right-hander, right for a left-hander
- shown in °, to 0.1
- plausible from 25° left to 25° right`);
  });

  test("a metric that follows from others says how", async () => {
    expect(await hoverOver(line("target smash-<|>factor at least 1.2"))).toContain(
      "follows from `ball-speed / club-speed`",
    );
  });

  test("a unit: its dimension and its worth", async () => {
    const hover = await hoverOver(line("target carry at least 140 y<|>d"));
    expect(hover).toContain("unit yd // of length");
    expect(hover).toContain("1 yd is 0.9144 m.");
    expect(hover).toContain("Also written `yard` and `yards`.");
  });

  test("the signs of units, which are no letters", async () => {
    expect(await hoverOver(line("target face-angle within ±2<|>°"))).toContain("1° is 0.01745329252 rad.");
    expect(await hoverOver(line("target effort at most 80 <|>%"))).toContain("1 % is 0.01.");
    expect(await hoverOver(line("target carry at least 140 <|>m"))).toContain("The SI unit of length.");
  });

  test("a direction word: which side it is for whom", async () => {
    const hover = await hoverOver(line("target club-path at most 2° in-to-<|>out"));
    expect(hover).toContain("in-to-out // of club-path");
    expect(hover).toContain("Right for a right-hander, left for a left-hander.");
    expect(await hoverOver(line("target attack-angle at most 2° do<|>wn"))).toContain(
      "The negative side, for every player.",
    );
  });

  test("a club and its other spellings", async () => {
    expect(await hoverOver(line("8 shots with 9-<|>iron"))).toContain(
      "Tables also spell it `9i`, `i9`, `iron 9`, `eisen 9`, `9er eisen`, `9 eisen` and `e9`.",
    );
  });

  test("one's own vocabulary, from the file it stands in", async () => {
    expect(await inSample("plans/gate.drill", "needs club-path, carry, miss", "-share")).toContain(
      "Sideways miss as a share of the carry.",
    );
  });
});

describe("practice", () => {
  test("a plan: its intent, clubs, size, needs and cautions", async () => {
    expect(await inSample("sessions/first.drill", '  plan "Seven', "-iron")).toBe(`\`\`\`drillwright
plan "Seven-iron: \\"gate\\""
\`\`\`

Second lesson.

Path first, then the start line.

- for \`7-iron\` and \`chipper\`
- 2 blocks · 30 shots · 5 goals · 55 min
- needs \`club-path\`, \`carry\` and \`miss-share\`

**Caution:** Stop on pain.`);
  });

  test("a block, from the session that says where it starts", async () => {
    const hover = await inSample("sessions/first.drill", '  block "Ga', 'te"');
    expect(hover).toContain('block "Gate" blocked');
    expect(hover).toContain("18 shots · 5 goals");
    expect(hover).toContain("cue: Brush the grass");
  });

  test("a player, a source and a session", async () => {
    expect(await inSample("sessions/first.drill", '  player "P', '-07"')).toContain("right-handed");
    const source = await inSample("sessions/first.drill", ' from "Fi', 'eld"');
    expect(source).toContain("reads `club-path`, `carry` and `offline`");
    expect(source).toContain("knows the block");
    expect(await inSample("sessions/first.drill", 'session "Fi', "rst")).toContain("P-07 · 2026-10-12");
  });

  test("a used file: what it declares", async () => {
    expect(await inSample("plans/gate.drill", 'use "../lib', "rary")).toBe(
      "Declares `miss-share`, `chips` and `chipper`.",
    );
    expect(await hoverOver('use "./no<|>where"\n')).toBe("There is no such file in the workspace.");
  });

  test("what Markdown would take for its own is shown as it was written", async () => {
    expect(await hoverOver('player "P*<|>1*" {\n  note "a_b_c *d*"\n}')).toContain("a\\_b\\_c \\*d\\*");
  });
});

describe("goals", () => {
  test("say in a sentence what they ask for, and what on target means here", async () => {
    expect(await hoverOver(line("success at le<|>ast 7 of 10 shots on target"))).toBe(
      "At least 7 of the first 10 shots are on target.\n\nOn target: `club-path within ±2°`.",
    );
    expect(await marked(line("success at least <|>7 of 10 shots on target"))).toBe(
      "at least 7 of 10 shots on target",
    );
  });

  test("say what the block requires of every shot", async () => {
    const required = "require carry at least 140 yd\n";
    expect(await hoverOver(line(`${required}success at le<|>ast 7 of 10 shots on target`))).toBe(
      "At least 7 of the first 10 shots are on target and as required.\n\nOn target: `club-path within ±2°`.\n\nAs required: `carry at least 140 yd`.",
    );
  });

  test("say when they are about the player and not about today's shots", async () => {
    expect(await hoverOver(line("success avera<|>ge carry at least 140 yd at 80 % confidence"))).toBe(
      "In the long run, the player's average carry is at least 140 yd, shown at 80 % confidence.",
    );
  });

  test("that name no number of shots are about those of the block", async () => {
    expect(await hoverOver(line("success at <|>least 7 shots on target"))).toContain("first 10 shots");
    const finding = 'finding "Low" {\n  when at <|>least 7 shots with carry below 100 yd\n}\n';
    expect(await hoverOver(finding)).toBe("At least 7 of all shots have carry below 100 yd.");
  });

  test("say what is required of every shot", async () => {
    const hover = await hoverOver(
      line("require smash-factor at least 1.2\n    success at le<|>ast 7 of 10 shots on target"),
    );
    expect(hover).toContain("As required: `smash-factor at least 1.2`.");
  });

  test("call the baseline by its name, where a block has one before it", async () => {
    const change = "success carry los<|>es no more than 4 yd against the baseline";
    const baseline = 'block "As you are" baseline {\n    10 shots\n  }';
    const behind = line(change).replace("block", `${baseline}\n  block`);
    expect(await hoverOver(behind)).toContain('at most 4 yd less than in "As you are"');
    expect(await hoverOver(line(change))).toContain('at most 4 yd less than in "the baseline"');
  });

  test("say nothing while they are unfinished", async () => {
    expect(await hoverOver(line("success at le<|>ast 7 of"))).toBe("");
    expect(await hoverOver(line("success average nothing at mo<|>st 2°"))).toBe("");
  });
});

describe("words of the language", () => {
  test("are explained by the grammar, and are marked alone", async () => {
    expect(await hoverOver(line('cu<|>e "Brush"'))).toBe("What the player should think of, in a few words.");
    expect(await marked(line('cu<|>e "Brush"'))).toBe("cue");
  });

  test("are explained wherever in their phrase one points", async () => {
    const meaning = "Shots to set aside before scoring. They are listed with their reason.";
    for (const phrase of [
      "le<|>ave out shots where",
      "leave o<|>ut shots where",
      "leave out shots <|>where",
    ]) {
      expect(await hoverOver(line(`${phrase} carry below 10 yd`))).toBe(meaning);
    }
  });

  test("each kind of block has its own explanation", async () => {
    expect(await hoverOver('plan "P" {\n  block "B" ba<|>seline {\n  }\n}')).toBe(
      "Shots as they come, before anything is changed.",
    );
    expect(await hoverOver('plan "P" {\n  block "B" warm<|>-up {\n  }\n}')).toContain("Easy swings");
  });

  test("nothing is said about spaces, numbers, braces and comments", async () => {
    expect(await hoverOver(line('cue<|>   "Brush"'))).toBe("");
    expect(await hoverOver(line("1<|>2 shots"))).toBe("");
    expect(await hoverOver('plan "P" <|>{\n}')).toBe("");
    expect(await hoverOver("// club-<|>path\n")).toBe("");
  });
});
