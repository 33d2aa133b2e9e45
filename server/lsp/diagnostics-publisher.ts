/**
 * Sends a file's mistakes and its verdicts together. The protocol knows one list of diagnostics a file and server, so
 * two parts of the server that each know half of it must not send on their own.
 */
import type { Connection, Diagnostic } from "vscode-languageserver";

/** How long mistakes wait for the verdicts on the same text, in milliseconds. Seldom, since tables are read once. */
const PATIENCE = 150;

/** Diagnostics, and the version of the open text that they were computed from. */
interface Part {
  readonly version: number | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

const NOTHING: Part = { version: undefined, diagnostics: [] };

/**
 * What is sent at once is about one text, whose version goes with it. Mistakes are known before the verdicts on the same
 * text: they wait a moment for them, so that nothing flickers at each keystroke, and are then sent without.
 */
export class DiagnosticsPublisher {
  private readonly connection: Pick<Connection, "sendDiagnostics">;
  private readonly mistakes = new Map<string, Part>();
  private readonly verdicts = new Map<string, Part>();
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();

  constructor(connection: Pick<Connection, "sendDiagnostics">) {
    this.connection = connection;
  }

  /**
   * Sends a file's list, changed or not: a client that has just opened the file still waits for its first.
   * @param version of the open text that the mistakes are in; undefined for one that was read from disk.
   */
  setMistakes(uri: string, version: number | undefined, diagnostics: readonly Diagnostic[]): void {
    if (diagnostics.length === 0 && version === undefined) this.mistakes.delete(uri);
    else this.mistakes.set(uri, { version, diagnostics });
    if (this.isOfOneText(uri)) this.send(uri);
    else if (!this.waiting.has(uri))
      this.waiting.set(
        uri,
        setTimeout(() => this.send(uri), PATIENCE),
      );
  }

  /**
   * Replaces all verdicts by these, and sends only the files in which something changed.
   * @param versions of the open texts that they rest on.
   */
  setVerdicts(
    verdicts: ReadonlyMap<string, readonly Diagnostic[]>,
    versions: ReadonlyMap<string, number>,
  ): void {
    for (const uri of new Set([...this.verdicts.keys(), ...verdicts.keys()])) {
      const before = this.verdicts.get(uri) ?? NOTHING;
      const next = { version: versions.get(uri), diagnostics: verdicts.get(uri) ?? [] };
      if (next.diagnostics.length === 0) this.verdicts.delete(uri);
      else this.verdicts.set(uri, next);
      // Where the mistakes are those of an older text, newer ones are on their way.
      if (!isSame(before, next) && this.isOfOneText(uri)) this.send(uri);
    }
  }

  private isOfOneText(uri: string): boolean {
    const verdicts = this.verdicts.get(uri);
    return verdicts === undefined || verdicts.version === this.mistakes.get(uri)?.version;
  }

  private send(uri: string): void {
    clearTimeout(this.waiting.get(uri));
    this.waiting.delete(uri);
    const { version, diagnostics: mistakes } = this.mistakes.get(uri) ?? NOTHING;
    const verdicts = this.isOfOneText(uri) ? (this.verdicts.get(uri) ?? NOTHING).diagnostics : [];
    const diagnostics = [...mistakes, ...verdicts];
    void this.connection.sendDiagnostics(
      version === undefined ? { uri, diagnostics } : { uri, version, diagnostics },
    );
  }
}

function isSame(one: Part, other: Part): boolean {
  if (one.version !== other.version) return false;
  return (
    one.diagnostics === other.diagnostics ||
    JSON.stringify(one.diagnostics) === JSON.stringify(other.diagnostics)
  );
}
