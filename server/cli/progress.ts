/** How far large tables are read, for whoever waits at a terminal. */
import type { Watcher } from "../import/pieces.ts";
import type { Output } from "./io.ts";

/** From this many bytes of a table on it is shown: nobody waits for less. */
const LARGE = 10_000_000;

const CLEARED_LINE = "\r\u001b[K";

/** Shows it on one line, which is gone when the table is read. Says nothing where nobody reads along. */
export function progressOn(stderr: Output): Watcher {
  if (!stderr.isTTY) return {};
  let shown = "";
  return {
    progress(file, bytes, size) {
      if (bytes < LARGE) return;
      const line = bytes >= size ? "" : `${file}: ${Math.floor((100 * bytes) / size)} %`;
      if (line === shown) return;
      shown = line;
      stderr.write(CLEARED_LINE + line);
    },
  };
}
