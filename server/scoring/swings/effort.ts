/** How many swings were made, and how many of them at full effort. Every shot was a swing, whether it counts or not. */
import { reading } from "../../../language/criteria/condition.ts";
import type { Effort, Swings } from "../../../language/criteria/criterion.ts";
import type { Shots } from "../../../shared/plan-model.ts";
import type { SessionData, Shot } from "../../../shared/session-data.ts";
import type { BlockShots, SortedShots } from "../set-aside.ts";
import { linesOf } from "./lines.ts";

/** From this share of a full swing on a swing is at full effort. */
const FULL = 0.9;

/** The metric that says how hard a swing was meant. */
const EFFORT = "effort";

/** The swings of a block. The effort that was measured counts before the one that the plan states. */
function swingsOfBlock(block: BlockShots): Swings {
  return total(
    linesOf(block).map(({ line, shots, toCome }) => ({
      ...swingsAmong(shots, line),
      toCome: { all: toCome, fullEffort: isFull(line?.effort) ? toCome : 0 },
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
  const efforts = shots.map(({ values }) => reading(values, EFFORT) ?? line?.effort);
  return {
    all: shots.length,
    fullEffort: efforts.filter(isFull).length,
    unknownEffort: efforts.filter((effort) => effort === null || effort === undefined).length,
  };
}

function isFull(effort: number | null | undefined): boolean {
  return (effort ?? 1) >= FULL - 1e-9;
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
