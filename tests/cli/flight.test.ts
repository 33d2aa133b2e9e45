/** `drillwright flight`: what is said of a launch and of a table, and what when they are wrong. */
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CAUTION } from "../../shared/care.ts";
import { type Answer, drillwright } from "./command-line.ts";

const DRIVE = ["flight", "--ball-speed", "73 m/s", "--launch-angle", "12°", "--spin-rate", "2700 rpm"];
const LABEL = "An estimate of a flight model, not a measurement. It never overrules what was measured.";

const TABLE = [
  "Ball Speed (mph),launch-angle,spin-rate in rpm,spin-axis in °,Club",
  "150,12°,2900,-3,Dr",
  "118,17 deg,6500,2 L,7i",
  "90,28°,9000,0,SW",
  "40,30°,6000,0,SW",
  "",
].join("\n");

async function ok(words: readonly string[], files = {}): Promise<Answer> {
  const answer = await drillwright(files, words);
  expect(answer).toMatchObject({ code: 0 });
  return answer;
}

const json = async (...words: string[]) =>
  JSON.parse((await ok([...DRIVE, ...words, "--format", "json"])).stdout);

describe("one launch", () => {
  test("for people: where it goes, how sure that is, and that it is an estimate", async () => {
    const { stdout, stderr } = await ok(DRIVE);
    expect(stderr).toBe("");
    expect(stdout).toMatch(/^ {2}carry +265 yd +± 20 yd$/m);
    expect(stdout).toMatch(/^ {2}offline +0 yd +± < 1 yd$/m);
    expect(stdout).toMatch(/^ {2}in reference air +265 yd/m);
    expect(stdout).toContain(LABEL);
    expect(stdout).toContain("± is how far a second set of coefficients is from the first.");
    expect(stdout).toContain("Not to be trusted where:");
    expect(stdout).not.toMatch(/NaN|undefined|Infinity/);
  });

  test("says what was taken for granted", async () => {
    const { stdout } = await ok(DRIVE);
    expect(stdout).toContain("start direction 0.0°");
    expect(stdout).toContain("air      15.0 °C, 0 m above the sea, 0 % humidity, calm");
  });

  test("is in SI for programs, with the same label and limits", async () => {
    const document = await json();
    expect(document).toMatchObject({ format: "drillwright/flight-estimates", version: 1, label: LABEL });
    expect(document.limits.length).toBeGreaterThan(5);
    const [{ launch, flight, line }] = document.flights;
    expect(line).toBeNull();
    expect(launch["ball-speed"]).toBe(73);
    // Row N18 of the oracle: the model's carry in reference air.
    expect(flight.carry.value / 0.9144).toBeCloseTo(265.09, 2);
    expect(flight.carry).toMatchObject({ status: "supported", warning: null });
    expect(flight.carry.uncertainty / 0.9144).toBeCloseTo(265.09 - 245.03, 1);
  });

  test("flies in the air that is stated", async () => {
    const carry = async (...words: string[]) => (await json(...words)).flights[0].flight.carry.value / 0.9144;
    const still = await carry();
    expect((await carry("--wind", "4 m/s head")) - still).toBeCloseTo(-21.3, 1);
    expect((await carry("--wind", "4 m/s tail")) - still).toBeCloseTo(18.0, 1);
    expect((await carry("--temperature", "5 °C")) - still).toBeCloseTo(-4.7, 1);
    expect((await carry("--temperature", "41 °F")) - still).toBeCloseTo(-4.7, 1);
    expect(await carry("--temperature", "-5 °C")).toBe(await carry("--temperature", "23 °F"));
    expect((await carry("--pressure", "845.6 hPa")) - still).toBeCloseTo(22.2, 1);
    expect((await carry("--altitude", "1500 m")) - still).toBeCloseTo(22.2, 0);
    const growing = await carry("--wind", "4 m/s head", "--wind-growth", "0.14");
    expect(growing).not.toBeCloseTo(await carry("--wind", "4 m/s head"), 0);
  });

  test("a wind is the sum of its parts", async () => {
    const { conditions } = await json("--wind", "3 m/s head and 2 m/s right-to-left");
    expect(conditions.wind).toEqual({ along: -3, across: -2 });
  });

  test("words mirror with the hand, sides do not", async () => {
    const tilt = async (...words: string[]) => (await json(...words)).flights[0].launch["spin-axis"];
    const right = await tilt("--spin-axis", "5° draw");
    expect(right).toBeCloseTo((-5 * Math.PI) / 180, 12);
    expect(await tilt("--spin-axis", "5° draw", "--hand", "left")).toBe(-right);
    expect(await tilt("--spin-axis", "5° left", "--hand", "left")).toBe(right);
    expect(await tilt("--spin-axis=-5°")).toBe(right);
    const { stdout } = await ok([...DRIVE, "--spin-axis", "5° draw", "--hand", "left"]);
    expect(stdout).toMatch(/curve +\d+ yd draw/);
    expect(stdout).toMatch(/offline +\d+ yd right/);
  });

  test("a measured carry is brought to reference air, with the ball's share of it", async () => {
    const standard = async (...words: string[]) =>
      (await json("--carry", "250 yd", ...words)).flights[0].standardCarry;
    expect((await standard()).value / 0.9144).toBeCloseTo(250, 3);
    expect((await standard("--ball", "92 %")).value / 0.9144).toBeCloseTo(250 / 0.92, 3);
    expect((await standard("--wind", "4 m/s head")).value / 0.9144).toBeCloseTo(271.3, 1);
    expect((await json()).flights[0].standardCarry).toBeNull();
  });

  test("an attack angle tells how much of the carry within reach was used", async () => {
    const { stdout } = await ok([...DRIVE, "--attack-angle", "2° up"]);
    expect(stdout).toMatch(/^ {2}launch efficiency +\d\d\.\d % +± \d\.\d %$/m);
    expect(stdout).toMatch(/^ {2}farthest within reach +\d+ yd, launched at \d+\.\d° up with \d+ rpm$/m);
    expect(stdout).toMatch(
      /^ {2}99 % of that +launched at \d+\.\d° to \d+\.\d° up, with \d+ rpm to \d+ rpm$/m,
    );
  });

  test("the farthest of all bounds the farthest within reach", async () => {
    const { bounds, flights } = await json("--attack-angle", "2° up");
    expect(bounds.free.carry).toBeGreaterThan(flights[0].best.carry);
    expect(bounds.window.low.launchAngle).toBeLessThan(flights[0].best.launchAngle);
    expect(bounds.window.high.launchAngle).toBeGreaterThan(flights[0].best.launchAngle);
    expect((await json()).bounds.window).toBeNull();
  });

  test("with what the club did: what a degree is worth, and a caution, since it speaks of swings", async () => {
    const club = [
      "--dynamic-loft",
      "14°",
      "--face-angle",
      "1° open",
      "--attack-angle",
      "1° up",
      "--club-path",
      "2° right",
    ];
    const { stdout } = await ok([...DRIVE, ...club]);
    expect(stdout).toMatch(
      /^ {2}1° more face to the right +carry .*, offline [\d.]+ yd more to the right, curve [\d.]+ yd more to the right$/m,
    );
    expect(stdout).toMatch(/^ {2}1° more path to the right .*curve [\d.]+ yd more to the left$/m);
    expect(stdout).toMatch(/^ {2}a strike's spin loft +13\.\d°$/m);
    expect(stdout).toContain(CAUTION);
    expect((await ok(["flight", "shots.csv"], { "shots.csv": TABLE })).stdout).not.toContain(CAUTION);
    expect((await json()).caution).toBe(CAUTION);
  });

  test("readings that do not fit together are told", async () => {
    const club = ["--dynamic-loft", "14°", "--face-angle", "0°", "--attack-angle", "0°", "--club-path", "0°"];
    const { stdout } = await ok([...DRIVE, ...club, "--spin-axis", "20° fade"]);
    expect(stdout).toMatch(
      /^! spin axis 20\.0° fade does not fit dynamic loft, face angle, attack angle, club path, which make it/m,
    );
  });

  test("beyond what was measured there is a warning, and far beyond no number", async () => {
    const wedge = ["flight", "--ball-speed", "42 m/s", "--launch-angle", "28°", "--spin-rate", "9200 rpm"];
    expect((await ok(wedge)).stdout).toContain("! Extrapolated, since the ball spins more for its speed");
    const pitch = ["flight", "--ball-speed", "20 m/s", "--launch-angle", "28°", "--spin-rate", "5000 rpm"];
    const { stdout } = await ok(pitch);
    expect(stdout).toContain("There is no estimate, since the ball starts slower through the air");
    expect(stdout).not.toMatch(/^ {2}carry/m);
    expect(stdout).toContain(LABEL);
  });
});

describe("a table", () => {
  const files = { "shots.csv": TABLE };

  test("has a line for each launch, and says why one has no number", async () => {
    const { stdout, stderr } = await ok(["flight", "shots.csv"], files);
    expect(stdout).toContain("4 flights, estimated");
    expect(stdout).toMatch(/^ +2 +2\d\d yd +\d+ yd +\d+ yd left/m);
    expect(stdout).toMatch(/^ +3 +1\d\d yd .* left/m);
    expect(stdout).toMatch(/^ +4 .* !$/m);
    expect(stdout).toMatch(/^ +5 +– /m);
    expect(stdout).toContain("line 5: There is no estimate, since the ball starts slower");
    expect(stdout).toContain(LABEL);
    expect(stderr).toBe('shots.csv: not read, since not named as a metric of a launch: "Club".\n');
  });

  test("comes from standard input and goes out as a table whose columns say what they are", async () => {
    const { stdout } = await drillwright({}, ["flight", "-", "--format", "csv"], { stdin: TABLE });
    const [header = "", ...rows] = stdout.trimEnd().split("\n");
    expect(header).toMatch(
      /^line,ball-speed \(m\/s\),launch-angle \(°\),start-direction \(°\),.*,status,estimated carry \(m\),uncertainty of carry \(m\)/,
    );
    expect(rows.map((row) => row.split(",")[0])).toEqual(["2", "3", "4", "5"]);
    expect(rows[0]).toMatch(/^2,67\.056,12,0,2900,-3,supported,2\d\d\.\d+,/);
    expect(rows[3]).toMatch(/,not-measured,,,/);
  });

  test("what goes out can come in again", async () => {
    const out = (await drillwright({}, ["flight", "-", "--format", "csv"], { stdin: TABLE })).stdout;
    const again = await drillwright({}, ["flight", "-", "--format", "csv"], { stdin: out });
    expect(again.stdout.split("\n")[1]).toBe(out.split("\n")[1]);
  });

  test("may be JSON", async () => {
    const shots = [
      { "ball-speed": "54 m/s", "launch-angle": "16°", "spin-rate": "6200 rpm", "spin-axis": "3° right" },
    ];
    const { stdout } = await drillwright({}, ["flight", "-", "--format", "json"], {
      stdin: JSON.stringify(shots),
    });
    const { flights } = JSON.parse(stdout);
    expect(flights).toHaveLength(1);
    expect(flights[0].flight.curve.value).toBeGreaterThan(2);
  });

  test("options fill columns that are not there, and none that are", async () => {
    const words = ["flight", "shots.csv", "--format", "json", "--carry", "200 yd", "--spin-axis", "9°"];
    const { flights } = JSON.parse((await ok(words, files)).stdout);
    expect(flights[0].launch.carry).toBeCloseTo(182.88, 9);
    expect(flights[0].launch["spin-axis"]).toBeCloseTo((-3 * Math.PI) / 180, 12);
  });

  test("may be packed", async () => {
    const words = (file: string) => ["flight", file, "--format", "csv"];
    const packed = await ok(words("shots.csv.gz"), { "shots.csv.gz": gzipSync(TABLE) });
    expect(packed.stdout).toBe((await ok(words("shots.csv"), files)).stdout);
    const half = await drillwright(
      { "shots.csv.gz": gzipSync(TABLE).subarray(0, 20) },
      words("shots.csv.gz"),
    );
    expect([half.code, half.stdout]).toEqual([4, ""]);
    expect(half.stderr).toContain("shots.csv.gz is packed with gzip, but the packing is damaged");
  });

  test("a cell that cannot be read is missing, and told; an empty one is missing", async () => {
    const broken = "ball-speed (m/s),launch-angle,spin-rate (rpm)\nfast,12°,2700\n70,12,2700\n70,12°,\n";
    const { stdout } = await ok(["flight", "a.csv"], { "a.csv": broken });
    expect(stdout).toContain(
      'line 2: ball-speed "fast" cannot be read: write a number and a unit such as mph.',
    );
    expect(stdout).toContain('line 3: launch-angle "12" has no unit: write it as in "12 °".');
    expect(stdout).toContain("line 4: The shot has no spin-rate.");
  });

  test.each([
    ["", "The file is empty."],
    ["a,b\n1,2\n", "No column of the table is named as a metric of a launch"],
    ["ball-speed (m/s),Ball Speed (mph)\n1,2\n", "The table has two columns for ball-speed"],
    ["ball-speed (m/s),launch-angle (°)\n", "has no rows under its header"],
    ["PK\u0003\u0004xx", "workbook"],
  ])("%j answers 4 and says why", async (content, why) => {
    const { code, stdout, stderr } = await drillwright({ "a.csv": content }, ["flight", "a.csv"]);
    expect([code, stdout]).toEqual([4, ""]);
    expect(stderr).toContain(why);
    expect(stderr).toMatch(/^drillwright: a\.csv: /);
  });
});

describe("a picture", () => {
  test("is one SVG with its words in it, without scripts or colours of its own", async () => {
    const { stdout } = await ok([...DRIVE, "--wind", "4 m/s head", "--format", "svg"]);
    expect(stdout).toMatch(/^<svg .*<\/svg>\n$/s);
    expect(stdout).toContain(`<title>${LABEL}</title>`);
    expect(stdout).toContain(
      "In the air that was stated, an estimate: carry 244 yd; on the target line. In reference air, an estimate: carry 265 yd; on the target line.",
    );
    expect(stdout).not.toMatch(/<script|#[0-9a-f]{3,6}\b/i);
  });

  test("of a table holds every flight there is", async () => {
    const { stdout } = await ok(["flight", "shots.csv", "--format", "svg"], { "shots.csv": TABLE });
    expect(stdout).toContain("flights of 3 shots.");
    expect(stdout).toContain("<title>line 2</title>");
  });

  test("of no flight is refused", async () => {
    const { code, stderr } = await drillwright({}, [
      ..."flight --ball-speed 20m/s --launch-angle 28° --spin-rate 5000rpm --format svg".split(" "),
    ]);
    expect(code).toBe(2);
    expect(stderr).toContain(
      "There is no flight to draw. There is no estimate, since the ball starts slower",
    );
  });
});

describe("wrong words answer 2 and say what would be right", () => {
  test.each([
    [["flight"], "flight needs a launch, and --ball-speed, --launch-angle, --spin-rate are not given"],
    [["flight", "--ball-speed", "70 m/s", "--launch-angle", "9°"], "and --spin-rate is not given"],
    [["flight", "--ball-speed", "70"], '--ball-speed says "70", which has no unit: write it as in "70 mph".'],
    [
      ["flight", "--ball-speed", "70 °"],
      '--ball-speed says "70 °", which cannot be read: write a number and a unit such as mph.',
    ],
    [["flight", "--spin-axis", "3° up"], "and where it matters a side (right, fade, left, draw)"],
    [[...DRIVE, "--wind", "3 m/s north"], '--wind says "3 m/s north", which cannot be read. Write `calm`'],
    [[...DRIVE, "--wind", "3 head"], '--wind says "3 head"'],
    [[...DRIVE, "--wind", "40 m/s head"], "The flight model is made for a wind of at most 20 m/s"],
    [[...DRIVE, "--wind-growth", "2"], "takes a number from 0"],
    [[...DRIVE, "--temperature", "80 °C"], "made for a temperature of −30 to 50 °C"],
    [[...DRIVE, "--pressure", "1013 Pa"], "made for an air pressure of 500 to 1100 hPa"],
    [[...DRIVE, "--humidity", "60"], '--humidity says "60", which has no unit'],
    [[...DRIVE, "--hand", "both"], "--hand takes right or left, not `both`."],
    [["flight", "nowhere.csv"], "There is no file nowhere.csv. Check the spelling"],
    [["flight", "a.csv", "b.csv"], "flight takes [FILE|-] and no more"],
    [["flight", "-"], "`-` reads what is piped in, and nothing is."],
  ])("%j", async (words, message) => {
    const { code, stdout, stderr } = await drillwright({}, words);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(message);
  });

  test("a folder is no table", async () => {
    const { code, stderr } = await drillwright({ "a/b.csv": TABLE }, ["flight", "a"]);
    expect([code, stderr]).toEqual([2, "drillwright: a is a folder. Give the name of a table in it.\n"]);
  });
});

test("whatever is in a table, there is an answer without a fault", async () => {
  const known = new Set([0, 2, 4]);
  const cell = fc.oneof(
    fc.string({ maxLength: 8 }),
    fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
    fc.constantFrom("70 m/s", "12°", "2700 rpm", "-", ""),
  );
  const row = fc.array(cell, { minLength: 3, maxLength: 3 }).map((cells) => cells.join(","));
  const table = fc.oneof(
    fc.string({ maxLength: 200 }),
    fc
      .array(row, { maxLength: 6 })
      .map((rows) => ["ball-speed (m/s),launch-angle (°),spin-rate (rpm)", ...rows].join("\n")),
  );
  await fc.assert(
    fc.asyncProperty(table, fc.constantFrom("text", "csv", "json", "svg"), async (stdin, format) => {
      const { code, stdout, stderr } = await drillwright({}, ["flight", "-", "--format", format], { stdin });
      expect(known).toContain(code);
      expect(stderr).not.toContain("our fault");
      expect(stdout).not.toMatch(/NaN|Infinity|undefined/);
    }),
    { numRuns: 30 },
  );
});
