/** Which shots of a session count for which block, and why the others do not. Nothing is dropped silently. */
import {
  type PlayerTraits,
  questionOf,
  type ShotQuestion,
  writeCondition,
} from "../../language/criteria/condition.ts";
import { shots as shotsInWords } from "../../language/criteria/wording.ts";
import type { Block, Plan, Statement } from "../../shared/plan-model.ts";
import type { SetAside } from "../../shared/score-report.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";

/** A block with its shots. */
export interface BlockShots {
  readonly block: Block;
  /** How many shots the block asks for. */
  readonly asked: number;
  /** The session's shots that were given to the block, in the order they were hit. */
  readonly given: readonly Shot[];
  /** Those of them that count. */
  readonly counted: readonly Shot[];
  /** How many the data or a `leave out` of the block set aside; surplus shots are not among them. */
  readonly leftOut: number;
  /** How often a `leave out` could not be judged, so that the shot was kept. */
  readonly doubts: readonly { readonly statement: Statement; readonly shots: number }[];
}

export interface SortedShots {
  readonly blocks: readonly BlockShots[];
  /** In the order they were hit. */
  readonly setAside: readonly SetAside[];
}

/**
 * Sorts the shots, one by one as they were hit: those the data excludes, those of no block, those the block leaves out,
 * and those beyond the number the block asks for are set aside; the others count.
 */
export function sortShots(plan: Plan, data: SessionData, player: PlayerTraits): SortedShots {
  const blocks = plan.blocks.map((block) => openBlock(block, player));
  const byName = new Map(blocks.toReversed().map((entry) => [entry.block.name, entry]));
  const setAside: SetAside[] = [];
  for (const shot of data.shots) {
    const found = shot.block === null ? undefined : byName.get(shot.block);
    found?.given.push(shot);
    const reason = whyNot(shot, found);
    if (reason === null) found?.counted.push(shot);
    else setAside.push({ row: shot.row, block: shot.block, ...reason });
  }
  const doubtsOf = (tests: readonly LeaveOut[]) =>
    tests.filter(({ doubts }) => doubts > 0).map(({ statement, doubts }) => ({ statement, shots: doubts }));
  return {
    blocks: blocks.map(({ leaveOut, ...entry }) => ({ ...entry, doubts: doubtsOf(leaveOut) })),
    setAside,
  };
}

/** A `leave out` of a block, and the shots it could not be judged for. */
interface LeaveOut {
  readonly statement: Statement;
  readonly isTrue: ShotQuestion;
  doubts: number;
}

/** A block while shots are being sorted into it. */
interface FillingBlock {
  readonly block: Block;
  readonly asked: number;
  /** Whether every further shot counts. */
  readonly isOpen: boolean;
  readonly leaveOut: readonly LeaveOut[];
  readonly given: Shot[];
  readonly counted: Shot[];
  leftOut: number;
}

function openBlock(block: Block, player: PlayerTraits): FillingBlock {
  return {
    block,
    asked: block.shots.reduce((total, { count }) => total + count, 0),
    // A block that names no number of shots sets no limit either.
    isOpen: block.shots.length === 0 || block.shots.some(({ open }) => open),
    leaveOut: block.leaveOut.map((statement) => ({
      statement,
      isTrue: questionOf(statement.condition, player),
      doubts: 0,
    })),
    given: [],
    counted: [],
    leftOut: 0,
  };
}

/** Why a shot does not count and which line of the plan says so; null when it counts. Keeps the block's tallies. */
function whyNot(shot: Shot, found: FillingBlock | undefined): Pick<SetAside, "reason" | "location"> | null {
  if (shot.excluded !== null) {
    if (found !== undefined) found.leftOut++;
    return { reason: shot.excluded, location: null };
  }
  if (found === undefined) {
    const reason =
      shot.block === null ? "given to no block of the plan" : `the plan has no block "${shot.block}"`;
    return { reason, location: null };
  }
  const { block, asked, isOpen, leaveOut, counted } = found;
  const answers = leaveOut.map(({ isTrue }) => isTrue(shot));
  const statement = leaveOut[answers.indexOf(true)]?.statement;
  if (statement !== undefined) {
    found.leftOut++;
    return { reason: `left out: ${writeCondition(statement.condition)}`, location: statement.location };
  }
  if (!isOpen && counted.length >= asked) {
    return { reason: `after the ${shotsInWords(asked)} the block asks for`, location: block.location };
  }
  for (const [index, test] of leaveOut.entries()) if (answers[index] === undefined) test.doubts++;
  return null;
}
