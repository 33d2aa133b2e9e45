/** A lesson at the invented centre that uses all a report can show: two visits of one player, one of another. */
import { chooseSessions } from "../../server/cli/choose-sessions.ts";
import { scoreSessions } from "../../server/cli/score-sessions.ts";
import { findFiles } from "../../server/node/find-files.ts";
import { loadProject } from "../../server/node/load-project.ts";
import type { ReportedSession } from "../../server/report/reported-session.ts";
import { type Files, folderWith } from "../cli/command-line.ts";
import { type Ability, hit, measured, randomFrom, writeTable } from "../support/generator.ts";

const LIBRARY = `player "P-07" {
  right-handed
  usual carry 152 yd spread 6 yd with 7-iron over 60 shots
  limit 200 swings a week
}

player "P-12" {
  left-handed
}

source "Range table" {
  column "Block" is block
  column "Club" is club
  column "Path" is club-path in ° positive right
  column "Face" is face-angle in ° positive right
  column "Attack" is attack-angle in ° positive up
  column "Ball" is ball-speed in m/s
  column "Launch" is launch-angle in ° positive up
  column "Start" is start-direction in ° positive right
  column "Spin" is spin-rate in rpm
  column "Axis" is spin-axis in ° positive right
  column "Carry" is carry in yd
  column "Offline" is offline in yd positive right
}

instrument "Bay unit" {
  reads club-path within 0.4° random and 0.2° systematic
  reads carry within 1 yd random
}
`;

const PLAN = `use "../library/range"

drill "Path gate" (width: angle = 2°) blocked {
  18 shots with 7-iron
  cue "Brush the grass a hand past the ball"
  target club-path within width of 1° in-to-out
}

finding "Cut from an out-to-in path" {
  for 7-iron
  when average club-path at least 3° out-to-in at 90 % confidence
  when at least 60 % of shots with face-to-path at least 1° open
  suspect "The shoulders open before the arms come down"
  check "Where the chest points at impact"
  try "Path gate" with width = 4°
}

plan "From cut to start line" {
  intent "Bring the path back, then let the start line follow."
  for 7-iron
  time 60 min
  limit 60 full-effort swings
  needs club-path, face-angle, start-direction, carry, offline
  caution "Build up slowly."
  look for "Cut from an out-to-in path"

  block "Wake up" warm-up {
    8 shots with 7-iron at 50 % effort
  }

  block "Where we are" baseline {
    12 shots
  }

  block "Gate" from "Path gate" {
    change motion "Chest stays over the ball a beat longer"
    require attack-angle between 2° down and 6° down
    success {
      at least 12 of 18 shots on target
      4 in a row on target
    }
  }

  block "Prove it" test {
    12 shots
    success {
      average club-path between 1° out-to-in and 3° in-to-out at 80 % confidence
      at least 70 % of shots with start-direction within ±3° at 80 % confidence
      club-path moves at least 3° in-to-out against "Where we are" at 90 % confidence
      carry loses no more than 4 yd against "Where we are"
      area of the 80 % ellipse of offline and carry at most 700 yd²
      2 of {
        3 in a row with carry at least 150 yd
        median carry at least 150 yd
        spread of offline at most 8 yd
      }
    }
  }

  then {
    advance to "From cut to start line" when every goal is met
    repeat when "Prove it" is missed or undecided
  }
}
`;

/** How a swing is: degrees, as a right-hander says them. */
function swing(path: number, faceToPath: number): Ability {
  return {
    clubSpeed: [36.4, 0.6],
    attack: [-4, 0.9],
    path: [path, 1.5],
    faceToPath: [faceToPath, 1.4],
    loft: [24.5, 1.2],
    bestSmash: 1.39,
    strikeCost: 0.02,
  };
}

const CUT = swing(-5.2, 3.6);
const GATED = swing(0.7, 1.2);
const HALF_CUT = swing(-2.4, 1.9);

interface Shot extends ReturnType<typeof hit> {
  readonly block: string;
}

const tenths = (of: (shot: Shot) => number) => (shot: Shot) => measured(of(shot), 1);
const yards = (of: (shot: Shot) => number) => (shot: Shot) => measured(of(shot) / 0.9144, 0);

/** The table of a visit: the warm-up, then blocks of shots with their swing. */
function table(
  seed: number,
  hand: "right" | "left",
  visit: readonly (readonly [block: string, shots: number, ability: Ability])[],
): string {
  const random = randomFrom(seed);
  const shots = visit.flatMap(([block, count, ability]) =>
    Array.from({ length: count }, () => ({
      block,
      ...hit({ club: "7-iron", ability, effort: block === "Wake up" ? 0.5 : 1 }, hand, random),
    })),
  );
  const columns = [
    { header: "Block", cell: ({ block }: Shot) => block },
    { header: "Club", cell: ({ club }: Shot) => club },
    { header: "Path", cell: tenths(({ path }) => path) },
    { header: "Face", cell: tenths(({ face }) => face) },
    { header: "Attack", cell: tenths(({ attack }) => attack) },
    { header: "Ball", cell: tenths(({ ballSpeed }) => ballSpeed) },
    { header: "Launch", cell: tenths(({ launch }) => launch) },
    { header: "Start", cell: tenths(({ start }) => start) },
    { header: "Spin", cell: ({ spin }: Shot) => measured(spin, 0) },
    { header: "Axis", cell: tenths(({ spinAxis }) => spinAxis) },
    { header: "Carry", cell: yards(({ carry }) => carry) },
    { header: "Offline", cell: yards(({ offline }) => offline) },
  ];
  const dialect = { separator: ",", decimal: ".", lineEnd: "\n", byteOrderMark: false } as const;
  return writeTable({ ...dialect, newestFirst: false, columns }, shots, []);
}

function session(name: string, player: string, date: string, data: string): string {
  return `use "../library/range"
use "../plans/start-line"

session "${name}" {
  plan "From cut to start line"
  player "${player}"
  date ${date}
  data "../data/${data}" from "Range table"
  instrument "Bay unit"
  wind 3 m/s head and 1 m/s left-to-right
  temperature 14 °C
  altitude 60 m
  ball "range" carries 92 %
}
`;
}

export const LESSON: Files = {
  "library/range.drill": LIBRARY,
  "plans/start-line.drill": PLAN,
  "sessions/p-07-first.drill": session("First visit", "P-07", "2026-10-05", "p-07-first.csv"),
  "sessions/p-07-second.drill": session("Second visit", "P-07", "2026-10-12", "p-07-second.csv"),
  "sessions/p-12-first.drill": session("First visit, left", "P-12", "2026-10-06", "p-12-first.csv"),
  "data/p-07-first.csv": table(7, "right", [
    ["Wake up", 8, CUT],
    ["Where we are", 12, CUT],
    ["Gate", 18, HALF_CUT],
    ["Prove it", 12, HALF_CUT],
  ]),
  "data/p-07-second.csv": table(11, "right", [
    ["Wake up", 8, CUT],
    ["Where we are", 12, CUT],
    ["Gate", 18, GATED],
    ["Prove it", 13, GATED],
  ]),
  "data/p-12-first.csv": table(12, "left", [
    ["Wake up", 8, CUT],
    ["Where we are", 12, CUT],
    ["Gate", 10, HALF_CUT],
  ]),
};

/** The sessions of these files, scored, in the order of their files. */
export async function scoredSessions(files: Files = LESSON): Promise<readonly ReportedSession[]> {
  const cwd = folderWith(files);
  const project = await loadProject(findFiles(["."], cwd), cwd);
  const chosen = chooseSessions(project, { session: undefined, plan: undefined });
  const { sessions, notScored, broken } = await scoreSessions(
    project,
    chosen,
    { cwd, stderr: { isTTY: false, write: () => {} } },
    { version: "test" },
    (session) => session,
  );
  const [problem] = [
    ...broken.flatMap((file) => file.findings.map(({ message }) => `${file.name}: ${message}`)),
    ...notScored.map(({ message }) => message),
  ];
  if (problem !== undefined) throw new Error(problem);
  return sessions;
}

/** The second visit of P-07: the report that the files under `expected/` show. */
export async function secondVisit(): Promise<ReportedSession> {
  const session = (await scoredSessions()).find(({ report }) => report.session.name === "Second visit");
  if (session === undefined) throw new Error("There is no second visit.");
  return session;
}
