/** Shots to blocks where the session states on which row, or when, each block starts. */
import type { Session } from "../../../shared/plan-model.ts";
import type { Hit } from "../cells/hits.ts";
import { quote } from "../finding.ts";
import type { Assigned } from "./assign.ts";
import type { Tables } from "./tables.ts";

type Start = Omit<Session["starts"][number], "location">;

/**
 * A block starts with the shot on the stated line, or the first one below it, or with the first shot at or after the stated
 * time of day, and goes on, in the order the shots were hit, until another starts. With several tables a start may name its
 * table; a line that is not below the one stated before it is one of the next table. Shots before the first start belong
 * to no block.
 */
export function assignByStarts(hits: readonly Hit[], starts: readonly Start[], tables: Tables): Assigned {
  const blockAt = new Map<number, string>();
  const past: string[] = [];
  let table = 0;
  let before: Start | undefined;
  for (const start of starts) {
    if (start.file !== null) table = tables.placeOf(start.file) ?? -1;
    else if (before?.row != null && start.row !== null && start.row <= before.row) {
      table = Math.min(table + 1, tables.shots.length - 1);
    }
    if (start.row !== null) before = start;
    const first =
      start.row === null ? byTime(start, hits, tables) : lineFrom(start.row, tables.shots[table] ?? []);
    if (first === undefined) past.push(whyNone(start, hits));
    else blockAt.set(first, start.block);
  }
  let current: string | null = null;
  const blocks = hits.map((_, position) => {
    current = blockAt.get(position) ?? current;
    return current;
  });
  const sentences = [`Blocks start ${where(starts)} that the session states.`];
  const isGuessed = tables.shots.length > 1 && starts.some(({ row, file }) => row !== null && file === null);
  if (isGuessed) {
    sentences.push("A row that is not below the one before it was taken as a row of the next table.");
  }
  return { blocks, assignment: { method: "starts", explanation: [...sentences, ...past].join(" ") } };
}

function lineFrom(row: number, shots: Tables["shots"][number]): number | undefined {
  return shots.find(({ line }) => line >= row)?.position;
}

function byTime({ time, file }: Start, hits: readonly Hit[], tables: Tables): number | undefined {
  const place = file === null ? undefined : (tables.placeOf(file) ?? -1);
  const own = place === undefined ? undefined : new Set(tables.shots[place]?.map(({ position }) => position));
  const first = hits.findIndex(
    (hit, position) => hit.time !== null && hit.time >= (time ?? 0) && (own?.has(position) ?? true),
  );
  return first < 0 ? undefined : first;
}

function where(starts: readonly Start[]): string {
  const byRow = starts.some(({ row }) => row !== null);
  const byTime = starts.some(({ row }) => row === null);
  return byRow && byTime ? "on the rows and at the times" : byTime ? "at the times" : "on the rows";
}

function whyNone({ block, row, time, file }: Start, hits: readonly Hit[]): string {
  const of = file === null ? "" : ` of ${quote(file)}`;
  if (row !== null) {
    return `Row ${row}${of}, where ${quote(block)} should start, is past the last shot, so it has none.`;
  }
  return hits.some((hit) => hit.time !== null)
    ? `${clockText(time ?? 0)}${of}, when ${quote(block)} should start, is past the last shot, so it has none.`
    : `${quote(block)} should start at ${clockText(time ?? 0)}, but the table does not tell when shots were hit, so it has none: say which column does, \`column "…" is time\`.`;
}

/** Seconds after midnight as a clock shows them: `10:42`, `10:42:30`. */
function clockText(seconds: number): string {
  const parts = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  if (seconds % 60 !== 0) parts.push(seconds % 60);
  return parts.map((part) => String(part).padStart(2, "0")).join(":");
}
