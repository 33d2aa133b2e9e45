/**
 * A message between an editor and the server, beyond those of the Language Server Protocol.
 *
 * A message is a value that holds its method and remembers the types that belong to it, so that the two sides cannot
 * disagree: `ask(client, sessions, { file })` knows what comes back. The types exist at compile time only.
 */
declare const types: unique symbol;

/** Asked by one side, answered by the other: by the server, where nothing else is said. */
export interface RequestMessage<Params, Result> {
  readonly method: `drillwright/${string}`;
  readonly [types]?: (params: Params) => Result;
}

/** Told by the server; nobody answers. */
export interface NotificationMessage<Params> {
  readonly method: `drillwright/${string}`;
  readonly [types]?: (params: Params) => void;
}

/** A plan or a session, by the URI of the document that declares it and by the name it has there. */
export interface Declared {
  readonly file: string;
  readonly name: string;
}

/** A text that two of them share exactly where they are the same. */
export function keyOf({ file, name }: Declared): string {
  return `${file}#${name}`;
}
