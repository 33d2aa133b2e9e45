/** From tables nobody has described yet to a source and the sessions they hold. */
import type { Hand } from "../../../shared/plan-model.ts";
import type { ProposedColumn } from "./columns.ts";
import { FileProposal } from "./file-proposal.ts";
import { Meanings } from "./meanings.ts";
import { unique } from "./unique.ts";
import type { Vocabulary } from "./vocabulary.ts";
import { type ProposedSession, type ProposedSource, writeProposal } from "./write.ts";

export interface ProposalOptions {
  readonly vocabulary: Vocabulary;
  /** The hand of the only player, where it is known: then signs that turn with the hand can prove others. */
  readonly hand?: Hand | null;
  /** What the project declares already. */
  readonly players?: readonly string[];
  readonly player?: string | null;
  readonly plan?: string | null;
  readonly uses?: readonly string[];
}

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
  readonly #options: ProposalOptions;
  readonly #meanings: Meanings;
  readonly #files: FileProposal[] = [];

  constructor(options: ProposalOptions) {
    this.#options = options;
    this.#meanings = new Meanings(options.vocabulary);
  }

  open(path: string): FileProposal {
    const isKnown = (name: string) => this.#meanings.isKnown(name);
    const file = new FileProposal(path, this.#options, isKnown);
    this.#files.push(file);
    return file;
  }

  proposal(): Proposal {
    const { plan = null, uses = [] } = this.#options;
    const understood = this.#files.filter((file) => file.table !== undefined);
    const sources = new Map<string, ProposedSource>();
    const names = new Set<string>();
    const sessions: ProposedSession[] = [];
    for (const file of understood) {
      const source = file.source();
      const key = JSON.stringify({
        ...source,
        name: "",
        columns: source.columns.map(({ header, meaning, signs, units }) => [header, meaning, signs, units]),
      });
      const known = sources.get(key);
      const named = known ?? {
        ...source,
        name: unique(source.name, new Set([...sources.values()].map(({ name }) => name))),
      };
      sources.set(key, named);
      for (const session of file.sessions(named.name, names)) addSession(session, sessions);
    }
    const declared = new Set([...(this.#options.players ?? []), this.#options.player ?? ""]);
    const newPlayers = [...new Set(sessions.flatMap(({ player }) => player ?? []))].filter(
      (name) => !declared.has(name),
    );
    const all = [...sources.values()];
    const text = all.length === 0 ? "" : writeProposal({ sources: all, sessions, newPlayers, plan, uses });
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
