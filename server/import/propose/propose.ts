/** From tables nobody has described yet to a source and the sessions they hold. */
import type { Hand } from "../../../shared/plan-model.ts";
import type { ProposedColumn } from "./columns.ts";
import { FileProposal } from "./file-proposal.ts";
import { Meanings } from "./meanings.ts";
import { NOTHING_DECLARED, type ProjectDeclarations } from "./project.ts";
import { unique } from "./unique.ts";
import type { Vocabulary } from "./vocabulary.ts";
import { type ProposedSession, type ProposedSource, writeProposal } from "./write.ts";

export interface ProposalOptions {
  readonly vocabulary: Vocabulary;
  readonly project?: ProjectDeclarations;
  /** Who practised, where that is known: then signs that turn with the hand can prove others. One of the project. */
  readonly player?: string | null;
  /** The plan that was practised, where that is known. One of the project. */
  readonly plan?: string | null;
}

/** What reading one table goes by. */
export type ReadOptions = Required<ProposalOptions> & { readonly hand: Hand | null };

/** The beginning of a table as it was understood. */
export interface Preview {
  readonly path: string;
  readonly names: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Why nothing can be proposed for a file: a sentence or two. */
export interface NoProposal {
  readonly path: string;
  readonly problem: string;
}

export interface Proposal {
  readonly sources: readonly ProposedSource[];
  readonly sessions: readonly ProposedSession[];
  /** The columns of all sources, in their order. */
  readonly columns: readonly ProposedColumn[];
  /** The text of a `.drill` file. */
  readonly text: string;
  /** For each file that was understood its column names and first rows. */
  readonly previews: readonly Preview[];
  readonly failed: readonly NoProposal[];
  /** How many questions the text leaves to the coach. */
  readonly open: number;
}

/** Proposes for tables that are there as a whole. `path` is how the session will write it. */
export function propose(
  files: readonly { readonly path: string; readonly content: Uint8Array | string }[],
  options: ProposalOptions,
): Proposal {
  const reader = new ProposalReader(options);
  for (const { path, content } of files) {
    const file = reader.open(path);
    file.push(content);
    file.end();
  }
  return reader.proposal();
}

/** Proposes for tables that arrive in pieces: their beginning is understood, the rest is only parted into sessions. */
export class ProposalReader {
  readonly #options: ReadOptions;
  readonly #meanings: Meanings;
  readonly #files: FileProposal[] = [];

  constructor(options: ProposalOptions) {
    const { vocabulary, project = NOTHING_DECLARED, player = null, plan = null } = options;
    const hand = project.players.find(({ name }) => name === player)?.hand ?? null;
    this.#options = { vocabulary, project, player, plan, hand };
    this.#meanings = new Meanings(options.vocabulary);
  }

  open(path: string): FileProposal {
    const isKnown = (name: string) => this.#meanings.isKnown(name);
    const file = new FileProposal(path, this.#options, isKnown);
    this.#files.push(file);
    return file;
  }

  proposal(): Proposal {
    const { project } = this.#options;
    const understood = this.#files.filter((file) => file.table !== undefined);
    const sources = new Map<string, ProposedSource>();
    const names = new Set<string>();
    const sessions: ProposedSession[] = [];
    for (const file of understood) {
      const source = file.source();
      const key = JSON.stringify({
        ...source,
        name: source.known?.name ?? "",
        known: null,
        columns: source.columns.map(({ header, meaning, signs, units, minus, foreignSides, sidesIn }) => [
          header,
          meaning,
          signs,
          units,
          minus?.text,
          [...foreignSides],
          sidesIn?.header,
        ]),
      });
      const known = sources.get(key);
      const taken = [...sources.values(), ...project.sources].map(({ name }) => name);
      const isNamed = known !== undefined || source.known !== null;
      const named = isNamed ? (known ?? source) : { ...source, name: unique(source.name, new Set(taken)) };
      sources.set(key, named);
      for (const session of file.sessions(named.name, names)) addSession(session, sessions);
    }
    const players = new Set(sessions.flatMap(({ player }) => player ?? []));
    const plans = new Set(sessions.flatMap((session) => (session.plans.length === 1 ? session.plans : [])));
    const all = [...sources.values()];
    const uses = [
      ...all.flatMap(({ known }) => known ?? []),
      ...project.players.filter(({ name }) => players.has(name)),
      ...project.plans.filter(({ name }) => plans.has(name)),
    ].map(({ use }) => use);
    const declared = new Set(project.players.map(({ name }) => name));
    const writing = {
      sources: all.filter(({ known }) => known === null),
      sessions,
      newPlayers: [...players].filter((name) => !declared.has(name)),
      uses: [...new Set(uses)].sort(),
      choices: {
        plans: project.plans.map(({ name }) => name),
        players: project.players.map(({ name }) => name),
      },
      cut: understood.flatMap(({ path, table }) => (table?.groups.isCut ? [path] : [])),
    };
    const text = all.length === 0 ? "" : writeProposal(writing);
    return {
      sources: all,
      sessions,
      columns: all.flatMap(({ columns }) => columns),
      text,
      previews: understood.map((file) => file.preview()),
      failed: this.#files.flatMap(({ path, problem }) => (problem === undefined ? [] : [{ path, problem }])),
      open: text.split("// settle:").length - 1,
    };
  }
}

/** A session that the table names may go on in another table. */
function addSession(session: ProposedSession, sessions: ProposedSession[]): void {
  const { name, player, date, isNamedInTable } = session;
  const at = sessions.findIndex(
    (each) =>
      isNamedInTable &&
      each.isNamedInTable &&
      each.name === name &&
      each.player === player &&
      each.date === date,
  );
  const earlier = sessions[at];
  if (earlier === undefined) sessions.push(session);
  else {
    const rows = (earlier.rows ?? 0) + (session.rows ?? 0);
    sessions[at] = { ...earlier, data: [...earlier.data, ...session.data], rows };
  }
}
