/** What `drillwright diff --format json` prints: how the plans of two files differ in what they mean. */
import * as z from "zod/mini";
import { Location } from "../../../shared/plan-model.ts";

export const Difference = z.object({
  change: z.enum(["added", "removed", "changed"]),
  /** The plan and the block it is in; null where it is a plan, or of a plan as a whole. */
  plan: z.nullable(z.string()),
  block: z.nullable(z.string()),
  /** `goal`, `target`, `shots` … */
  what: z.string(),
  /** In the words of the two files; null where there was or is none. */
  old: z.nullable(z.string()),
  new: z.nullable(z.string()),
  /** What the change comes to, where that can be told: `wider`, `narrower`. */
  effect: z.nullable(z.string()),
  /** In the new file; of what was removed in the old one. */
  location: Location,
});
export type Difference = z.infer<typeof Difference>;

export const PlanDiff = z.object({
  format: z.literal("drillwright/plan-diff"),
  version: z.literal(1),
  /** The version of this tool. */
  tool: z.string(),
  old: z.string(),
  new: z.string(),
  differences: z.array(Difference),
});
export type PlanDiff = z.infer<typeof PlanDiff>;
