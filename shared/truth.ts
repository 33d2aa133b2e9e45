/** Three-valued truth: what is unknown stays unknown until it no longer matters. */

/** Whether a shot meets a condition; `undefined` where a value it needs is unknown. */
export type Truth = boolean | undefined;

/** Kleene's negation: unknown stays unknown. */
export function not(truth: Truth): Truth {
  return truth === undefined ? undefined : !truth;
}

/** Kleene's conjunction: false if any is false, else unknown if any is unknown. */
export function allOf(truths: Iterable<Truth>): Truth {
  let result: Truth = true;
  for (const truth of truths) {
    if (truth === false) return false;
    if (truth === undefined) result = undefined;
  }
  return result;
}

/** Kleene's disjunction: true if any is true, else unknown if any is unknown. */
export function anyOf(truths: Iterable<Truth>): Truth {
  let result: Truth = false;
  for (const truth of truths) {
    if (truth === true) return true;
    if (truth === undefined) result = undefined;
  }
  return result;
}
