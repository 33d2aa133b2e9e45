/** The check report: what is to be said about a set of `.drill` files. */
import * as z from "zod/mini";
import { Range } from "../../shared/plan-model.ts";

export const FindingSeverity = z.enum(["error", "warning", "hint"]);
export type FindingSeverity = z.infer<typeof FindingSeverity>;

/** An edit of the text: what stands in the range becomes `newText`. */
export const FindingEdit = z.object({ range: Range, newText: z.string() });

/** One thing to be said about a place in a file. */
export const Finding = z.object({
  /** Path relative to the working folder, with forward slashes. */
  file: z.string(),
  range: Range,
  severity: FindingSeverity,
  /** The id of the check; `syntax` where the text breaks the grammar, `unreadable` where it cannot be read at all. */
  code: z.string(),
  message: z.string(),
  /** Changes that would remove the finding, the best first. */
  fixes: z.array(z.object({ title: z.string(), edits: z.array(FindingEdit) })),
});
export type Finding = z.infer<typeof Finding>;

export const CheckReport = z.object({
  format: z.literal("drillwright/check-report"),
  version: z.literal(1),
  /** The version of this tool. */
  tool: z.string(),
  /** Every file that was looked at, those that others use included. */
  files: z.array(z.string()),
  /** In the order of the files, and in each from top to bottom. */
  findings: z.array(Finding),
  counts: z.object({ errors: z.number(), warnings: z.number(), hints: z.number() }),
});
export type CheckReport = z.infer<typeof CheckReport>;
