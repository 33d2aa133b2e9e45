/** What `drillwright score --format json` prints: the reports of all sessions, and why others have none. */
import * as z from "zod/mini";
import { Location } from "../../shared/plan-model.ts";
import { ScoreReport } from "../../shared/score-report.ts";
import { Finding } from "./check-report.ts";

/** A session without a report. */
export const NotScored = z.object({
  session: z.string(),
  location: Location,
  reason: z.enum(["plan-errors", "data-unreadable"]),
  message: z.string(),
});
export type NotScored = z.infer<typeof NotScored>;

export const ScoreOutput = z.object({
  format: z.literal("drillwright/score-output"),
  version: z.literal(1),
  /** The version of this tool. */
  tool: z.string(),
  /** In the order of the files, and in each from top to bottom. */
  reports: z.array(ScoreReport),
  notScored: z.array(NotScored),
  /** The errors in the texts that keep sessions from being scored. */
  errors: z.array(Finding),
});
export type ScoreOutput = z.infer<typeof ScoreOutput>;
