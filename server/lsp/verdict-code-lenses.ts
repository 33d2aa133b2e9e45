/** Lines over each plan, block and session that sum up how their goals came out, and which session a plan is shown with. */
import type { LangiumDocument } from "langium";
import type { CodeLensProvider } from "langium/lsp";
import type { CodeLens, Command } from "vscode-languageserver";
import { isBlock, isPlan } from "../../language/generated/tree/ast.ts";
import { COMMANDS } from "../../shared/commands.ts";
import type { Location } from "../../shared/plan-model.ts";
import type { ShowRows } from "../../shared/protocol/show-rows.ts";
import type { BlockResult, ScoreReport } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";
import { blockSummary, goalSummary, sessionSummary } from "../report/summary.ts";
import type { File } from "./declared.ts";
import { lineRange } from "./evidence.ts";
import { MOST_SESSIONS, type PlanResult, type Scores } from "./scores.ts";

/** Marks what is remembered while a score is not to be had. */
const NOT_CURRENT = "no longer current";

const WAITS = `not scored: of the sessions of this file, the latest ${MOST_SESSIONS} are`;

export class VerdictCodeLenses implements CodeLensProvider {
  private readonly scores: () => Scores | undefined;
  private readonly isOn: (uri: string) => boolean;
  /** Commands the editor can run. */
  private readonly commands: () => readonly string[];

  constructor(
    scores: () => Scores | undefined,
    isOn: (uri: string) => boolean,
    commands: () => readonly string[],
  ) {
    this.scores = scores;
    this.isOn = isOn;
    this.commands = commands;
  }

  provideCodeLens(document: LangiumDocument): CodeLens[] {
    const uri = document.uri.toString();
    if (!this.isOn(uri)) return [];
    const current = this.scores()?.current();
    if (current === undefined) return [];
    const plans = current.plans.filter(({ summary }) => summary.plan.file === uri);
    const sessions = current.sessions.filter(({ report }) => report.session.location.file === uri);
    return [
      ...plans.flatMap((plan) => [
        this.planLens(plan),
        ...(plan.before === undefined
          ? (plan.session?.report.blocks ?? []).map((block) => this.blockLens(block))
          : staleLenses(document as File, plan.summary.plan.name, plan.before)),
      ]),
      ...sessions.map(({ report }) => titled(report.session.location.range, goalSummary(report))),
      ...current.waiting.filter(({ file }) => file === uri).map(({ range }) => titled(range, WAITS)),
    ];
  }

  private planLens({ summary, session, before }: PlanResult): CodeLens {
    const title =
      session !== undefined && summary.problem === null
        ? sessionSummary(session.report)
        : [summary.problem, before && `(${NOT_CURRENT}: ${sessionSummary(before)})`]
            .filter(Boolean)
            .join(" ");
    return { range: summary.range, command: this.command(COMMANDS.pickSession.id, title, summary.plan) };
  }

  /** Leads to the rows behind the block's verdict. */
  private blockLens(block: BlockResult): CodeLens {
    const verdict = block.verdict === null ? "" : `${inWords(block.verdict)} · `;
    const title = verdict + blockSummary(block);
    const rows = decidingRows(block);
    const { file, range } = block.location;
    if (rows.length === 0) return titled(range, title);
    const argument: ShowRows = { file, position: range.start, rows };
    return { range, command: this.command(COMMANDS.showRows.id, title, argument) };
  }

  /** A link where the editor knows the command; else only its title. */
  private command(id: string, title: string, argument: unknown): Command {
    return this.commands().includes(id)
      ? { title, command: id, arguments: [argument] }
      : { title, command: "" };
  }
}

/** What each block came out like before, on the line where the block of that name stands now. Leads to no row. */
function staleLenses(document: File, plan: string, before: ScoreReport): CodeLens[] {
  const declaration = document.parseResult.value.declarations.find(
    (each) => isPlan(each) && each.name === plan,
  );
  if (!isPlan(declaration)) return [];
  const blocks = declaration.statements.filter(isBlock);
  return before.blocks.flatMap((result) => {
    const start = blocks.find(({ name }) => name === result.name)?.$cstNode?.range.start;
    return start === undefined
      ? []
      : [titled({ start, end: start }, `${NOT_CURRENT}: ${blockSummary(result)}`)];
  });
}

/** The rows that decided the goals that were missed or are open; of a block that met all, the rows that decided those. */
function decidingRows({ criteria }: BlockResult): Location[] {
  const open = criteria.filter(({ verdict }) => verdict !== "met");
  const rows = (open.length > 0 ? open : criteria).flatMap(({ evidence }) => evidence.rows);
  const distinct = new Map(rows.map((row) => [`${row.line} ${row.file}`, row]));
  return [...distinct.values()].map(({ file, line }) => ({ file, range: lineRange(line) }));
}

/** A lens that says something and leads nowhere. */
function titled(range: CodeLens["range"], title: string): CodeLens {
  return { range, command: { title, command: "" } };
}
