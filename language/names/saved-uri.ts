/** Where a document that is not saved yet will be: paths in it count from there. */
import type { URI } from "langium";

/** The scheme that editors give to documents that were never saved. Their paths are those they will be saved under. */
const UNSAVED = "untitled";

/** The same for a document that is a file. In a file system with authorities nobody knows which it will be. */
export function savedUri(uri: URI): URI {
  return uri.scheme === UNSAVED && uri.authority === "" ? uri.with({ scheme: "file" }) : uri;
}
