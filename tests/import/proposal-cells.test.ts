/** What the cells say of a column whose name says little, and what no column may be taken for. */
import { beforeAll, describe, expect, test } from "vitest";
import { propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";

let vocabulary: Vocabulary;
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

/** What a column of these cells, beside one of clubs, is taken for. */
function taken(header: string, cells: readonly string[]) {
  const rows = cells.map((cell) => `${cell};7i`);
  const content = `${header};Club\n${rows.join("\n")}\n`;
  const [column] = propose([{ path: "shots.csv", content }], { vocabulary }).columns;
  const meaning = column?.meaning ?? null;
  const name = meaning === null ? "nothing" : "metric" in meaning ? meaning.metric : meaning.kind;
  return { name, column, meaning };
}

const count = (from: number, step = 1) => Array.from({ length: 12 }, (_, row) => String(from + step * row));

describe("a column that counts the rows holds the numbers of the shots", () => {
  test.each([
    ["Pos", count(1)],
    ["idx", count(0)],
    ["Tiro", count(1)],
    ["Ball", count(12, -1)],
    ["lfd. Nr.", count(1)],
    ["Set pos", [...count(1), ...count(1)]],
  ])("%s", (header, cells) => {
    expect(taken(header, cells)).toMatchObject({ name: "order", column: { confidence: "sure", settle: [] } });
  });

  test.each([
    ["Pos (cm)", ["2.1", "1.5", "3.0", "2.2", "1.1", "0.4"], "low-point"],
    ["Effort (%)", count(60), "effort"],
    ["Session", count(1), "session"],
  ])("but %s does not", (header, cells, name) => {
    expect(taken(header, cells).name).toBe(name);
  });
});

test.each([
  ["Strike", ["5T", "3H", "4T", "2T", "1H", "6H"], "strike-side"],
  ["Strike", ["5 high", "3 low", "4 high", "2 low", "1 low", "6 low"], "strike-height"],
  ["Side", ["5 R", "3 L", "4 R", "2 L", "1 L", "6 L"], "offline"],
])("the sides that stand in the cells tell what %s is: %j", (header, cells, name) => {
  expect(taken(header, cells).name).toBe(name);
});

test.each(["Ball Speed (ft/s)", "Ball speed [fps]", "Ball speed, knots", "Ball speed (rps)"])(
  "%s is not read, since nothing can be given in that unit",
  (header) => {
    const { name, column } = taken(header, ["201", "190", "188", "178", "210", "175"]);
    expect(name).toBe("nothing");
    expect(column?.reasons).toEqual([expect.stringMatching(/^it would be ball-speed, which cannot be in /)]);
  },
);

test.each([
  ["zählt?", ["ja", "ja", "nein", "ja", "ja", "ja"], "nein"],
  ["deleted", ["0", "0", "1", "0", "0", "0"], "1"],
  ["ungültig", ["", "", "ja", "", "", ""], "ja"],
  ["invalid", ["false", "true", "false", "false", "false", "false"], "true"],
])("%s sets shots aside", (header, cells, mark) => {
  expect(taken(header, cells).meaning).toEqual({ kind: "exclusion", texts: [mark] });
});

test("times of day may have their word behind them", () => {
  expect(taken("Zeit", ["10:42 Uhr", "10:43 Uhr", "10:45 Uhr"]).name).toBe("time");
});

test("a raised figure behind a name is a footnote", () => {
  expect(taken("Side² (yd)", ["4.1", "-3.5", "2.0"]).name).toBe("offline");
  expect(taken("Ball speed (m s⁻¹)", ["60.1", "63.5", "62.0"]).meaning).toMatchObject({
    metric: "ball-speed",
    unit: { symbol: "m/s" },
  });
});

test.each([
  ["v_club", ["36.1", "35.2", "37.3"], "club-speed"],
  ["Kopfspeed km/h", ["136.1", "135.2", "137.3"], "club-speed"],
  ["Abw. (m)", ["6.1", "-5.2", "7.3"], "offline"],
  ["Abweichung li/re (m)", ["6.1", "-5.2", "7.3"], "offline"],
  ["CryDst", ["146.1", "135.2", "137.3"], "carry"],
  ["HngTm", ["6.1", "5.2", "5.3"], "flight-time"],
  ["BckSpn", ["6100", "5200", "5300"], "nothing"],
  ["Strike L-R (mm)", ["6", "-5", "3"], "strike-side"],
  ["Push/Pull (push +)", ["6", "-5", "3"], "start-direction"],
  ["Launch L/R", ["6", "-5", "3"], "start-direction"],
  ["Launch U/D", ["16", "15", "13"], "launch-angle"],
  ["Draw+/Fade- (yd)", ["6", "-5", "3"], "curve"],
  ["In to out (deg)", ["6", "-5", "3"], "club-path"],
  ["Strike H-L (mm)", ["6", "-5", "3"], "strike-height"],
])("%s is what people mean by it", (header, cells, name) => {
  expect(taken(header, cells).name).toBe(name);
});

test.each(["E7", "7er Eisen", "7 Eisen", "Eisen 7", "i7", "Iron 7"])("%j is a club that is known", (text) => {
  const { name, column } = taken("Schläger", [text, text, text]);
  expect([name, column?.settle]).toEqual(["club", []]);
});
