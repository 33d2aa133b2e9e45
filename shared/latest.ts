/** What was asked for lately, as far as there is room for it: what nobody has asked for the longest goes first. */
export class Latest<Key, Value> {
  readonly #known = new Map<Key, Value>();
  readonly #most: number;
  readonly #sizeOf: (value: Value) => number;
  #size = 0;

  /** @param most how much is kept in all, unless the last alone is more */
  constructor(most: number, sizeOf: (value: Value) => number) {
    this.#most = most;
    this.#sizeOf = sizeOf;
  }

  get(key: Key): Value | undefined {
    const value = this.#known.get(key);
    if (value === undefined) return undefined;
    this.#known.delete(key);
    this.#known.set(key, value);
    return value;
  }

  set(key: Key, value: Value): void {
    this.#forget(key);
    this.#known.set(key, value);
    this.#size += this.#sizeOf(value);
    for (const oldest of this.#known.keys()) {
      if (this.#size <= this.#most || oldest === key) break;
      this.#forget(oldest);
    }
  }

  #forget(key: Key): void {
    const value = this.#known.get(key);
    if (value === undefined) return;
    this.#known.delete(key);
    this.#size -= this.#sizeOf(value);
  }
}
