/** Which file a `use` statement names. */
import { type URI, UriUtils } from "langium";
import type { Use } from "../generated/tree/ast.ts";

export const FILE_ENDING = ".drill";

/** The file that a `use` in `document` points at; the ending may be left out. Undefined while no path is typed. */
export function useTarget(use: Use, documentUri: URI): URI | undefined {
  if (!use.path) return undefined;
  const path = use.path.endsWith(FILE_ENDING) ? use.path : use.path + FILE_ENDING;
  return UriUtils.resolvePath(UriUtils.dirname(documentUri), path);
}

/** The path that a `use` in `from` would state to reach `to`. */
export function usePath(from: URI, to: URI): string {
  const relative = UriUtils.relative(UriUtils.dirname(from), to).slice(0, -FILE_ENDING.length);
  return relative.startsWith(".") ? relative : `./${relative}`;
}
