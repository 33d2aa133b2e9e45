/** Names that are not taken yet. */

export function unique(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  for (let number = 2; ; number++) if (!taken.has(`${name} ${number}`)) return `${name} ${number}`;
}
