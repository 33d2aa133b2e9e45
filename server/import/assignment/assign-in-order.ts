/** Shots to blocks where nothing says where a block starts. */
import type { Block, Plan } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import type { Assignment } from "../../../shared/session-data.ts";
import type { Hit } from "../cells/hits.ts";
import { quote } from "../finding.ts";
import type { Assigned } from "./assign.ts";
import { assignByStarts } from "./assign-by-starts.ts";
import { clearPauses, type Pause } from "./pauses.ts";
import type { Tables } from "./tables.ts";

/** A block while it takes its shots. */
interface Taker {
  readonly name: string;
  readonly asked: number;
  /** How many it takes before it is the next block's turn. */
  takes: number;
  /** True where it asks for at least so many shots. */
  readonly open: boolean;
  /** The clubs it is hit with; empty where any will do. */
  readonly clubs: ReadonlySet<string>;
  taken: number;
  /** The club by which the next block was known to have begun before this one had its shots. */
  endedBy: string | null;
}

/**
 * Each block takes its number of shots, in the order of the plan. Where two blocks that follow each other are hit with
 * different clubs, the change of club decides: it ends a block that still lacks shots, and a block that has its shots
 * keeps those that follow with its own club. Shots that the data sets aside belong to the block they fall into, but use
 * up none of its number. Where there are more shots than asked for and exactly one block asks for at least so many, the
 * surplus is that block's; otherwise shots beyond the last block's number stay with the last block. A block that asks
 * for no number of shots gets none, unless it is the last.
 *
 * Where the numbers do not add up, and the shots come in as many groups with clear pauses between them as the plan has
 * blocks, and no club speaks against it, each group is a block.
 */
export function assignInOrder(hits: readonly Hit[], plan: Plan, tables: Tables): Assigned {
  const takers = plan.blocks
    .map((block) => taker(block, plan))
    .filter(({ asked }, place) => asked > 0 || place === plan.blocks.length - 1);
  const byPauses = counted(hits) === total(takers) ? undefined : groupsOf(hits, takers);
  const blocks = byPauses?.blocks ?? inTurn(hits, takers);
  const explanation = explain(hits, takers, plan, byPauses?.pauses);
  const assignment = { method: "order" as const, explanation };
  const starts = takers.every(addsUp) ? [] : startsOf(hits, blocks, tables);
  return {
    blocks,
    assignment: starts.length === 0 ? assignment : { ...assignment, suggestedStarts: starts },
  };
}

/** Whether a block has what it was to take: its number of shots, or what is left over where it is there for that. */
function addsUp({ asked, takes, taken }: Taker, place: number, { length }: readonly Taker[]): boolean {
  return taken === takes || (asked === 0 && place === length - 1);
}

/**
 * Where each block begins, to be written into the session; nothing where that would not say the same, as where several
 * shots stand on one line of the table.
 */
function startsOf(
  hits: readonly Hit[],
  blocks: readonly (string | null)[],
  tables: Tables,
): NonNullable<Assignment["suggestedStarts"]> {
  const begins = hits.flatMap(({ row }, place) => {
    const block = blocks[place] ?? null;
    return block !== null && block !== (blocks[place - 1] ?? null) ? [{ block, row }] : [];
  });
  const goesDown = begins.every(({ row }, place) => row.line > (begins[place - 1]?.row.line ?? 0));
  const starts = begins.map(({ block, row }) => ({
    block,
    row: row.line,
    file: tables.isOne && goesDown ? null : tables.writtenPath(row.file),
  }));
  const written = starts.map((start) => ({ ...start, time: null }));
  const read = assignByStarts(hits, written, tables).blocks;
  return blocks.every((block, place) => block === read[place]) ? starts : [];
}

function groupsOf(
  hits: readonly Hit[],
  takers: readonly Taker[],
): { readonly blocks: string[]; readonly pauses: readonly Pause[] } | undefined {
  const pauses = clearPauses(hits, takers.length);
  if (pauses === undefined) return undefined;
  let place = 0;
  const groups = hits.map((_, position) => {
    if (pauses[place]?.position === position) place++;
    return takers[place];
  });
  const fits = groups.every((taker, position) => {
    const club = hits[position]?.club ?? null;
    return taker !== undefined && (club === null || taker.clubs.size === 0 || taker.clubs.has(club));
  });
  if (!fits) return undefined;
  for (const [position, taker] of groups.entries()) {
    if (taker !== undefined && hits[position]?.excluded === null) taker.taken++;
  }
  return { blocks: groups.map((taker) => taker?.name ?? ""), pauses };
}

function inTurn(hits: readonly Hit[], takers: readonly Taker[]): (string | null)[] {
  giveSurplus(hits, takers);
  let place = 0;
  return hits.map((hit) => {
    const here = takers[place];
    const next = takers[place + 1];
    if (here !== undefined && next !== undefined && movesOn(hit, here, next)) {
      if (here.taken < here.asked) here.endedBy = hit.club;
      place++;
    }
    const taking = takers[place];
    if (taking !== undefined && hit.excluded === null) taking.taken++;
    return taking?.name ?? null;
  });
}

function taker(block: Block, plan: Plan): Taker {
  const clubs = block.shots.map(({ club }) => club ?? plan.clubs[0]);
  const asked = block.shots.reduce((sum, { count }) => sum + count, 0);
  return {
    name: block.name,
    asked,
    takes: asked,
    open: block.shots.some(({ open }) => open),
    clubs: new Set(clubs.includes(undefined) ? [] : clubs.filter((club) => club !== undefined)),
    taken: 0,
    endedBy: null,
  };
}

/** Lets the only open block take what the plan leaves over: the one reading in which the counts add up. */
function giveSurplus(hits: readonly Hit[], takers: readonly Taker[]): void {
  const [open, another] = takers.filter((block) => block.open);
  const surplus = counted(hits) - total(takers);
  const takesTheRest = takers.at(-1)?.asked === 0;
  if (open !== undefined && another === undefined && surplus > 0 && !takesTheRest) open.takes += surplus;
}

function counted(hits: readonly Hit[]): number {
  return hits.filter(({ excluded }) => excluded === null).length;
}

function total(takers: readonly Taker[]): number {
  return takers.reduce((sum, { asked }) => sum + asked, 0);
}

function movesOn(hit: Hit, here: Taker, next: Taker): boolean {
  const onlyHere = isOnlyOf(hit.club, here, next);
  const onlyNext = isOnlyOf(hit.club, next, here);
  return onlyNext || (here.taken >= here.takes && !onlyHere && hit.excluded === null);
}

/** True where both blocks say their clubs, and this club is one of the first's and none of the second's. */
function isOnlyOf(club: string | null, one: Taker, other: Taker): boolean {
  return club !== null && one.clubs.has(club) && other.clubs.size > 0 && !other.clubs.has(club);
}

function explain(
  hits: readonly Hit[],
  takers: readonly Taker[],
  plan: Plan,
  pauses: readonly Pause[] | undefined,
): string {
  const held = counted(hits);
  const aside = hits.length - held;
  const sentences = [
    pauses === undefined
      ? "Neither the tables nor the session says where blocks start, so each block took its number of shots in the order of the plan."
      : `Neither the tables nor the session says where blocks start. The shots come in ${takers.length} groups with clear pauses between them (${pauses.map(({ length }) => duration(length)).join(", ")}), as many as there are blocks, so each group was taken for a block.`,
    `The plan asks for ${plural(total(takers), "shot")}, the tables hold ${held}${aside === 0 ? "" : `, and ${aside} more that they set aside`}.`,
  ];
  const uneven = takers.flatMap((block) => unevenness(block) ?? []);
  sentences.push(...uneven);
  const first = takers[1] ?? takers[0];
  if (uneven.length > 0 && first !== undefined) {
    sentences.push(
      `Where a block started elsewhere, say so in the session: block ${quote(first.name)} from row …`,
    );
  }
  const left = plan.blocks.filter(({ name }) => !takers.some((block) => block.name === name));
  for (const { name } of left) {
    sentences.push(`${quote(name)} asks for no number of shots and got none.`);
  }
  return sentences.join(" ");
}

/** Seconds for people: `45 s`, `4 min`. */
function duration(seconds: number): string {
  return seconds < 90 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;
}

function unevenness({ name, asked, takes, taken, open, endedBy }: Taker): string | undefined {
  if (taken < asked) {
    const why = endedBy === null ? "" : `, because the club changes to ${endedBy}`;
    return `${quote(name)} has ${taken} of its ${plural(asked, "shot")}${why}.`;
  }
  if (takes > asked)
    return `${quote(name)} asks for at least ${asked} and was given what is left over, ${taken} in all.`;
  return taken > asked && asked > 0 && !open
    ? `${quote(name)} has ${plural(taken, "shot")} where ${asked} were asked for.`
    : undefined;
}
