/** Which block of the plan a cell names. */

import { foldNumbered } from "../../../shared/fold.ts";
import type { Plan } from "../../../shared/plan-model.ts";
import { type Lookup, lookup, remembered } from "../spelling.ts";

/**
 * Finds blocks by name, whatever the case, spaces, punctuation, and zeros in front of numbers (`Gate 01` is `Gate 1`);
 * else by the place in the plan, from 1, alone or before the name (`2`, `2.0`, `Block 2`, `2. Gate`).
 */
export function blockLookup(plan: Plan): Lookup {
  const names = plan.blocks.map((block) => block.name);
  const byName = lookup(
    names.map((name) => [name, name] as const),
    foldNumbered,
  );
  const byPlace = lookup(
    names.flatMap((name, index) =>
      [`${index + 1}`, `block ${index + 1}`, `${index + 1} ${name}`].map((text) => [text, name] as const),
    ),
    foldNumbered,
  );
  return remembered((text) => byName(text) ?? byPlace(text.replace(/^(\s*\d+)\.0+\s*$/, "$1")));
}
