/** From tables nobody has described yet to what an editor shows before a file is made of it. */
import type { ImportedColumn, TableImport } from "../../shared/protocol/import-tables.ts";
import { DamagedPackingError } from "../import/gunzip.ts";
import type { DataFiles } from "../import/import-files.ts";
import { contentOf } from "../import/pieces.ts";
import type { FileProposal } from "../import/propose/file-proposal.ts";
import { meaningText } from "../import/propose/meaning-text.ts";
import type { ProjectDeclarations } from "../import/propose/project.ts";
import { ProposalReader } from "../import/propose/propose.ts";
import { libraryVocabulary } from "../node/vocabulary.ts";

interface Table {
  readonly uri: string;
  /** As the session will write it. */
  readonly name: string;
}

/** @throws the reason of the signal, where it is aborted. */
export async function proposeTables(
  tables: readonly Table[],
  project: ProjectDeclarations,
  dataFiles: Pick<DataFiles, "read">,
  signal: AbortSignal,
): Promise<TableImport> {
  const reader = new ProposalReader({ vocabulary: await libraryVocabulary(), project });
  const unread: string[] = [];
  const read: FileProposal[] = [];
  for (const { uri, name } of tables) {
    const content = await dataFiles.read(uri);
    if (content === undefined) {
      unread.push(`${name}: There is no such file, or it cannot be read.`);
      continue;
    }
    const file = reader.open(name);
    try {
      for await (const bytes of contentOf(content, name, { signal })) file.push(bytes);
      file.end();
      read.push(file);
    } catch (error) {
      if (!(error instanceof DamagedPackingError)) throw error;
      file.problem ??= `It is packed with gzip, but ${error.message}`;
    }
  }
  const { text, open, failed } = reader.proposal();
  return {
    text,
    open,
    columns: read.flatMap(columnsOf),
    problems: [...unread, ...failed.map(({ path, problem }) => `${path}: ${problem}`)],
  };
}

function columnsOf(file: FileProposal): ImportedColumn[] {
  if (file.table === undefined) return [];
  const { rows } = file.preview();
  return file.source().columns.map((column, place) => ({
    table: file.path,
    header: column.header,
    meaning: meaningText(column) || null,
    confidence: column.confidence,
    questions: column.settle,
    reasons: column.reasons,
    cells: rows.map((cells) => cells[place] ?? ""),
  }));
}
