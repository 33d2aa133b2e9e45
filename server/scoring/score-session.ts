/**
 * Scores one session: its shots against the goals of its plan.
 *
 * Pure and reproducible: the same input, data, other sessions and version give the same report, to the last byte.
 */
import { verdictOfAll } from "../../language/criteria/verdict.ts";
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { DataFinding, SessionData, Shot } from "../../shared/session-data.ts";
import { Findings } from "../import/finding.ts";
import { abilityCautions } from "./cautions/ability.ts";
import { apartCautions } from "./cautions/apart.ts";
import { driftCautions } from "./cautions/drift.ts";
import { reportImpossible } from "./cautions/impossible.ts";
import { reportMisfits } from "./cautions/misfits.ts";
import { withPlannedClubs } from "./clubs.ts";
import { columnsOf } from "./counted-shots.ts";
import { comparisons } from "./earlier/against.ts";
import type { KnownSession } from "./earlier/other-sessions.ts";
import { frameOf } from "./frame.ts";
import { nextStep } from "./next-step.ts";
import { notesOn } from "./notes.ts";
import { scoreBlock } from "./score-block.ts";
import { scoreFindings } from "./score-findings.ts";
import { sortShots } from "./set-aside.ts";
import { swingsOfSession } from "./swings/effort.ts";
import { loadCautions, loadNotes, loadOf, swingHistory } from "./swings/load.ts";

/** What is known beside the session itself. */
export interface Known {
  /** Version of this tool. */
  readonly version: string;
  /** Of the plan's text: see the report. */
  readonly sha256?: string | null;
  readonly revision?: string | null;
  /** Other sessions, as far as they were wanted. */
  readonly others?: readonly KnownSession[];
}

/** The report on a session. Where the player's hand is not stated, direction words are a right-hander's, and a note says so. */
export function scoreSession(input: ScoringInput, read: SessionData, known: Known): ScoreReport {
  const { plan, session, player, instrument } = input;
  const { version, sha256 = null, revision = null, others = [] } = known;
  const data = withPlannedClubs(plan, read);
  const areClubsPlanned = data.shots.some(({ club }, place) => club !== read.shots[place]?.club);
  const frame = frameOf(input);
  const sorted = sortShots(plan, data, frame.player);
  const swings = swingsOfSession(sorted, data);
  const against = comparisons(input, sorted.blocks, frame, others);
  const scored = sorted.blocks.map((shots, place) => {
    const { block, asked, counted } = shots;
    const made = { block: swings.blocks[place] ?? swings.session, session: swings.session };
    const surroundings = { swings: made, against: against(block) };
    const columns = columnsOf(block, asked, counted, frame, surroundings);
    const findings =
      block.kind === "baseline" ? scoreFindings(plan.findings, shots, frame, surroundings) : [];
    return {
      result: scoreBlock(shots, columns, frame, findings),
      cautions: [...driftCautions(block, columns.forCriteria), ...apartCautions(shots, frame)],
    };
  });
  const blocks = scored.map(({ result }) => result);
  const history = swingHistory(input, swings.session, others);
  const load = loadOf(input, history);
  return {
    format: "drillwright/score-report",
    version: 1,
    tool: version,
    plan: { name: plan.name, location: plan.location, sha256, revision },
    session: { name: session.name, date: session.date, location: session.location },
    player: { name: player.name, hand: player.hand },
    data: [...data.files],
    assignment: data.assignment,
    instrument: instrument?.name ?? null,
    verdict: verdictOfAll(blocks.map(({ verdict }) => verdict).filter((verdict) => verdict !== null)),
    blocks,
    load,
    next: nextStep(plan, blocks),
    cautions: [
      ...loadCautions(input, load, history),
      ...abilityCautions(plan, blocks),
      ...scored.flatMap(({ cautions }) => cautions),
    ],
    setAside: [...sorted.setAside],
    findings: [...data.findings, ...oddReadings(data.shots, input)],
    notes: [...notesOn(input, data, sorted, areClubsPlanned), ...loadNotes(input, history)],
  };
}

/** Readings that cannot all be true, or hardly: to be looked at. */
function oddReadings(shots: readonly Shot[], input: ScoringInput): DataFinding[] {
  const findings = new Findings();
  reportImpossible(shots, input.metrics, findings);
  reportMisfits(shots, input, findings);
  return findings.list();
}
