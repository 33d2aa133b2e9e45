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

  setMistakes(uri: string, diagnostics: readonly Diagnostic[]): void {
    this.set(this.mistakes, uri, diagnostics);
  }

  /** Replaces all verdicts by these, and sends only the files in which something changed. */
  setVerdicts(verdicts: ReadonlyMap<string, readonly Diagnostic[]>): void {
    for (const uri of new Set([...this.verdicts.keys(), ...verdicts.keys()])) {
      this.set(this.verdicts, uri, verdicts.get(uri) ?? []);
    }
  }

  private set(
    part: Map<string, readonly Diagnostic[]>,
    uri: string,
    diagnostics: readonly Diagnostic[],
  ): void {
    if (JSON.stringify(part.get(uri) ?? []) === JSON.stringify(diagnostics)) {
      // A client that has just opened the file still waits for its first list.
      if (part === this.verdicts) return;
    }
    if (diagnostics.length === 0) part.delete(uri);
    else part.set(uri, diagnostics);
    void this.connection.sendDiagnostics({
      uri,
      diagnostics: [...(this.mistakes.get(uri) ?? []), ...(this.verdicts.get(uri) ?? [])],
    });
  }
}
