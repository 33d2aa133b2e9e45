/** Finds out about each thing once, since several checks ask the same. */
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
