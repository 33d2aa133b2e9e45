/** The built-in vocabulary: `.drill` files beside this one, embedded so that every host has them. */
import { URI } from "langium";
import { LIBRARY_FILES } from "../generated/library.ts";

/** Scheme of the library's URIs. Editors show its files read-only. */
export const LIBRARY_SCHEME = "drillwright-library";

export interface LibraryFile {
  readonly uri: URI;
  readonly text: string;
}

export function libraryFiles(): readonly LibraryFile[] {
  return Object.entries(LIBRARY_FILES).map(([name, text]) => ({
    uri: URI.from({ scheme: LIBRARY_SCHEME, path: `/${name}` }),
    text,
  }));
}

export function isLibraryUri(uri: URI): boolean {
  return uri.scheme === LIBRARY_SCHEME;
}
