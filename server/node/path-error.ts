/** A path that was given cannot be used. The message says why and what to do. */
export class PathError extends Error {
  override readonly name = "PathError";
}
