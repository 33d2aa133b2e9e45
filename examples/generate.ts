/**
 * Writes the tables under `data/`: `node examples/generate.ts`. The same program always writes the same bytes.
 *
 * The sources in `library/sources.drill` read what the two dialects here write.
 */
import { writeFileSync } from "node:fs";
import {
  type Dialect,
  type GeneratedShot,
  hit,
  measured,
  type Random,
  randomFrom,
  shuffled,
  writeTable,
} from "../tests/support/generator.ts";
import { type Exercise, type Practice, practices } from "./practices.ts";

const YARD = 0.9144;
const MILE_AN_HOUR = 0.44704;

/** A shot as the practice went on. */
interface RecordedShot extends GeneratedShot {
  /** From 1. */
  readonly number: number;
  readonly block: string;
  readonly isMarked: boolean;
  /** Seconds after midnight. */
  readonly time: number;
  readonly hand: Practice["hand"];
}

const HALL_CLUBS: Readonly<Record<string, string>> = {
  "5-iron": "Iron 5",
  "7-iron": "Iron 7",
  "pitching-wedge": "Wedge 46",
  "gap-wedge": "Wedge 50",
  "sand-wedge": "Wedge 56",
};

/** Whoever stands at the tee types the club, and not twice alike. */
const FIELD_CLUBS: Readonly<Record<string, readonly string[]>> = {
  driver: ["Driver", "DR", "driver"],
  "5-iron": ["5i", "5 iron", "5-Iron"],
  "6-iron": ["6i", "6 iron", "6-Iron"],
  "7-iron": ["7i", "7 iron", "7-Iron"],
  "9-iron": ["9i", "9 iron", "9-Iron"],
  "pitching-wedge": ["PW", "pw", "Pitching wedge"],
  "gap-wedge": ["GW", "Approach", "gap wedge"],
};

/** The hall counts the usual faults as positive, so its sides change with the hand: left for a right-hander, right for a left-hander. */
const fault = ({ hand }: RecordedShot, right: number) => (hand === "right" ? -right : right);

const hall: Dialect<RecordedShot> = {
  separator: ";",
  decimal: ",",
  lineEnd: "\r\n",
  byteOrderMark: true,
  newestFirst: true,
  columns: [
    { header: "Shot", cell: ({ number }) => String(number) },
    { header: "Exercise", cell: ({ block }) => block },
    { header: "Club", cell: ({ club }) => HALL_CLUBS[club] ?? club },
    { header: "Club speed (m/s)", cell: ({ clubSpeed }) => measured(clubSpeed, 2) },
    { header: "Attack (°)", cell: ({ attack }) => measured(-attack, 1) },
    { header: "Path (°)", cell: (shot) => measured(fault(shot, shot.path), 1) },
    { header: "Face (°)", cell: (shot) => measured(fault(shot, shot.face), 1) },
    { header: "Face to path (°)", cell: (shot) => measured(fault(shot, shot.faceToPath), 1) },
    { header: "Ball speed (m/s)", cell: ({ ballSpeed }) => measured(ballSpeed, 2) },
    { header: "Launch (°)", cell: ({ launch }) => measured(launch, 1) },
    { header: "Start (°)", cell: ({ start }) => measured(-start, 1) },
    { header: "Spin (rpm)", cell: ({ spin }) => measured(spin, 0) },
    { header: "Spin axis (°)", cell: (shot) => measured(fault(shot, shot.spinAxis), 1) },
    { header: "Carry (m)", cell: ({ carry }) => measured(carry, 1) },
    { header: "Offline (m)", cell: ({ offline }) => measured(-offline, 1) },
    { header: "Counts", cell: ({ isMarked }) => (isMarked ? "no" : "yes") },
  ],
};

const field: Dialect<RecordedShot> = {
  separator: ",",
  decimal: ".",
  lineEnd: "\n",
  byteOrderMark: false,
  newestFirst: false,
  columns: [
    { header: "Time", cell: ({ time }) => clock(time) },
    { header: "Club", cell: ({ club, number }) => FIELD_CLUBS[club]?.[number % 3] ?? club },
    { header: "Club speed", unit: "mph", cell: ({ clubSpeed }) => measured(clubSpeed / MILE_AN_HOUR, 1) },
    { header: "Ball speed", unit: "mph", cell: ({ ballSpeed }) => measured(ballSpeed / MILE_AN_HOUR, 1) },
    { header: "Smash factor", cell: ({ ballSpeed, clubSpeed }) => measured(ballSpeed / clubSpeed, 2) },
    { header: "Angle of attack", unit: "deg", cell: ({ attack }) => measured(attack, 1) },
    { header: "Club path", unit: "deg", cell: ({ path }) => measured(path, 1) },
    { header: "Face angle", unit: "deg", cell: ({ face }) => measured(face, 1) },
    { header: "Launch angle", unit: "deg", cell: ({ launch }) => measured(launch, 1) },
    { header: "Launch direction", unit: "deg", cell: ({ start }) => measured(start, 1) },
    { header: "Spin rate", unit: "rpm", cell: ({ spin }) => measured(spin, 0) },
    { header: "Spin axis", unit: "deg", cell: ({ spinAxis }) => measured(spinAxis, 1) },
    { header: "Carry", unit: "yd", cell: ({ carry }) => measured(carry / YARD, 1) },
    { header: "Side", unit: "yd", cell: ({ offline }) => measured(offline / YARD, 1) },
    { header: "Remark", cell: ({ isMarked }) => (isMarked ? "mishit" : "") },
  ],
};

/** Every table by the name of its file. */
export function tables(): ReadonlyMap<string, string> {
  return new Map(
    practices.flatMap((practice) => {
      const shots = record(practice);
      const above = [
        "Wrenlow practice centre;Hall 2",
        `Recorded ${practice.date};${shots.length} shots;last shot first`,
      ];
      const written: [string, string][] = [];
      if (practice.hall) written.push([practice.hall, writeTable(spoiled(hall, practice), shots, above)]);
      if (practice.field) written.push([practice.field, writeTable(spoiled(field, practice), shots, [])]);
      return written;
    }),
  );
}

function record({ seed, hand, begins, exercises, marked = [] }: Practice): RecordedShot[] {
  const random = randomFrom(seed);
  const [hours = 0, minutes = 0] = begins.split(":").map(Number);
  let time = (hours * 60 + minutes) * 60;
  const shots: RecordedShot[] = [];
  for (const exercise of exercises) {
    time += 120;
    for (const task of inOrder(exercise, random)) {
      time += 30 + Math.floor(30 * random());
      const number = shots.length + 1;
      const isMarked = marked.includes(number);
      shots.push({ ...hit(task, hand, random), number, block: exercise.name, isMarked, time, hand });
    }
  }
  return shots;
}

function inOrder({ tasks, order }: Exercise, random: Random) {
  const listed = tasks.flatMap((task) => Array.from({ length: task.shots }, (_, turn) => ({ task, turn })));
  if (order === "called") return shuffled(listed, random).map(({ task }) => task);
  if (order === "turn") listed.sort((one, other) => one.turn - other.turn);
  return listed.map(({ task }) => task);
}

/** The dialect with the cells of this practice that went wrong. */
function spoiled(dialect: Dialect<RecordedShot>, practice: Practice): Dialect<RecordedShot> {
  const { spoilt = [], empty = [] } = practice;
  const columns = dialect.columns.map((column) => ({
    ...column,
    cell: (shot: RecordedShot) =>
      spoilt.find((cell) => cell.shot === shot.number && cell.column === column.header)?.text ??
      (empty.includes(column.header) ? "" : column.cell(shot)),
  }));
  return { ...dialect, columns };
}

function clock(time: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(time / 3600))}:${two(Math.floor(time / 60) % 60)}:${two(time % 60)}`;
}

if (import.meta.main) {
  for (const [name, text] of tables()) {
    writeFileSync(new URL(`data/${name}`, import.meta.url), text);
  }
}
