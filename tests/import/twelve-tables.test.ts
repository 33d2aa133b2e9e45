/**
 * One session, written as twelve exports would write it: the import proposes how to read each, a coach settles what it
 * asks, and all twelve are the same shots.
 */
import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { isSession } from "../../language/generated/tree/ast.ts";
import { importFiles } from "../../server/import/import-files.ts";
import { dataFilesOnDisk } from "../../server/node/data-files.ts";
import { findFiles } from "../../server/node/find-files.ts";
import { loadProject } from "../../server/node/load-project.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { drillwright, folderWith } from "../cli/command-line.ts";
import { type GeneratedShot, generatedShots } from "./generated-shots.ts";

const SHOTS = generatedShots(24, 7);
const DEGREE = Math.PI / 180;
const FACTORS = {
  "°": DEGREE,
  m: 1,
  yd: 0.9144,
  ft: 0.3048,
  mph: 0.44704,
  "m/s": 1,
  "km/h": 1 / 3.6,
  rpm: Math.PI / 30,
  one: 1,
} as const;

interface Column {
  readonly header: string;
  readonly cell: (shot: GeneratedShot, place: number) => string;
  /** What a coach who knows the unit answers when the proposal asks which side is positive. */
  readonly positive?: string;
}

/** A metric in a unit; `sides` are the words for plus and minus, or the letters that stand for signs. */
function metric(
  header: string,
  name: string,
  unit: keyof typeof FACTORS,
  how: {
    positive?: string;
    sign?: number;
    letters?: [string, string];
    suffix?: string;
    before?: boolean;
  } = {},
): Column {
  const { sign = 1, letters, suffix = "", before = false, positive } = how;
  const cell = ({ values }: GeneratedShot) => {
    const value = (sign * (values[name] ?? Number.NaN)) / FACTORS[unit];
    if (letters === undefined) return value.toFixed(6) + suffix;
    const letter = letters[value < 0 ? 1 : 0];
    const amount = Math.abs(value).toFixed(6) + suffix;
    return before ? `${letter} ${amount}` : `${amount} ${letter}`;
  };
  return { header, cell, ...(positive === undefined ? {} : { positive }) };
}

const clock = (seconds: number) => new Date(seconds * 1000).toISOString().slice(11, 19);
const club = (names: Readonly<Record<string, string>>) => (shot: GeneratedShot) =>
  names[shot.club] ?? shot.club;
const SHORT = { "7-iron": "7i", driver: "Dr", "gap-wedge": "GW" };
const LONG = { "7-iron": "7 Iron", driver: "DRIVER", "gap-wedge": "Gap Wedge" };

interface Table {
  readonly file: string;
  readonly columns: readonly Column[];
  readonly write: (columns: readonly Column[]) => string | Uint8Array;
}

const rowsOf = (columns: readonly Column[]) =>
  SHOTS.map((shot, place) => columns.map(({ cell }) => cell(shot, place)));
const delimited =
  (
    separator: string,
    {
      end = "\n",
      comma = false,
      head = [] as string[],
      units = undefined as string[] | undefined,
      tail = [] as string[],
      reversed = false,
      quoted = false,
    } = {},
  ) =>
  (columns: readonly Column[]) => {
    const rows = rowsOf(columns).map((cells) => cells.map((cell) => (comma ? cell.replace(".", ",") : cell)));
    const lines = [
      columns.map(({ header }) => header),
      ...(units === undefined ? [] : [units]),
      ...(reversed ? rows.toReversed() : rows),
    ];
    const cell = (text: string) => (quoted || text.includes(separator) ? `"${text}"` : text);
    return [...head, ...lines.map((cells) => cells.map(cell).join(separator)), ...tail].join(end) + end;
  };
const utf16 = (text: string) => new Uint8Array(Buffer.from(`\uFEFF${text}`, "utf16le"));
const latin1 = (text: string) => new Uint8Array(Buffer.from(text, "latin1"));

const right = { positive: "right" };
const left = { positive: "left", sign: -1 };

const TABLES: readonly Table[] = [
  {
    file: "plain.csv",
    columns: [
      { header: "Club", cell: club(SHORT) },
      metric("Club Speed (mph)", "club-speed", "mph"),
      metric("Ball Speed (mph)", "ball-speed", "mph"),
      metric("Attack Angle (deg)", "attack-angle", "°", { positive: "up" }),
      metric("Club Path (deg)", "club-path", "°", right),
      metric("Face Angle (deg)", "face-angle", "°", right),
      metric("Carry (yd)", "carry", "yd"),
      metric("Offline (yd)", "offline", "yd", right),
    ],
    write: delimited(","),
  },
  {
    file: "semicolon-comma.csv",
    columns: [
      { header: "Club Type", cell: club(LONG) },
      metric("Club head speed [m/s]", "club-speed", "m/s"),
      metric("Ball speed [m/s]", "ball-speed", "m/s"),
      metric("AoA [°]", "attack-angle", "°", { positive: "down", sign: -1 }),
      metric("Path [°]", "club-path", "°", left),
      metric("Face to target [°]", "face-angle", "°", left),
      metric("Carry [m]", "carry", "m"),
      metric("Side [m]", "offline", "m", left),
    ],
    write: (columns) =>
      latin1(
        delimited(";", { comma: true, end: "\r\n", head: ["Wrenlow practice centre;Hall 2", "24 shots"] })(
          columns,
        ) as string,
      ),
  },
  {
    file: "letters.tsv",
    columns: [
      { header: "Shot No.", cell: (_, place) => String(place + 1) },
      { header: "Club", cell: club(SHORT) },
      metric("Club Spd", "club-speed", "km/h", { suffix: " km/h" }),
      metric("Ball Spd", "ball-speed", "km/h", { suffix: " km/h" }),
      metric("Attack", "attack-angle", "°", { letters: ["U", "D"], suffix: "°" }),
      metric("Path", "club-path", "°", { letters: ["R", "L"], suffix: "°" }),
      metric("Face", "face-angle", "°", { letters: ["R", "L"], suffix: "°", before: true }),
      metric("Carry", "carry", "yd", { suffix: " yds" }),
      metric("Side", "offline", "ft", { letters: ["right", "left"], suffix: " ft" }),
    ],
    write: delimited("\t", { reversed: true }),
  },
  {
    file: "units-row.csv",
    columns: [
      { header: "Time", cell: ({ time }) => clock(time) },
      { header: "Club", cell: club(LONG) },
      metric("Club speed", "club-speed", "mph"),
      metric("Ball speed", "ball-speed", "mph"),
      metric("Angle of attack", "attack-angle", "°", { positive: "up" }),
      metric("Club path", "club-path", "°", right),
      metric("Face angle", "face-angle", "°", right),
      metric("Carry", "carry", "yd"),
      metric("Side", "offline", "yd", right),
    ],
    write: delimited(",", {
      units: ["", "", "mph", "mph", "deg", "deg", "deg", "yd", "yd"],
      tail: ["Average,,95,120,0,0,0,160,2", "Std dev,,5,6,1,1,1,10,3"],
    }),
  },
  {
    file: "stated.csv",
    columns: [
      { header: "club", cell: club(SHORT) },
      metric("clubSpeed_mph", "club-speed", "mph"),
      metric("ballSpeed_mph", "ball-speed", "mph"),
      metric("attackAngle (up +)", "attack-angle", "°"),
      metric("clubPath (R+)", "club-path", "°"),
      metric("faceAngle (positive left)", "face-angle", "°", { sign: -1 }),
      metric("carry_m", "carry", "m"),
      metric("offline_m (L-/R+)", "offline", "m"),
    ],
    write: delimited("|", { quoted: true }),
  },
  {
    file: "array.json",
    columns: [
      { header: "club.name", cell: club(SHORT) },
      metric("club.speed_ms", "club-speed", "m/s"),
      metric("ball.speed_ms", "ball-speed", "m/s"),
      metric("club.attackAngle", "attack-angle", "°", { positive: "up" }),
      metric("club.path", "club-path", "°", right),
      metric("club.faceAngle", "face-angle", "°", right),
      metric("ball.carry_m", "carry", "m"),
      metric("ball.offline_m", "offline", "m", right),
    ],
    write: (columns) =>
      JSON.stringify(
        { session: { hall: 2 }, shots: rowsOf(columns).map((cells) => nested(columns, cells)) },
        null,
        1,
      ),
  },
  {
    file: "lines.jsonl.gz",
    columns: [
      { header: "club", cell: club(LONG) },
      metric("club_speed_kph", "club-speed", "km/h"),
      metric("ball_speed_kph", "ball-speed", "km/h"),
      metric("attack_angle_deg", "attack-angle", "°", { positive: "down", sign: -1 }),
      metric("club_path_deg", "club-path", "°", left),
      metric("face_angle_deg", "face-angle", "°", left),
      metric("carry_yd", "carry", "yd"),
      metric("side_yd", "offline", "yd", left),
    ],
    write: (columns) =>
      new Uint8Array(
        gzipSync(
          rowsOf(columns)
            .map((cells) => JSON.stringify(nested(columns, cells)))
            .join("\n"),
        ),
      ),
  },
  {
    file: "utf-16.txt",
    columns: [
      { header: "Club", cell: club(SHORT) },
      metric("Swing speed (mph)", "club-speed", "mph"),
      metric("Ball velocity (mph)", "ball-speed", "mph"),
      metric("Attack angle (°)", "attack-angle", "°", { positive: "up" }),
      metric("Swing path (°)", "club-path", "°", left),
      metric("Club face (°)", "face-angle", "°", right),
      metric("Carry distance (yd)", "carry", "yd"),
      metric("Lateral (yd)", "offline", "yd", left),
    ],
    write: (columns) => utf16(delimited("\t", { end: "\r\n" })(columns) as string),
  },
  {
    file: "handed.csv",
    columns: [
      { header: "Club", cell: club(LONG) },
      metric("CHS (mph)", "club-speed", "mph"),
      metric("BS (mph)", "ball-speed", "mph"),
      metric("AoA (down = +)", "attack-angle", "°", { sign: -1 }),
      metric("Path (in-out +)", "club-path", "°"),
      metric("Face (open +)", "face-angle", "°"),
      metric("Carry (m)", "carry", "m"),
      metric("Offline (m)", "offline", "m", { letters: ["R", "L"], before: true }),
    ],
    write: delimited(";"),
  },
  {
    file: "old-mac.csv",
    columns: [
      { header: "Club used", cell: club(SHORT) },
      metric("CLUB SPEED (M/S)", "club-speed", "m/s"),
      metric("BALL SPEED (M/S)", "ball-speed", "m/s"),
      metric("ATTACK ANGLE (DEG)", "attack-angle", "°", { positive: "up" }),
      metric("CLUB PATH (DEG)", "club-path", "°", right),
      metric("FACE ANGLE (DEG)", "face-angle", "°", left),
      metric("CARRY (M)", "carry", "m"),
      metric("SIDE (M)", "offline", "m", right),
    ],
    write: delimited(";", { comma: true, end: "\r", head: ["", "Export"] }),
  },
  {
    file: "proven.csv",
    columns: [
      { header: "Club", cell: club(SHORT) },
      metric("Club speed (mph)", "club-speed", "mph"),
      metric("Ball speed (mph)", "ball-speed", "mph"),
      metric("Attack angle (up +)", "attack-angle", "°"),
      metric("Path (L+)", "club-path", "°", { sign: -1 }),
      metric("Face", "face-angle", "°", { sign: -1 }),
      metric("Face to path", "face-to-path", "°"),
      metric("Carry (yd)", "carry", "yd"),
      metric("Offline (yd)", "offline", "yd", { letters: ["R", "L"] }),
    ],
    write: delimited(","),
  },
  {
    file: "season.csv",
    columns: [
      { header: "Player", cell: () => "P-07" },
      { header: "Date", cell: () => "12.10.2026" },
      { header: "Club", cell: club(LONG) },
      metric("Club speed (mph)", "club-speed", "mph"),
      metric("Ball speed (mph)", "ball-speed", "mph"),
      metric("Attack (deg, + = up)", "attack-angle", "°"),
      metric("Path (deg, + = right)", "club-path", "°"),
      metric("Face (deg, + = right)", "face-angle", "°"),
      metric("Carry (yd)", "carry", "yd"),
      metric("Side (yd, + = left)", "offline", "yd", { sign: -1 }),
    ],
    write: (columns) => {
      const text = delimited(",")(columns) as string;
      const [header = "", ...rows] = text.trimEnd().split("\n");
      const others = rows.flatMap((row) => [row.replace("P-07", "P-12"), row.replace("12.10", "13.10")]);
      return `${[header, ...rows.flatMap((row, at) => [row, others[2 * at] ?? "", others[2 * at + 1] ?? ""])].join("\n")}\n`;
    },
  },
];

function nested(columns: readonly Column[], cells: readonly string[]): object {
  const object: Record<string, Record<string, unknown>> = {};
  for (const [at, { header }] of columns.entries()) {
    const value = Number.isNaN(Number(cells[at])) ? cells[at] : Number(cells[at]);
    const [first = "", second] = header.split(".");
    if (second === undefined) Object.assign(object, { [first]: value });
    else object[first] = { ...object[first], [second]: value };
  }
  return object;
}

const HOUSE = `plan "Irons" { block "All" test { 24 shots } }
player "P-07" { right-handed }
`;

/** The proposal with every question answered as somebody would who knows the table. */
function settled(text: string, columns: readonly Column[]): string {
  return text
    .split("\n")
    .flatMap((line) => {
      const choice = /^\s*\/\/ column (".*") is .* positive (\S+)$/.exec(line);
      if (choice === null) return [line];
      const column = columns.find(({ header }) => header === JSON.parse(choice[1] ?? '""'));
      return column?.positive === choice[2] ? [line.replace("// ", "")] : [];
    })
    .filter((line) => !line.includes("// settle:"))
    .join("\n");
}

async function importedAs({ file, columns, write }: Table): Promise<SessionData> {
  const folder = folderWith({ "house.drill": HOUSE, [`data/${file}`]: write(columns) });
  const proposed = await drillwright(folder, [
    "import",
    `data/${file}`,
    "--plan",
    "Irons",
    "--player",
    "P-07",
  ]);
  expect(proposed.code, proposed.stderr).toBe(0);
  const text = settled(proposed.stdout, columns).replace(/player "P-12" \{\s*\}/, 'player "P-12" {}');
  const place = folderWith({ "house.drill": HOUSE, "session.drill": text, [`data/${file}`]: write(columns) });
  const project = await loadProject(findFiles(["."], place), place);
  expect(
    project.files.flatMap(({ findings }) => findings).filter(({ severity }) => severity === "error"),
  ).toEqual([]);
  const own = project.files.find(({ name }) => name === "session.drill");
  const sessions = own?.document.parseResult.value.declarations.filter(isSession) ?? [];
  const wanted = sessions.find(({ name }) => !/P-12|10-13/.test(name));
  if (wanted === undefined) throw new Error("There is no session.");
  return importFiles(project.lowering.session(wanted), dataFilesOnDisk(place));
}

const METRICS = [
  "club-speed",
  "ball-speed",
  "attack-angle",
  "club-path",
  "face-angle",
  "face-to-path",
  "smash-factor",
  "carry",
  "offline",
];

describe("twelve tables of one session", () => {
  test.each(TABLES)("$file", async (table) => {
    const data = await importedAs(table);
    expect(data.findings.filter(({ code }) => code !== "row-skipped")).toEqual([]); // statistics under the shots
    expect(data.shots).toHaveLength(SHOTS.length);
    for (const [place, { club, values }] of data.shots.entries()) {
      const expected = SHOTS[place];
      expect(club).toBe(expected?.club);
      for (const name of METRICS) {
        expect(
          Math.abs((values[name] ?? Number.NaN) - (expected?.values[name] ?? 0)),
          `${name} in row ${place}`,
        ).toBeLessThan(2e-6);
      }
    }
  });
});
