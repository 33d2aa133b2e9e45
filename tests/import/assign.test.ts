import { describe, expect, test } from "vitest";
import { assign } from "../../server/import/assignment/assign.ts";
import type { Hit } from "../../server/import/cells/hits.ts";
import type { Block, Plan, Session } from "../../shared/plan-model.ts";
import { block, NOWHERE, scoringInput } from "../support/scoring-input.ts";

interface Described {
  readonly club?: string;
  readonly named?: string | null;
  readonly aside?: boolean;
  readonly file?: string;
  readonly line?: number;
  /** Seconds after midnight. */
  readonly time?: number;
}

/** So many shots alike. */
const shots = (count: number, described: Described = {}): Described[] => Array(count).fill(described);

interface Situation {
  readonly blocks: readonly Block[];
  readonly plan?: Partial<Plan>;
  readonly starts?: readonly (readonly [block: string, row: number])[];
  /** Starts by time of day, in seconds, or by row, in a table by its path. */
  readonly stated?: readonly {
    readonly block: string;
    readonly row?: number;
    readonly time?: number;
    readonly file?: string;
  }[];
  /** The tables as the session writes their paths; the shots call them the same with `data/` in front. */
  readonly data?: readonly string[];
}

/** Assigns shots that stand on the lines from 2 on. Blocks come back as runs: `Gate 3, Test 2`. */
function assigned(
  described: readonly Described[],
  { blocks, plan = {}, starts = [], stated = [], data }: Situation,
) {
  const hits = described.map(
    ({ club, named, aside, file = "shots.csv", line, time }, place): Hit => ({
      row: { file, line: line ?? place + 2 },
      values: {},
      categories: {},
      derived: [],
      disagreements: [],
      time: time ?? null,
      order: "",
      membership: "any",
      club: club ?? null,
      namedBlock: named,
      excluded: aside ? 'marked "N" in column "Use"' : null,
    }),
  );
  const session: Pick<Session, "starts"> = {
    starts: starts.map(([block, row]) => ({ block, row, time: null, file: null, location: NOWHERE })),
  };
  session.starts.push(
    ...stated.map(({ block, row = null, time = null, file = null }) => ({
      block,
      row,
      time,
      file,
      location: NOWHERE,
    })),
  );
  const paths = data?.map((path) => ({ path, source: "Bay table", location: NOWHERE }));
  const input = scoringInput({
    blocks,
    plan,
    session: { ...session, ...(paths === undefined ? {} : { data: paths }) },
  });
  const files = data?.map((path) => `data/${path}`) ?? [...new Set(hits.map(({ row }) => row.file))];
  const { blocks: given, assignment } = assign(hits, input, files);
  return { runs: runs(given), ...assignment };
}

function runs(blocks: readonly (string | null)[]): string {
  const found: { name: string; length: number }[] = [];
  for (const block of blocks) {
    const last = found.at(-1);
    if (last?.name === (block ?? "none")) last.length++;
    else found.push({ name: block ?? "none", length: 1 });
  }
  return found.map(({ name, length }) => `${name} ${length}`).join(", ");
}

const gateAndTest = [block("Gate", 3), block("Test", 2)];

describe("by the names in the tables", () => {
  test("every shot belongs to the block its row names", () => {
    const named = ["Test", "Test", "Gate", "Gate", null, "Test"].map((named) => ({ named }));
    const result = assigned([...named, {}], { blocks: gateAndTest });
    expect(result.method).toBe("column");
    expect(result.runs).toBe("Test 2, Gate 2, none 1, Test 1, none 1");
    expect(result.explanation).toBe("The tables name the block of each shot.");
  });

  test("names that stand on one row each are marks, and blocks go on below them", () => {
    const result = assigned([{}, { named: "Gate" }, {}, {}, { named: "Test" }, {}], { blocks: gateAndTest });
    expect(result.runs).toBe("none 1, Gate 3, Test 2");
    expect(result.explanation).toContain("on one row only");
  });

  test("names go before starts, and it is said so", () => {
    const result = assigned(shots(2, { named: "Gate" }), { blocks: gateAndTest, starts: [["Test", 2]] });
    expect(result.runs).toBe("Gate 2");
    expect(result.explanation).toContain("The starts that the session states were therefore not needed.");
  });

  test("names the plan does not have are no names to go by", () => {
    const result = assigned(shots(5, { named: null }), { blocks: gateAndTest });
    expect([result.method, result.runs]).toEqual(["order", "Gate 3, Test 2"]);
  });
});

describe("by the starts in the session", () => {
  test("a block goes on from its row until another starts", () => {
    const result = assigned(shots(6), {
      blocks: gateAndTest,
      starts: [
        ["Gate", 3],
        ["Test", 6],
      ],
    });
    expect([result.method, result.runs]).toEqual(["starts", "none 1, Gate 3, Test 2"]);
    expect(result.explanation).toBe("Blocks start on the rows that the session states.");
  });

  test("starts may be written in any order, and point between two shots", () => {
    const described = [{ line: 2 }, { line: 5 }, { line: 9 }];
    const result = assigned(described, {
      blocks: gateAndTest,
      starts: [
        ["Test", 6],
        ["Gate", 1],
      ],
    });
    expect(result.runs).toBe("Gate 2, Test 1");
  });

  test("where the newest shot stands at the top, a block goes on upwards", () => {
    const described = [6, 5, 4, 3, 2].map((line) => ({ line }));
    const result = assigned(described, {
      blocks: gateAndTest,
      starts: [
        ["Gate", 6],
        ["Test", 3],
      ],
    });
    expect(result.runs).toBe("Gate 3, Test 2");
  });

  test("a block starts at a time with the first shot at that time or later", () => {
    const described = [37_800, 37_860, 37_920, 37_980].map((time) => ({ time }));
    const runsFrom = (gate: number, test: number) =>
      assigned(described, {
        blocks: gateAndTest,
        stated: [
          { block: "Gate", time: gate },
          { block: "Test", time: test },
        ],
      }).runs;
    expect(runsFrom(37_800, 37_920)).toBe("Gate 2, Test 2");
    expect(runsFrom(36_000, 37_861)).toBe("Gate 2, Test 2");
    expect(runsFrom(37_801, 37_980)).toBe("none 1, Gate 2, Test 1");
  });

  test("a row past the last shot is pointed out", () => {
    const result = assigned(shots(2), {
      blocks: gateAndTest,
      starts: [
        ["Gate", 2],
        ["Test", 40],
      ],
    });
    expect(result.runs).toBe("Gate 2");
    expect(result.explanation).toContain(
      'Row 40, where "Test" should start, is past the last shot, so it has none.',
    );
  });

  test("with several tables, a row that is not below the one before is one of the next table", () => {
    const first = [2, 3, 4].map((line) => ({ file: "a.csv", line }));
    const second = [2, 3, 4].map((line) => ({ file: "b.csv", line }));
    const starts = [
      ["Gate", 2],
      ["Test", 4],
      ["Gate", 3],
    ] as const;
    const result = assigned([...first, ...second], { blocks: gateAndTest, starts });
    expect(result.runs).toBe("Gate 2, Test 2, Gate 2");
    expect(result.explanation).toContain("next table");
  });

  test("a row that is stated again is one of the next table, too", () => {
    const described = ["a.csv", "b.csv"].flatMap((file) => [2, 3].map((line) => ({ file, line })));
    const starts = [
      ["Gate", 2],
      ["Test", 2],
    ] as const;
    expect(assigned(described, { blocks: gateAndTest, starts }).runs).toBe("Gate 2, Test 2");
  });
});

describe("in the order of the plan", () => {
  test("each block takes its number of shots", () => {
    const result = assigned(shots(5), { blocks: gateAndTest });
    expect([result.method, result.runs]).toEqual(["order", "Gate 3, Test 2"]);
    expect(result.explanation).toBe(
      "Neither the tables nor the session says where blocks start, so each block took its number of shots in the order of the plan. The plan asks for 5 shots, the tables hold 5.",
    );
  });

  test("shots that are missing are missing at the end, and it is said so", () => {
    const result = assigned(shots(4), { blocks: gateAndTest });
    expect(result.runs).toBe("Gate 3, Test 1");
    expect(result.explanation).toContain('"Test" has 1 of its 2 shots.');
    expect(result.explanation).toContain('say so in the session: block "Test" from row …');
  });

  test("shots too many stay with the last block, and it is said so", () => {
    const result = assigned(shots(7), { blocks: gateAndTest });
    expect(result.runs).toBe("Gate 3, Test 4");
    expect(result.explanation).toContain('"Test" has 4 shots where 2 were asked for.');
  });

  const atLeast = (name: string, count: number) =>
    block(name, 0, null, { shots: [{ count, open: true, club: null, effort: null }] });

  test("a surplus goes to the one block that asks for at least so many", () => {
    const middle = assigned(shots(9), {
      blocks: [block("Wake up", 2), atLeast("Gate", 3), block("Test", 2)],
    });
    expect(middle.runs).toBe("Wake up 2, Gate 5, Test 2");
    expect(middle.explanation).toContain(
      '"Gate" asks for at least 3 and was given what is left over, 5 in all.',
    );
    const last = assigned(shots(7), { blocks: [block("Gate", 3), atLeast("Test", 2)] });
    expect(last.runs).toBe("Gate 3, Test 4");
  });

  test("a surplus that two blocks could have stays at the end", () => {
    const blocks = [atLeast("Wake up", 2), atLeast("Gate", 3), block("Test", 2)];
    expect(assigned(shots(9), { blocks }).runs).toBe("Wake up 2, Gate 3, Test 4");
    const play = [atLeast("Gate", 3), block("Play", 0)];
    expect(assigned(shots(9), { blocks: play }).runs).toBe("Gate 3, Play 6");
  });

  test("shots set aside belong to a block but use up none of its number", () => {
    const described = [...shots(2), { aside: true }, ...shots(1), { aside: true }, ...shots(2)];
    const result = assigned(described, { blocks: gateAndTest });
    expect(result.runs).toBe("Gate 5, Test 2");
    expect(result.explanation).toContain(
      "The plan asks for 5 shots, the tables hold 5, and 2 more that they set aside.",
    );
  });

  test("several lines of shots count together", () => {
    const both = block("Wake up", 0, null, {
      shots: [2, 3].map((count) => ({ count, open: false, club: null, effort: null })),
    });
    expect(assigned(shots(6), { blocks: [both, block("Gate", 1)] }).runs).toBe("Wake up 5, Gate 1");
  });

  test("a block that asks for no number gets none, unless it is the last", () => {
    const blocks = [block("Talk", 0), block("Gate", 2), block("Play", 0)];
    const result = assigned(shots(5), { blocks });
    expect(result.runs).toBe("Gate 2, Play 3");
    expect(result.explanation).toContain('"Talk" asks for no number of shots and got none.');
  });

  test("without a block, no shot has one", () => {
    expect(assigned(shots(2), { blocks: [] }).runs).toBe("none 2");
  });
});

describe("in the order of the plan, with clubs", () => {
  const wedge = { club: "gap-wedge" };
  const iron = { club: "7-iron" };
  const blocks = [block("Wake up", 3, "gap-wedge"), block("Gate", 3, "7-iron"), block("Test", 2, "7-iron")];

  test("a change to the next block's club ends a block early", () => {
    const result = assigned([...shots(2, wedge), ...shots(5, iron)], { blocks });
    expect(result.runs).toBe("Wake up 2, Gate 3, Test 2");
    expect(result.explanation).toContain(
      '"Wake up" has 2 of its 3 shots, because the club changes to 7-iron.',
    );
  });

  test("a block keeps the shots that follow with its own club", () => {
    const result = assigned([...shots(5, wedge), ...shots(5, iron)], { blocks });
    expect(result.runs).toBe("Wake up 5, Gate 3, Test 2");
    expect(result.explanation).toContain('"Wake up" has 5 shots where 3 were asked for.');
  });

  test("a shot set aside with the next block's club begins that block", () => {
    const result = assigned([...shots(3, wedge), { ...iron, aside: true }, ...shots(5, iron)], { blocks });
    expect(result.runs).toBe("Wake up 3, Gate 4, Test 2");
  });

  test("shots without a known club, or with one neither block uses, go by number", () => {
    const result = assigned(
      [...shots(2, wedge), {}, { club: "driver" }, ...shots(2, iron), ...shots(2, iron)],
      { blocks },
    );
    expect(result.runs).toBe("Wake up 3, Gate 3, Test 2");
  });

  test("a block that names no club uses the plan's first", () => {
    const unnamed = [block("Wake up", 3, "gap-wedge"), block("Gate", 3)];
    const result = assigned([...shots(2, wedge), ...shots(3, iron)], {
      blocks: unnamed,
      plan: { clubs: ["7-iron", "driver"] },
    });
    expect(result.runs).toBe("Wake up 2, Gate 3");
  });
});

describe("by the time of day", () => {
  const at = (...minutes: number[]) => minutes.map((minute) => ({ time: 36000 + 60 * minute }));

  test("a block starts with the first shot at its time or after it", () => {
    const result = assigned([...at(0, 1, 2), {}, ...at(12, 13)], {
      blocks: gateAndTest,
      stated: [
        { block: "Gate", time: 36000 + 30 },
        { block: "Test", time: 36000 + 600 },
      ],
    });
    expect([result.method, result.runs]).toEqual(["starts", "none 1, Gate 3, Test 2"]);
    expect(result.explanation).toBe("Blocks start at the times that the session states.");
  });

  test("a time past the last shot, and times in a table that has none, are pointed out", () => {
    const late = assigned(at(0, 1), { blocks: gateAndTest, stated: [{ block: "Test", time: 40000 }] });
    expect(late.runs).toBe("none 2");
    expect(late.explanation).toContain(
      '11:06:40, when "Test" should start, is past the last shot, so it has none.',
    );
    const untold = assigned(shots(2), { blocks: gateAndTest, stated: [{ block: "Test", time: 38520 }] });
    expect(untold.explanation).toContain(
      '"Test" should start at 10:42, but the table does not tell when shots were hit',
    );
  });
});

test("a start may name its table, in the words of the session", () => {
  const described = ["data/a.csv", "data/b.csv"].flatMap((file) => [2, 3, 4].map((line) => ({ file, line })));
  const result = assigned(described, {
    blocks: gateAndTest,
    data: ["a.csv", "b.csv"],
    stated: [
      { block: "Gate", row: 3, file: "a.csv" },
      { block: "Test", row: 4, file: "b.csv" },
    ],
  });
  expect(result.runs).toBe("none 1, Gate 4, Test 1");
  expect(result.explanation).toBe("Blocks start on the rows that the session states.");
});

describe("by pauses, where the numbers do not add up", () => {
  /** Shots half a minute apart, with pauses of so many seconds between the groups. */
  const groups = (pause: number, ...sizes: number[]) => {
    let start = 36000;
    return sizes.flatMap((size) => {
      const group = Array.from({ length: size }, (_, place) => ({ time: start + 30 * place }));
      start += 30 * size + pause;
      return group;
    });
  };

  test("each group of shots is a block", () => {
    const result = assigned(groups(240, 4, 2), { blocks: gateAndTest });
    expect([result.method, result.runs]).toEqual(["order", "Gate 4, Test 2"]);
    expect(result.explanation).toContain(
      "The shots come in 2 groups with clear pauses between them (5 min), as many as there are blocks",
    );
  });

  test.each([
    ["the numbers add up", groups(240, 2, 3), "Gate 3, Test 2"],
    ["no pause is clear", groups(30, 4, 2), "Gate 3, Test 3"],
    ["there are more groups than blocks", groups(240, 2, 2, 2), "Gate 3, Test 3"],
    ["a shot has no time", [...groups(240, 4, 1), {}], "Gate 3, Test 3"],
    ["times go back", groups(240, 4, 2).toReversed(), "Gate 3, Test 3"],
  ])("not where %s", (_, described, runs) => {
    expect(assigned(described, { blocks: gateAndTest }).runs).toBe(runs);
  });

  test("not where a club speaks against it", () => {
    const blocks = [block("Wake up", 3, "gap-wedge"), block("Gate", 3, "7-iron")];
    const described = groups(240, 2, 5).map((shot, place) => ({
      ...shot,
      club: place < 3 ? "gap-wedge" : "7-iron",
    }));
    expect(assigned(described, { blocks }).runs).toBe("Wake up 3, Gate 4");
  });
});

describe("starts to be written into the session", () => {
  test("are suggested where the numbers do not add up", () => {
    expect(assigned(shots(7), { blocks: gateAndTest }).suggestedStarts).toEqual([
      { block: "Gate", row: 2, file: null },
      { block: "Test", row: 5, file: null },
    ]);
    expect(assigned(shots(5), { blocks: gateAndTest }).suggestedStarts).toBeUndefined();
  });

  test("name their table where there are several", () => {
    const described = ["data/a.csv", "data/b.csv"].flatMap((file) => [2, 3].map((line) => ({ file, line })));
    expect(assigned(described, { blocks: gateAndTest, data: ["a.csv", "b.csv"] }).suggestedStarts).toEqual([
      { block: "Gate", row: 2, file: "a.csv" },
      { block: "Test", row: 3, file: "b.csv" },
    ]);
  });

  test("are not suggested where the block that asks for at least so many takes what is left over", () => {
    const open = { ...block("Gate", 3), shots: [{ count: 3, club: null, effort: null, open: true }] };
    expect(assigned(shots(7), { blocks: [open, block("Test", 2)] })).not.toHaveProperty("suggestedStarts");
  });

  test("are the same reading when they are written down", () => {
    const described = shots(9);
    const { runs, suggestedStarts = [] } = assigned(described, { blocks: gateAndTest });
    expect(suggestedStarts).toHaveLength(2);
    const stated = suggestedStarts.map(({ block, row }) => ({ block, row }));
    expect(assigned(described, { blocks: gateAndTest, stated }).runs).toBe(runs);
  });

  test("name the table where the shots were not hit in the order of its rows", () => {
    const described = [9, 8, 7, 6, 5, 4].map((line) => ({ file: "data/a.csv", line }));
    const { suggestedStarts } = assigned(described, { blocks: gateAndTest, data: ["a.csv"] });
    expect(suggestedStarts).toEqual([
      { block: "Gate", row: 9, file: "a.csv" },
      { block: "Test", row: 6, file: "a.csv" },
    ]);
  });

  test("are not suggested where lines cannot say them", () => {
    const onOneLine = shots(7, { line: 1 });
    expect(assigned(onOneLine, { blocks: gateAndTest })).not.toHaveProperty("suggestedStarts");
  });
});
