/** Which way columns are signed: proposed where the table proves it, asked where it does not. */
import { beforeAll, describe, expect, test } from "vitest";
import { propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";
import { generatedShots, random } from "./generated-shots.ts";

let vocabulary: Vocabulary;
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

const DEGREE = Math.PI / 180;

/** A column: its header, its metric, and how a value in ° or m is written. */
type Written = readonly [header: string, metric: string, write: (value: number) => string];

const plain = (sign: number) => (value: number) => (sign * value).toFixed(2);
const lettered = (value: number) => `${Math.abs(value).toFixed(2)} ${value < 0 ? "L" : "R"}`;

function table(columns: readonly Written[], seed: number): string {
  const shots = generatedShots(30, seed);
  const rows = shots.map(({ values }) =>
    columns
      .map(([, metric, write]) => {
        const dimension = vocabulary.metrics.find(({ name }) => name === metric)?.dimension;
        return write((values[metric] ?? Number.NaN) / (dimension === "angle" ? DEGREE : 1));
      })
      .join(";"),
  );
  return `${columns.map(([header]) => header).join(";")}\n${rows.join("\n")}\n`;
}

/** The proposed sides by header: a word, `cells`, `none`, or the words to choose from. */
function sides(content: string): Record<string, string> {
  const { columns } = propose([{ path: "shots.csv", content }], { vocabulary });
  return Object.fromEntries(
    columns.map(({ header, meaning, signs, reasons }) => [
      header,
      signs.length > 0
        ? `${signs.join(" or ")}?`
        : meaning?.kind === "metric"
          ? (meaning.positive ?? (reasons.includes("its cells name the side") ? "cells" : "none"))
          : "nothing",
    ]),
  );
}

test("without a proof every side is asked for, but that balls leave upwards", () => {
  const content = table(
    [
      ["Path (deg)", "club-path", plain(1)],
      ["Face (deg)", "face-angle", plain(1)],
      ["Face to path (deg)", "face-to-path", plain(1)],
      ["Attack (deg)", "attack-angle", plain(1)],
      ["Launch (deg)", "launch-angle", plain(-1)],
      ["Side (m)", "offline", plain(1)],
      ["Club speed (m/s)", "club-speed", plain(1)],
    ],
    1,
  );
  expect(sides(content)).toEqual({
    "Path (deg)": "right or left?",
    "Face (deg)": "right or left?",
    "Face to path (deg)": "right or left?",
    "Attack (deg)": "up or down?",
    "Launch (deg)": "down",
    "Side (m)": "right or left?",
    "Club speed (m/s)": "none",
  });
});

describe("a side is taken from", () => {
  test.each([
    ["Path [deg, + = right]", "club-path", "right"],
    ["Path (L+ R-)", "club-path", "left"],
    ["Path (positive in-to-out)", "club-path", "in-to-out"],
    ["Path (in-out +)", "club-path", "in-to-out"],
    ["Offline L-/R+", "offline", "right"],
    ["Side (m), left is positive", "offline", "left"],
    ["Attack (down = +)", "attack-angle", "down"],
    ["Face (open +)", "face-angle", "open"],
    ["Low point (cm, + ahead)", "low-point", "ahead"],
    ["side_m_right_positive", "offline", "right"],
    ["path_deg_positive_is_left", "club-path", "left"],
    ["Start li(+)/re(-)", "start-direction", "left"],
  ])("the header %j", (header, metric, side) => {
    const { columns } = propose(
      [
        {
          path: "a.csv",
          content: table(
            [
              [header, metric, plain(1)],
              ["Carry (m)", "carry", plain(1)],
            ],
            2,
          ),
        },
      ],
      { vocabulary },
    );
    expect(columns[0]).toMatchObject({
      meaning: { metric, positive: side },
      confidence: expect.stringMatching("sure|likely"),
    });
  });

  test("the cells, where every reading names one", () => {
    const found = sides(table([["Side (m)", "offline", lettered]], 3));
    expect(found).toEqual({ "Side (m)": "cells" });
    const halfNamed = sides(
      table([["Side (m)", "offline", (value) => (value > 20 ? value.toFixed(1) : lettered(value))]], 3),
    );
    expect(halfNamed).toEqual({ "Side (m)": "right or left?" });
  });

  test("the cells in German, and the proposal says what they mean", () => {
    const { text, open } = propose(
      [{ path: "a.csv", content: "Carry (m);Seite (m)\n150;3 li\n151;4 re\n152;0\n153;1 li\n" }],
      { vocabulary },
    );
    expect(text).toContain('  column "Seite (m)" is offline in m where "li" is left, "re" is right\n');
    expect(open).toBe(2); // plan and player
  });

  test("the coach, where the cells name the sides in words that are not known", () => {
    const content = table(
      [
        ["Écart (m)", "offline", (value) => `${Math.abs(value).toFixed(1)} ${value < 0 ? "G" : "D"}`],
        ["Side (m)", "offline", (value) => `${Math.abs(value).toFixed(1)} ${value < 0 ? "G" : "D"}`],
      ],
      3,
    );
    const { text } = propose([{ path: "a.csv", content }], { vocabulary });
    expect(text).toContain('// settle: Which sides are "d" and "g"? Keep one of these lines.');
    expect(text).toContain('// column "Side (m)" is offline in m where "d" is right, "g" is left\n');
    expect(text).toContain('// column "Side (m)" is offline in m where "d" is left, "g" is right\n');
  });

  test("the coach, where in or out alone may be where a path comes from, or where it goes", () => {
    expect(sides(table([["Path (out +)", "club-path", plain(1)]], 3))).toEqual({
      "Path (out +)": "right or left?",
    });
    const inOut = (value: number) => `${Math.abs(value).toFixed(1)} ${value < 0 ? "i" : "o"}`;
    expect(
      propose([{ path: "a.csv", content: table([["Path", "club-path", inOut]], 3) }], { vocabulary }).text,
    ).toContain('// settle: Which sides are "i" and "o"? Keep one of these lines.');
  });

  test("no header that only looks so", () => {
    expect(
      sides(
        table(
          [
            ["Carry + Roll (m)", "total", plain(1)],
            ["In-out path", "club-path", plain(1)],
          ],
          2,
        ),
      ),
    ).toEqual({
      "Carry + Roll (m)": expect.stringMatching("nothing|none"),
      "In-out path": "right or left?",
    });
  });
});

describe("over fifty tables, one proven side proves others, and never a wrong one", () => {
  const word = (sign: number) => (sign === 1 ? "right" : "left");

  test("face to path is face minus path", () => {
    for (let seed = 1; seed <= 50; seed++) {
      const next = random(seed);
      const [path, face, difference] = [next, next, next].map((draw) => (draw() < 0.5 ? -1 : 1));
      const found = sides(
        table(
          [
            [`Path (${path === 1 ? "R" : "L"}+)`, "club-path", plain(path ?? 1)],
            ["Face", "face-angle", plain(face ?? 1)],
            ["F2P", "face-to-path", plain(difference ?? 1)],
          ],
          seed,
        ),
      );
      expect([seed, found.Face, found.F2P]).toEqual([seed, word(face ?? 1), word(difference ?? 1)]);
    }
  });

  test("letters beside where the ball ended prove start, curve, axis and face", () => {
    let settled = 0;
    for (let seed = 1; seed <= 50; seed++) {
      const next = random(seed);
      const names = ["start-direction", "curve", "spin-axis", "face-angle", "club-path", "face-to-path"];
      const signs = names.map(() => (next() < 0.5 ? -1 : 1));
      const found = sides(
        table(
          [
            ["Offline", "offline", lettered],
            ["Carry (m)", "carry", plain(1)],
            ...names.map((name, at): Written => [name, name, plain(signs[at] ?? 1)]),
          ],
          seed,
        ),
      );
      for (const [at, name] of names.entries()) {
        expect([seed, name, [word(signs[at] ?? 1), "right or left?"]]).toEqual([
          seed,
          name,
          expect.arrayContaining([found[name]]),
        ]);
        if (found[name] === word(signs[at] ?? 1)) settled++;
      }
    }
    expect(settled).toBeGreaterThan(200);
  });

  test("spin loft is dynamic loft minus attack angle", () => {
    let settled = 0;
    for (let seed = 1; seed <= 50; seed++) {
      const sign = seed % 2 === 0 ? 1 : -1;
      const found = sides(
        table(
          [
            ["Attack", "attack-angle", plain(sign)],
            ["Dynamic loft", "dynamic-loft", plain(1)],
            ["Spin loft", "spin-loft", plain(1)],
          ],
          seed,
        ),
      );
      expect(["up or down?", sign === 1 ? "up" : "down"]).toContain(found.Attack);
      if (found.Attack !== "up or down?") settled++;
    }
    expect(settled).toBeGreaterThan(25);
  });

  test("columns that do not hang together prove nothing", () => {
    for (let seed = 1; seed <= 50; seed++) {
      const next = random(seed);
      const noise = () => (10 * next() - 5).toFixed(1);
      const found = sides(
        table(
          [
            ["Path (R+)", "club-path", noise],
            ["Face", "face-angle", noise],
            ["F2P", "face-to-path", noise],
            ["Start", "start-direction", noise],
            ["Spin axis", "spin-axis", noise],
            ["Curve (m)", "curve", noise],
          ],
          seed,
        ),
      );
      expect([seed, found]).toEqual([
        seed,
        {
          ...found,
          Face: "right or left?",
          F2P: "right or left?",
          Start: "right or left?",
          "Spin axis": "right or left?",
          "Curve (m)": "right or left?",
        },
      ]);
    }
  });
});

describe("a minus that does not stand in front of the number", () => {
  const bracketed = (value: number) => (value < 0 ? `(${(-value).toFixed(2)})` : value.toFixed(2));
  const behind = (value: number) => (value < 0 ? `${(-value).toFixed(2)}-` : value.toFixed(2));
  const lines = (columns: readonly Written[]) =>
    propose([{ path: "shots.csv", content: table(columns, 3) }], { vocabulary })
      .text.split("\n")
      .map((line) => line.trim())
      .filter((line) => line.includes("column") || line.includes("brackets"));

  test("is said together with the side", () => {
    expect(
      lines([
        ["Path (deg, + right)", "club-path", bracketed],
        ["Side (m)", "offline", behind],
        ["Carry (m)", "carry", plain(1)],
      ]),
    ).toEqual([
      "// settle: Do brackets around a number mean minus, as was taken?",
      'column "Path (deg, + right)" is club-path in ° positive right where "()" is left',
      '// column "Side (m)" is offline in m positive right where "-" is left',
      '// column "Side (m)" is offline in m positive left where "-" is right',
      'column "Carry (m)" is carry in m',
    ]);
  });

  test("is none where other numbers have one in front", () => {
    const both = (value: number) => (value < -2 ? plain(1)(value) : bracketed(value));
    expect(lines([["Path (deg, + right)", "club-path", both]])).toEqual([
      '// column "Path (deg, + right)" is club-path in ° positive right',
      '// column "Path (deg, + right)" is club-path in ° positive left',
    ]);
  });
});

describe("amounts whose side stands in another column", () => {
  const text = (rows: string) =>
    propose([{ path: "shots.csv", content: `Carry (m);Offline (m);Dir\n${rows}` }], { vocabulary }).text;
  const WARNING = '// settle: No number has a sign here, and column "Dir" names sides.';

  test("may be read by it: that stands first to choose from", () => {
    const found = text("150;3.2;L\n151;4;R\n152;0;\n149;1;left\n");
    expect(found).toContain(WARNING);
    expect(found.split("\n").filter((line) => line.includes('// column "Offline (m)"'))).toEqual([
      '  // column "Offline (m)" is offline in m sides in "Dir"',
      '  // column "Offline (m)" is offline in m positive right',
      '  // column "Offline (m)" is offline in m positive left',
    ]);
    expect(found).not.toContain("Not read");
  });

  test("may be read by one in German", () => {
    expect(text("150;3.2;links\n151;4;rechts\n152;0;-\n149;1;Links\n")).toContain(
      'sides in "Dir" where "links" is left, "rechts" is right, "Links" is left\n',
    );
  });

  test.each([
    ["a number has a sign", "150;-3.2;L\n151;4;R\n152;0;\n"],
    ["one side only is named", "150;3.2;L\n151;4;L\n152;1;L\n"],
    ["other things are named", "150;3.2;L\n151;4;R\n152;1;long\n"],
  ])("are none where %s", (_, rows) => {
    expect(text(rows)).not.toContain(WARNING);
  });
});

describe("where no side is known, one answer tells the others", () => {
  const question = (content: string, header: string) =>
    propose([{ path: "shots.csv", content }], { vocabulary }).columns.find(
      (column) => column.header === header,
    )?.settle[0];

  test("and the question says how", () => {
    const content = table(
      [
        ["Path", "club-path", plain(1)],
        ["Face", "face-angle", plain(-1)],
        ["F2P", "face-to-path", plain(1)],
      ],
      4,
    );
    expect(question(content, "Path")).toContain("The table does not tell.");
    expect(question(content, "Face")).toBe(
      'Which way is positive? It follows from column "Path": positive left where that is positive right, positive right where that is positive left, since face to path is face minus path only so. Keep one of these lines; where the sign turns for left-handers, say open or closed.',
    );
  });

  test("rightly, however columns are signed, over forty tables", () => {
    const names = [
      "club-path",
      "face-angle",
      "face-to-path",
      "start-direction",
      "spin-axis",
      "curve",
      "offline",
    ];
    let linked = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const next = random(seed);
      const signs = new Map(names.map((name) => [name, next() < 0.5 ? -1 : 1] as const));
      const content = table(
        [
          ...names.map((name): Written => [name, name, plain(signs.get(name) ?? 1)]),
          ["Carry (m)", "carry", plain(1)],
        ],
        seed,
      );
      for (const name of names) {
        const found = /It follows from column "(.+)": positive (\w+) where that is positive right/.exec(
          question(content, name) ?? "",
        );
        if (found === null) continue;
        const isSame = signs.get(name) === signs.get(found[1] ?? "");
        expect([seed, name, found[2]]).toEqual([seed, name, isSame ? "right" : "left"]);
        linked++;
      }
    }
    expect(linked).toBeGreaterThan(100);
  });
});
