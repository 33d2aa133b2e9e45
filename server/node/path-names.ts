/** How paths are shown: relative to the working folder, with forward slashes on every system. */
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
