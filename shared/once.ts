/** Finds out about each thing once, since several ask the same. */
export function once<T extends object, R>(findOut: (thing: T) => R): (thing: T) => R {
  const known = new WeakMap<T, { readonly answer: R }>();
  return (thing) => {
    let found = known.get(thing);
    if (found === undefined) {
      found = { answer: findOut(thing) };
      known.set(thing, found);
    }
    return found.answer;
  };
}

/** More answers than a file has different questions. */
const MOST_ANSWERS = 2000;

/** The same for questions that a text describes in full, as plans ask the same of many blocks. */
export function onceFor<R>(): (question: string, findOut: () => R) => R {
  const known = new Map<string, { readonly answer: R }>();
  return (question, findOut) => {
    const found = known.get(question);
    if (found !== undefined) return found.answer;
    const answer = findOut();
    if (known.size >= MOST_ANSWERS) known.clear();
    known.set(question, { answer });
    return answer;
  };
}
