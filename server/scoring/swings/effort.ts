/** How many swings were made, and how many of them at full effort. Every shot was a swing, whether it counts or not. */
import { reading } from "../../../language/criteria/condition.ts";
import type { Effort, Swings } from "../../../language/criteria/criterion.ts";
import { hasEffort, isFullEffort } from "../../../shared/full-effort.ts";
import type { Shots } from "../../../shared/plan-model.ts";
import type { SessionData, Shot } from "../../../shared/session-data.ts";
import type { BlockShots, SortedShots } from "../set-aside.ts";
import { linesOf } from "./lines.ts";

/** The metric that says how hard a swing was meant. */
const EFFORT = "effort";

/** The swings of a block. The effort that was measured counts before the one that the plan states. */
function swingsOfBlock(block: BlockShots): Swings {
  return total(
    linesOf(block).map(({ line, shots, toCome }) => ({
      ...swingsAmong(shots, line),
      toCome: { all: toCome, fullEffort: line !== null && isFull(line.effort, line.club) ? toCome : 0 },
    })),
  );
}

/** The swings of a session: those of its blocks, in their order, and of all together those that belong to none as well. */
export function swingsOfSession(
  { blocks }: SortedShots,
  { shots }: SessionData,
): { readonly blocks: readonly Swings[]; readonly session: Swings } {
  const names = new Set(blocks.map(({ block }) => block.name));
  const others = shots.filter(({ block }) => block === null || !names.has(block));
  const ofBlocks = blocks.map(swingsOfBlock);
  return { blocks: ofBlocks, session: total([...ofBlocks, { ...swingsAmong(others, null), toCome: NONE }]) };
}

const NONE: Effort = { all: 0, fullEffort: 0 };

function swingsAmong(shots: readonly Shot[], line: Shots | null): Omit<Swings, "toCome"> {
  const swings = shots.map(({ values, club }) => ({
    effort: reading(values, EFFORT) ?? line?.effort ?? null,
    club: club ?? line?.club ?? null,
  }));
  return {
    all: shots.length,
    fullEffort: swings.filter(({ effort, club }) => isFull(effort, club)).length,
    unknownEffort: swings.filter(({ effort, club }) => effort === null && hasEffort(club)).length,
  };
}

/** `effort`: as a share of a full swing, 0 to 1. */
function isFull(effort: number | null, club: string | null): boolean {
  return isFullEffort(effort === null ? undefined : effort * 100, club);
}

function total(parts: readonly Swings[]): Swings {
  const sum = (number: (swings: Swings) => number) => parts.reduce((so, part) => so + number(part), 0);
  return {
    all: sum(({ all }) => all),
    fullEffort: sum(({ fullEffort }) => fullEffort),
    unknownEffort: sum(({ unknownEffort }) => unknownEffort),
    toCome: {
      all: sum(({ toCome }) => toCome.all),
      fullEffort: sum(({ toCome }) => toCome.fullEffort),
    },
  };
}
