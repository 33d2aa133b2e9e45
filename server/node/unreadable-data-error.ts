/** A table is there but cannot be read. The message names it and says why. */
export class UnreadableDataError extends Error {
  override readonly name = "UnreadableDataError";
}
