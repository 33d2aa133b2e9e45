/**
 * The path that a `use` states in the file at one address to reach the file at another, as `../library/players`; both
 * are addresses as `Uri.path` has them. The ending is left out.
 */
export function usePath(from: string, to: string): string {
  const here = from.split("/").slice(0, -1);
  const there = to.replace(/\.drill$/, "").split("/");
  let shared = 0;
  while (shared < here.length && shared < there.length - 1 && here[shared] === there[shared]) shared++;
  const path = [...here.slice(shared).map(() => ".."), ...there.slice(shared)].join("/");
  return path.startsWith("..") ? path : `./${path}`;
}
