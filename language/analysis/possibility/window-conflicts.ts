/** Conditions that no shot meets, in windows. */
import type { Condition } from "../../../shared/plan-model.ts";
import { circumstancesOf } from "./circumstances.ts";
import { type Conflict, findConflict } from "./conflict.ts";
import { propose } from "./propose.ts";
import { since } from "./reasons.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** Why no player's shot can meet a condition; undefined where one can. */
export function conflictWithin(
  condition: Condition,
  vocabulary: Vocabulary,
): Conflict<Condition> | undefined {
  const among = circumstancesOf([condition]);
  const conflict = findConflict(
    [condition],
    (one) => (at) => propose(one, true, at, vocabulary),
    among,
    vocabulary,
  );
  return conflict?.circumstances.length === among.length ? conflict : undefined;
}

/** What is said of a window that nothing can be inside; undefined where something can. */
export function emptyWindow(condition: Condition, vocabulary: Vocabulary): string | undefined {
  const conflict = conflictWithin(condition, vocabulary);
  if (conflict === undefined) return undefined;
  const why = since(conflict.because, conflict.circumstances[0], { vocabulary });
  return `No shot can be inside this window${why}. Check the numbers and their units.`;
}

/** Whether a condition names a window that no shot can be inside, with some club or at some level. */
export function namesImpossibleWindow({ anyOf }: Condition, vocabulary: Vocabulary): boolean {
  const tests = anyOf.flatMap(({ allOf }) => allOf);
  return tests.some(
    (test) =>
      test.kind === "window" &&
      test.variants.some(({ condition }) => conflictWithin(condition, vocabulary) !== undefined),
  );
}
