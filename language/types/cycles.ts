/** Things that follow from each other in a circle. */

/**
 * The things on a circle, each with the circle found through it, from the thing itself round to the one before it. At
 * least one thing of every circle is found. Cost: linear in the things and what they follow from.
 */
export function circles<T>(things: Iterable<T>, from: (thing: T) => Iterable<T>): Map<T, readonly T[]> {
  const found = new Map<T, readonly T[]>();
  const done = new Set<T>();
  for (const start of things) {
    if (done.has(start)) continue;
    const path = [start];
    const places = new Map([[start, 0]]);
    const open = [from(start)[Symbol.iterator]()];
    while (path.length > 0) {
      const next = open.at(-1)?.next();
      if (next === undefined || next.done) {
        open.pop();
        const left = path.pop() as T;
        places.delete(left);
        done.add(left);
        continue;
      }
      const place = places.get(next.value);
      if (place !== undefined) {
        const circle = path.slice(place);
        circle.forEach((thing, index) => {
          if (!found.has(thing)) found.set(thing, [...circle.slice(index), ...circle.slice(0, index)]);
        });
      } else if (!done.has(next.value)) {
        places.set(next.value, path.length);
        path.push(next.value);
        open.push(from(next.value)[Symbol.iterator]());
      }
    }
  }
  return found;
}

/**
 * A shortest circle from a thing over another that it leads to, and back: the thing itself, that other one, and so on to
 * the one before it. The thing alone where both are the same; undefined where no way leads back. Linear in what is reached.
 */
export function circleOver<T>(
  thing: T,
  over: T,
  from: (thing: T) => Iterable<T>,
): readonly [T, ...T[]] | undefined {
  if (over === thing) return [thing];
  const cameFrom = new Map<T, T | undefined>([[over, undefined]]);
  for (const [at] of cameFrom) {
    for (const next of from(at)) {
      if (next === thing) {
        const way: T[] = [];
        for (let back: T | undefined = at; back !== undefined; back = cameFrom.get(back)) way.unshift(back);
        return [thing, ...way];
      }
      if (!cameFrom.has(next)) cameFrom.set(next, at); // a map that grows is walked to its end
    }
  }
  return undefined;
}
