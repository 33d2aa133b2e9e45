/** What a change is held against: a block of this session, the same block of another, or the player's usual numbers. */
import type { Comparison } from "../../../language/criteria/criterion.ts";
import { listed } from "../../../language/criteria/wording.ts";
import type { Against, Block, ScoringInput, Usual } from "../../../shared/plan-model.ts";
import type { Shot } from "../../../shared/session-data.ts";
import { clubsOf } from "../clubs.ts";
import { columnsOf, type Frame, NO_SURROUNDINGS } from "../counted-shots.ts";
import { frameOf } from "../frame.ts";
import { type BlockShots, sortShots } from "../set-aside.ts";
import { type KnownSession, type OtherSession, sessionMeant } from "./other-sessions.ts";

/** How a change of a block finds what it is held against; a sentence without its capital where there is nothing. */
export type FindComparison = (block: Block) => (against: Against, metric: string) => Comparison | string;

export function comparisons(
  input: ScoringInput,
  blocks: readonly BlockShots[],
  frame: Frame,
  known: readonly KnownSession[],
): FindComparison {
  const others = known.map(({ session }) => session);
  return (block) => (against, metric) => {
    switch (against.kind) {
      case "block":
        return blockOfThisSession(against.block, block, blocks, frame);
      case "usual":
        return usualNumbers(metric, block, shotsOf(block, blocks), input);
      default: {
        const found = sessionMeant(against, input, others) ?? "it is held against nothing";
        if (typeof found === "string") return found;
        return blockOfOtherSession(found, against, block, known);
      }
    }
  };
}

function blockOfThisSession(
  name: string,
  { name: own }: Block,
  blocks: readonly BlockShots[],
  frame: Frame,
): Comparison | string {
  const found = blocks.find(({ block }) => block.name === name);
  if (found === undefined) return `the plan has no block "${name}"`;
  if (name === own) return `"${name}" is this block itself`;
  return comparison(`"${name}"`, found, frame, true);
}

function blockOfOtherSession(
  found: OtherSession,
  against: Against,
  { name }: Block,
  known: readonly KnownSession[],
): Comparison | string {
  const read = known.find(({ session }) => session === found)?.read;
  const called = calledAs(against, found);
  if (read === undefined || typeof read === "string")
    return `${called} cannot be read: ${read ?? "it was not asked for"}`;
  const frame = frameOf(read.input);
  const block = sortShots(read.input.plan, read.data, frame.player).blocks.find(
    ({ block }) => block.name === name,
  );
  if (block === undefined) return `${called} has no block "${name}"`;
  if (block.counted.length === 0) return `${called} has no shot that counts in block "${name}"`;
  return comparison(called, block, frame, false);
}

/** `session "Monday" of 2026-10-05`, `the last session ("Monday" of 2026-10-05)`. */
function calledAs(against: Against, { name, date }: OtherSession): string {
  const called = date === null ? `"${name}"` : `"${name}" of ${date}`;
  return against.kind === "last session" ? `the last session (${called})` : `session ${called}`;
}

function comparison(
  name: string,
  { block, asked, counted }: BlockShots,
  frame: Frame,
  isSameSession: boolean,
): Comparison {
  const { forCriteria } = columnsOf(block, asked, counted, frame, NO_SURROUNDINGS);
  return { kind: "shots", name, shots: forCriteria, isSameSession };
}

function shotsOf(block: Block, blocks: readonly BlockShots[]): readonly Shot[] {
  return blocks.find((each) => each.block === block)?.counted ?? [];
}

/** The usual number of the club that the block is hit with, or of any club. */
function usualNumbers(
  metric: string,
  block: Block,
  shots: readonly Shot[],
  { player }: ScoringInput,
): Comparison | string {
  const ofMetric = player.usual.filter((usual) => usual.metric === metric);
  if (ofMetric.length === 0) return `nothing is stated of the usual ${metric} of ${player.name}`;
  const clubs = clubsOf(block, shots);
  const [club, another] = clubs;
  const ofClub = another === undefined ? ofMetric.find((usual) => usual.club === (club ?? null)) : undefined;
  const found = ofClub ?? ofMetric.find((usual) => usual.club === null);
  if (found !== undefined) return asComparison(found);
  return `the usual ${metric} of ${player.name} is stated with ${listed(ofMetric.map((usual) => usual.club ?? ""))}, and the block is hit with ${clubs.length === 0 ? "a club that is not known" : listed(clubs)}`;
}

function asComparison({ value, spread, shots }: Usual): Comparison {
  return { kind: "usual", name: "usual", value, spread, count: shots };
}
