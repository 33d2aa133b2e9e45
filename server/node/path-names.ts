/** How paths are shown: relative to the working folder, with forward slashes on every system. */
import { statSync } from "node:fs";
import { relative, resolve, sep } from "node:path";

/** The name of an absolute path; `.` for the working folder itself. A path on another drive stays as it is. */
export function nameOfPath(path: string, cwd: string): string {
  const name = relative(cwd, path);
  return name === "" ? "." : name.split(sep).join("/");
}

/** The absolute path that a name, or a path somebody wrote, stands for. */
export function pathOfName(name: string, cwd: string): string {
  return resolve(cwd, name);
}

/** Whether two absolute paths lead to one file, by whatever name: the same, a link, another case of letters. */
export function isSameFile(one: string, other: string): boolean {
  if (one === other) return true;
  const [first, second] = [one, other].map((path) => statSync(path, { throwIfNoEntry: false, bigint: true }));
  return first !== undefined && first.ino === second?.ino && first.dev === second.dev;
}
