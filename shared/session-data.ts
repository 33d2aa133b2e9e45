/**
 * A session's shots as read from its tables: SI units, target frame (right, up and forward positive), one record a shot.
 */
import * as z from "zod/mini";

/** A row of a data file. `line` counts from 1 as a text editor does. */
export const Row = z.object({ file: z.string(), line: z.number() });
export type Row = z.infer<typeof Row>;

/** One shot. A metric that is missing in `values` is unknown; it is never zero. */
export const Shot = z.object({
  row: Row,
  values: z.record(z.string(), z.number()),
  /** The metrics that are names, such as the shape of the shot. What is missing is unknown. */
  categories: z.record(z.string(), z.string()),
  /** Metrics in `values` and `categories` that were computed from others, not read. */
  derived: z.array(z.string()),
  club: z.nullable(z.string()),
  /** Time of day in seconds after midnight, or null where the table does not tell. */
  time: z.nullable(z.number()),
  /** Name of the plan's block the shot was assigned to, or null. */
  block: z.nullable(z.string()),
  /** Why the data itself sets this shot aside, or null. */
  excluded: z.nullable(z.string()),
});
export type Shot = z.infer<typeof Shot>;

/** Something about a data file that somebody should know. Errors keep the file from being scored. */
export const DataFinding = z.object({
  code: z.enum([
    "file-missing",
    "file-empty",
    "file-unreadable",
    "not-a-table",
    "column-missing",
    "column-ambiguous",
    "hand-missing",
    "cell-unreadable",
    "club-unknown",
    "block-unknown",
    "category-unknown",
    "value-implausible",
    /** Readings that do not fit each other, as a face-to-path that is not face minus path. */
    "value-inconsistent",
    "row-ragged",
    "row-skipped",
    "row-unreadable",
    /** A table of several sessions: nothing in it is this session's, or what is cannot be told. */
    "rows-missing",
    "date-missing",
    "date-ambiguous",
    "shots-unassigned",
  ]),
  severity: z.enum(["error", "warning"]),
  file: z.string(),
  /** Line of the file, from 1, and header of the column, where the finding is about one. */
  line: z.nullable(z.number()),
  column: z.nullable(z.string()),
  /** The text found. */
  text: z.nullable(z.string()),
  /** What was found, what was expected, what to do: one sentence or two. */
  message: z.string(),
  /** How many findings like those listed this one stands for, where there were too many to list. */
  count: z.optional(z.number()),
});
export type DataFinding = z.infer<typeof DataFinding>;

/** How shots were given to blocks. */
export const Assignment = z.object({
  method: z.enum(["column", "starts", "order"]),
  /** Which reading was taken and why, in a sentence. */
  explanation: z.string(),
  /**
   * Where each block was taken to start, to be written into the session and corrected there: present where the numbers of
   * shots do not add up, and lines can say it. `row` is a line of the table, from 1; `file` is its path as the session
   * writes it, or null where no table need be named.
   */
  suggestedStarts: z.optional(
    z.array(z.object({ block: z.string(), row: z.number(), file: z.nullable(z.string()) })),
  ),
});
export type Assignment = z.infer<typeof Assignment>;

export const DataFile = z.object({
  file: z.string(),
  sha256: z.string(),
  shots: z.number(),
  /** How many rows belong to other players, days or sessions; left out where the table is not split. */
  others: z.optional(z.number()),
});
export type DataFile = z.infer<typeof DataFile>;

export const SessionData = z.object({
  files: z.array(DataFile),
  /** In the order they were hit. */
  shots: z.array(Shot),
  assignment: Assignment,
  findings: z.array(DataFinding),
});
export type SessionData = z.infer<typeof SessionData>;
