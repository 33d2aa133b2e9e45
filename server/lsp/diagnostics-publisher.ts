/**
 * Sends a file's mistakes and its verdicts together. The protocol knows one list of diagnostics a file and server, so
 * two parts of the server that each know half of it must not send on their own.
 */
import type { Connection, Diagnostic } from "vscode-languageserver";

export class DiagnosticsPublisher {
  private readonly connection: Pick<Connection, "sendDiagnostics">;
  private readonly mistakes = new Map<string, readonly Diagnostic[]>();
  private readonly verdicts = new Map<string, readonly Diagnostic[]>();

  constructor(connection: Pick<Connection, "sendDiagnostics">) {
    this.connection = connection;
  }

  /** Sends a file's list, changed or not: a client that has just opened the file still waits for its first. */
  setMistakes(uri: string, diagnostics: readonly Diagnostic[]): void {
    keep(this.mistakes, uri, diagnostics);
    this.send(uri);
  }

  /** Replaces all verdicts by these, and sends only the files in which something changed. */
  setVerdicts(verdicts: ReadonlyMap<string, readonly Diagnostic[]>): void {
    for (const uri of new Set([...this.verdicts.keys(), ...verdicts.keys()])) {
      const next = verdicts.get(uri) ?? [];
      if (JSON.stringify(this.verdicts.get(uri) ?? []) === JSON.stringify(next)) continue;
      keep(this.verdicts, uri, next);
      this.send(uri);
    }
  }

  private send(uri: string): void {
    const diagnostics = [...(this.mistakes.get(uri) ?? []), ...(this.verdicts.get(uri) ?? [])];
    void this.connection.sendDiagnostics({ uri, diagnostics });
  }
}

/** Files without diagnostics are not remembered. */
function keep(
  part: Map<string, readonly Diagnostic[]>,
  uri: string,
  diagnostics: readonly Diagnostic[],
): void {
  if (diagnostics.length === 0) part.delete(uri);
  else part.set(uri, diagnostics);
}
