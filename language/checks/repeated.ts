/** What is said again where once is enough. */

/** A thing of which there was one before. */
export interface Again<T> {
  readonly thing: T;
  /** The first of them. */
  readonly first: T;
}

/** Each thing whose key an earlier one has. What has no key is passed over. Linear in the things. */
export function* repeated<T>(things: Iterable<T>, keyOf: (thing: T) => unknown): Generator<Again<T>> {
  const firsts = new Map<unknown, { readonly first: T }>();
  for (const thing of things) {
    const key = keyOf(thing);
    if (key === undefined) continue;
    const known = firsts.get(key);
    if (known === undefined) firsts.set(key, { first: thing });
    else yield { thing, first: known.first };
  }
}
