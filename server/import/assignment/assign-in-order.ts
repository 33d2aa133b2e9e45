/** Shots to blocks where nothing says where a block starts. */
import type { Block, Plan } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import type { Hit } from "../cells/hits.ts";
import { quote } from "../finding.ts";
import type { Assigned } from "./assign.ts";

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
 * for no number of shots gets none, unless it is the last. Linear in shots.
 */
export function assignInOrder(hits: readonly Hit[], plan: Plan): Assigned {
  const takers = plan.blocks
    .map((block) => taker(block, plan))
    .filter(({ asked }, place) => asked > 0 || place === plan.blocks.length - 1);
  giveSurplus(hits, takers);
  let place = 0;
  const blocks = hits.map((hit) => {
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
  return { blocks, assignment: { method: "order", explanation: explain(hits, takers, plan) } };
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

function explain(hits: readonly Hit[], takers: readonly Taker[], plan: Plan): string {
  const held = counted(hits);
  const aside = hits.length - held;
  const sentences = [
    "Neither the tables nor the session says where blocks start, so each block took its number of shots in the order of the plan.",
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
