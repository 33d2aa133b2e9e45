/** Names that fixes and refactorings give. */

/** The name, or the first of `name-2`, `name-3` … that is not taken. */
export function freeName(name: string, taken: Iterable<string>, separator = "-"): string {
  const names = new Set(taken);
  let free = name;
  for (let number = 2; names.has(free); number++) free = `${name}${separator}${number}`;
  return free;
}
