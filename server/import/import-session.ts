/** From the tables of a session to its shots, all at once or while the tables are read or written. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";
import { assign } from "./assignment/assign.ts";
import { reportDisagreement } from "./derive/report-disagreements.ts";
import { FileImport } from "./file-import.ts";
import { Findings, quote, type Report } from "./finding.ts";

/**
 * Reads the tables of a session piece by piece, one after the other, in the order of its `data` lines. Whatever they hold
 * there is a result: what cannot be read is reported and left unknown, and a file that cannot be read at all is one error,
 * contributes no shots, and keeps no other from being read. The shots stand in the order they were hit, file after file.
 * Holds the session's own shots and one piece. Linear in cells, but for sorting where the source names a column to order by.
 */
export class SessionImport {
  readonly #input: ScoringInput;
  readonly #findings = new Findings();
  readonly #files: FileImport[] = [];

  constructor(input: ScoringInput) {
    this.#input = input;
  }

  /**
   * Begins the next table. `path` is how findings and shots call it, `source` the name of the source that reads it.
   * `isGrowing`: it is still being written, and its last row counts when its line has ended.
   */
  open(path: string, source: string, growth: { readonly isGrowing?: boolean } = {}): FileImport {
    const file = new FileImport(path, source, this.#input, this.#findings.about(path), growth);
    this.#files.push(file);
    return file;
  }

  /** The session as far as its tables were read. May be asked for again when more was read. */
  data(): SessionData {
    const input = this.#input;
    const findings = this.#findings.copy();
    const hits = this.#files.flatMap((file) => file.hits(findings.about(file.path)));
    const paths = this.#files.map(({ path }) => path);
    const { blocks, assignment } = assign(hits, input, paths);
    for (const { row, disagreements } of hits) {
      for (const disagreement of disagreements)
        reportDisagreement(disagreement, row.line, input, findings.about(row.file));
    }
    const shots = hits.map(({ row, values, categories, derived, club, time, excluded }, place): Shot => {
      const block = blocks[place] ?? null;
      return { row, values, categories, derived, club, time, block, excluded };
    });
    const unassigned = Map.groupBy(
      shots.filter(({ block }) => block === null),
      ({ row }) => row.file,
    );
    for (const [file, shots] of unassigned) reportUnassigned(shots, input, findings.about(file));
    return {
      files: this.#files.flatMap((file) => file.summary ?? []),
      shots,
      assignment,
      findings: findings.list(),
    };
  }
}

function reportUnassigned(shots: readonly Shot[], { session }: ScoringInput, report: Report): void {
  const [first] = shots;
  if (first === undefined) return;
  const { line } = first.row;
  report({
    code: "shots-unassigned",
    severity: "warning",
    line,
    message: `${plural(shots.length, "shot")}, the first in line ${line}, ${shots.length === 1 ? "belongs" : "belong"} to no block and ${shots.length === 1 ? "is" : "are"} not scored. Where a block starts there, say so in session ${quote(session.name)}: \`block … from row ${line}\`.`,
  });
}
