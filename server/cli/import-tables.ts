/** From tables on disk to a proposal, and to the files that were asked for. */
import { closeSync, openSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, extname, relative, resolve, sep } from "node:path";
import { plural } from "../../shared/plural.ts";
import { list } from "../import/finding.ts";
import { CodedCopy } from "../import/people/coded-copy.ts";
import type { Watcher } from "../import/pieces.ts";
import { type Proposal, type ProposalOptions, ProposalReader } from "../import/propose/propose.ts";
import { PathError } from "../node/path-error.ts";
import { isSameFile, nameOfPath, pathOfName } from "../node/path-names.ts";
import { keyPlace, readKey, writeKey } from "../node/player-key.ts";
import { libraryVocabulary } from "../node/vocabulary.ts";
import { unfinished, writeWhole, writing } from "../node/writing.ts";
import { givenTable } from "./given-table.ts";
import type { Io } from "./io.ts";
import { knownDeclarations } from "./known-declarations.ts";
import { progressOn } from "./progress.ts";
import { assertFree } from "./write-output.ts";

export interface ImportOptions {
  readonly output: string | undefined;
  readonly force: boolean;
  readonly plan: string | undefined;
  readonly player: string | undefined;
  readonly codePlayers: boolean;
  readonly key: string;
}

export interface Imported {
  readonly proposal: Proposal;
  /** What was written, and what to bear in mind: sentences. */
  readonly notes: readonly string[];
}

/** @throws PathError, UsageError, UnreadableDataError */
export async function importInto(
  tables: readonly string[],
  options: ImportOptions,
  io: Io,
): Promise<Imported> {
  const { cwd } = io;
  const output = options.output === undefined ? undefined : pathOfName(options.output, cwd);
  const paths = tables.map((table) => pathOfName(table, cwd));
  if (output !== undefined) assertNewProposal(output, paths, options.force, cwd);
  const home = output === undefined ? cwd : dirname(output);
  const { plan, player } = options;
  const settings: ProposalOptions = {
    vocabulary: await libraryVocabulary(),
    project: knownDeclarations({ plan, player }, output ?? resolve(cwd, "proposal.drill"), cwd),
    plan: plan ?? null,
    player: player ?? null,
  };
  const notes: string[] = [];
  const sources = options.codePlayers ? await codedCopies(paths, settings, options, io, notes) : paths;
  const proposal = await proposeFor(sources, settings, home, io);
  if (output !== undefined && proposal.text !== "") {
    writeWhole(output, proposal.text, cwd);
    notes.push(`Written to ${nameOfPath(output, cwd)}.`);
  }
  if (!options.codePlayers && proposal.sessions.some(({ player }) => player !== null && !isCode(player))) {
    notes.push("The table names players. --code-players puts codes in their place.");
  }
  return { proposal, notes };
}

/** Whether a player is called by letters and a number, and not by a name. */
function isCode(player: string): boolean {
  return /^\p{L}{0,4}[-_ ]?\d+$/u.test(player.trim());
}

/** A name without the ending is a slip, and may be that of another table. @throws PathError */
function assertNewProposal(path: string, tables: readonly string[], force: boolean, cwd: string): void {
  assertNewFile(path, tables, force, cwd);
  if (extname(path).toLowerCase() === ".drill") return;
  throw new PathError(
    `${nameOfPath(path, cwd)} is no name of a .drill file, which is what a proposal is. Give a name that ends in .drill.`,
  );
}

/** @throws PathError */
function assertNewFile(path: string, tables: readonly string[], force: boolean, cwd: string): void {
  if (tables.some((table) => isSameFile(table, path)))
    throw new PathError(
      `${nameOfPath(path, cwd)} is the table itself, which is never changed. Give another name.`,
    );
  assertFree(path, force, cwd);
}

async function proposeFor(
  paths: readonly string[],
  settings: ProposalOptions,
  home: string,
  { cwd, stderr }: Io,
): Promise<Proposal> {
  const reader = new ProposalReader(settings);
  for (const path of paths) {
    const file = reader.open(relative(home, path).split(sep).join("/"));
    for await (const bytes of givenTable(path, cwd, progressOn(stderr))) file.push(bytes);
    file.end();
  }
  return reader.proposal();
}

/** Writes a copy of each table with codes for names, and the key. The paths of the copies. */
async function codedCopies(
  paths: readonly string[],
  settings: ProposalOptions,
  options: ImportOptions,
  { cwd, stderr }: Io,
  notes: string[],
): Promise<string[]> {
  const watcher = progressOn(stderr);
  const place = keyPlace(options.key, cwd);
  const codes = readKey(place, cwd);
  const tables = [];
  for (const path of paths) {
    const file = new ProposalReader(settings).open(path);
    for await (const bytes of givenTable(path, cwd, watcher)) file.push(bytes);
    file.end();
    const { table } = file;
    if (table === undefined || !table.columns.some(({ meaning }) => meaning?.kind === "player")) {
      throw new PathError(
        `${nameOfPath(path, cwd)} has no column that is known to hold players, so there is nothing to code. Rename its column to Player, or import it without --code-players.`,
      );
    }
    const named = [...table.groups.players].filter((name) => codes.codeOf(name) !== name.trim());
    const copy = copyPath(path);
    assertNewFile(copy, paths, options.force, cwd);
    const other = tables.find((each) => each.copy === copy);
    if (other !== undefined) {
      throw new PathError(
        `${nameOfPath(other.path, cwd)} and ${nameOfPath(path, cwd)} would both be copied to ${nameOfPath(copy, cwd)}. Import one after the other, and rename a copy between.`,
      );
    }
    tables.push({ path, copy, table, hasNames: named.length > 0 });
  }
  writeKey(place, codes, cwd); // first: a copy without its key is worth nothing
  for (const { path, copy, table, hasNames } of tables) {
    const coded = new CodedCopy(table.form, table.columns, codes);
    await writeCopy(path, copy, coded, cwd, watcher);
    const [name, copyName] = [nameOfPath(path, cwd), nameOfPath(copy, cwd)];
    notes.push(
      hasNames
        ? `${copyName} has codes for names. ${name} still has the names: keep it out of the repository.`
        : `${name} has codes for its players already, and so has ${copyName}.`,
    );
    if (coded.thinned.length > 0) {
      notes.push(
        `Left out of the copy, since names may stand there: what is no reading in ${list(coded.thinned)}. Where it is wanted, give the column a name that tells what it is, such as Block, and import the table again.`,
      );
    }
  }
  notes.push(
    `${options.key} tells which code is whose${place.repository === undefined ? "" : ", and git passes it over"}. It has ${plural(codes.rows().length, "player")}.`,
  );
  return tables.map(({ copy }) => copy);
}

/** `data/season-coded.csv` beside `data/season.csv.gz` */
function copyPath(path: string): string {
  const plain = path.replace(/\.gz$/i, "");
  const ending = extname(plain);
  const isDelimited = /^\.(?:csv|tsv|txt)$/i.test(ending);
  return `${ending === "" ? plain : plain.slice(0, -ending.length)}-coded${isDelimited ? ending : ".csv"}`;
}

async function writeCopy(
  path: string,
  copy: string,
  coded: CodedCopy,
  cwd: string,
  watcher: Watcher,
): Promise<void> {
  const half = unfinished(copy);
  const clear = () => rmSync(half, { force: true });
  const file = writing(copy, cwd, () => openSync(half, "w"));
  const write = (text: string) => writing(copy, cwd, () => writeFileSync(file, text)); // all of it, as no single call promises
  process.once("exit", clear); // an interruption leaves no half of a copy either
  try {
    try {
      for await (const bytes of givenTable(path, cwd, watcher)) write(coded.push(bytes));
      write(coded.end());
    } finally {
      closeSync(file);
    }
    writing(copy, cwd, () => renameSync(half, copy));
  } finally {
    clear();
    process.off("exit", clear);
  }
}
