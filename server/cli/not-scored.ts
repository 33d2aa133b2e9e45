/** Sessions without a report, and why. */
import { placeOf } from "../report/places.ts";
import { printable } from "../report/printable.ts";
import type { NotScored } from "../report/score-output.ts";
import type { Io } from "./io.ts";

/** Says so on standard error, a line each. */
export function reportNotScored(notScored: readonly NotScored[], io: Io): void {
  for (const { session, location, message } of notScored) {
    const line = `${placeOf(location)} session "${session}" is not scored. ${message}`;
    io.stderr.write(`${printable(line)}\n`);
  }
}
