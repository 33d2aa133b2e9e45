/**
 * Scores one session: its shots against the goals of its plan.
 *
 * Pure and reproducible: the same input, data and version give the same report.
 */
import { verdictOfAll } from "../../language/criteria/verdict.ts";
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { notesOn } from "./notes.ts";
import { scoreBlock } from "./score-block.ts";
import { sortShots } from "./set-aside.ts";

/** The report on a session. Where the player's hand is not stated, direction words are a right-hander's, and a note says so. */
export function scoreSession(input: ScoringInput, data: SessionData, tool: { version: string }): ScoreReport {
  const { plan, session, player, metrics } = input;
  const hand = player.hand ?? "right";
  const traits = { hand, level: player.level };
  const sorted = sortShots(plan, data, traits);
  const none = { all: 0, fullEffort: 0 };
  const around = {
    player: traits,
    vocabulary: metrics,
    swings: () => ({ block: none, session: none }),
    against: () => () => "not compared yet",
  };
  const blocks = sorted.blocks.map((block) => scoreBlock(block, around));
  return {
    format: "drillwright/score-report",
    version: 1,
    tool: tool.version,
    plan: { name: plan.name, location: plan.location, sha256: null, revision: null },
    session: { name: session.name, date: session.date, location: session.location },
    player: { name: player.name, hand: player.hand },
    data: [...data.files],
    assignment: data.assignment,
    instrument: input.instrument?.name ?? null,
    verdict: verdictOfAll(blocks.map(({ verdict }) => verdict).filter((verdict) => verdict !== null)),
    blocks,
    load: { swings: 0, fullEffort: 0, limits: [] },
    next: null,
    cautions: [],
    setAside: [...sorted.setAside],
    findings: [...data.findings],
    notes: notesOn(input, data, sorted, blocks),
  };
}
