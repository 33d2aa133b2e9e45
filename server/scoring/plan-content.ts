/** What a plan says, as one text that two plans have in common exactly when they say the same. */
import type { Plan } from "../../shared/plan-model.ts";

/**
 * JSON with the names of each object in order, without the places in the files: moving a plan, or writing it in another
 * layout, does not change it. A number that JSON cannot hold is written as text.
 */
export function planContent(plan: Plan): string {
  return JSON.stringify(canonical(plan));
}

function canonical(value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) return String(value);
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).filter(([name, part]) => name !== "location" && part !== undefined);
  entries.sort(([one], [other]) => (one < other ? -1 : 1));
  return Object.fromEntries(entries.map(([name, part]) => [name, canonical(part)]));
}
