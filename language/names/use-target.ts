/** Which file a `use` statement names. */
import { type URI, UriUtils } from "langium";
import type { Use } from "../generated/tree/ast.ts";
import { savedUri } from "./saved-uri.ts";

export const FILE_ENDING = ".drill";

/** Worked out once for each statement: every reference and every change anywhere asks for them again. */
const targets = new WeakMap<Use, URI>();

/** The file that a `use` in `document` points at; the ending may be left out. Undefined while no path is typed. */
export function useTarget(use: Use, documentUri: URI): URI | undefined {
  if (!use.path) return undefined;
  let target = targets.get(use);
  if (target === undefined) {
    target = targetOf(use, documentUri);
    targets.set(use, target);
  }
  return target;
}

function targetOf(use: Use, documentUri: URI): URI {
  const path = use.path.endsWith(FILE_ENDING) ? use.path : use.path + FILE_ENDING;
  return UriUtils.resolvePath(UriUtils.dirname(savedUri(documentUri)), path);
}

/** For each file, the paths from its folder; worked out once: a path that leads nowhere is compared with all others. */
const paths = new Map<string, WeakMap<URI, string>>();
const pathsFrom = new WeakMap<URI, WeakMap<URI, string>>();

/** The path that a `use` in `from` would state to reach `to`. */
export function usePath(from: URI, to: URI): string {
  let known = pathsFrom.get(from);
  if (known === undefined) {
    const folder = UriUtils.dirname(from).toString();
    known = paths.get(folder) ?? new WeakMap();
    paths.set(folder, known);
    pathsFrom.set(from, known);
  }
  let path = known.get(to);
  if (path === undefined) {
    path = pathBetween(from, to);
    known.set(to, path);
  }
  return path;
}

function pathBetween(from: URI, to: URI): string {
  const relative = UriUtils.relative(UriUtils.dirname(from), to).slice(0, -FILE_ENDING.length);
  return relative.startsWith(".") ? relative : `./${relative}`;
}
