/** The lines of a finding as what is asked of the shots that it is looked for in. */
import type { Block, Finding } from "../../shared/plan-model.ts";
import type { Vocabulary } from "./possibility/vocabulary.ts";
import type { BlockInPlan } from "./subject.ts";

/**
 * As goals of a block of which nothing is required: what a baseline requires says nothing of a pattern.
 *
 * @param baseline where it is looked for; where none is stated, any shots with its clubs, however many there are
 */
export function linesOfFinding(
  { name, clubs, when, location }: Finding,
  vocabulary: Vocabulary,
  baseline?: Block,
): BlockInPlan {
  const anyShots = (clubs.length === 0 ? [null] : clubs).map((club) => ({
    count: 1,
    club,
    effort: null,
    open: true,
  }));
  const shots = baseline?.shots.filter(({ club }) => mayBeMeant(club, clubs)) ?? anyShots;
  const block: Block = {
    name,
    kind: "baseline",
    drill: null,
    shots,
    time: null,
    changes: [],
    cues: [],
    cautions: [],
    targets: [],
    requirements: [],
    leaveOut: baseline?.leaveOut ?? [],
    success: when,
    location: baseline?.location ?? location,
  };
  const isOwn = () => baseline === undefined;
  return { block, others: () => new Map(), vocabulary, isOwn, called: "line" };
}

function mayBeMeant(club: string | null, clubs: readonly string[]): boolean {
  return clubs.length === 0 || club === null || clubs.includes(club);
}
