import type { RequestMessage } from "./message.ts";

/** What tables that nobody has described yet are taken for. They are read now, and not changed. */
export const importTables: RequestMessage<ImportTablesParams, TableImport> = {
  method: "drillwright/importTables",
};

export interface ImportTablesParams {
  /** URIs of tables in one folder. The proposal is a file of that folder. */
  readonly tables: readonly string[];
}

export interface TableImport {
  /** A `.drill` file that declares a source and the sessions in the tables; empty where nothing can be proposed. */
  readonly text: string;
  readonly columns: readonly ImportedColumn[];
  /** How many questions the text leaves to the coach. */
  readonly open: number;
  /** Why nothing can be proposed for a table: sentences. */
  readonly problems: readonly string[];
}

export interface ImportedColumn {
  readonly table: string;
  readonly header: string;
  /** As `carry in yd`; null where the column is not read. */
  readonly meaning: string | null;
  readonly confidence: "sure" | "likely" | "doubtful";
  /** What is to be settled before the column can be relied on. */
  readonly questions: readonly string[];
  /** What the meaning rests on. */
  readonly reasons: readonly string[];
  /** What the first rows hold in this column. */
  readonly cells: readonly string[];
}
