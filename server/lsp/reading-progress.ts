/** Tells people how far a large table is read, and lets them stop it. */
import type { Connection, InitializeParams } from "vscode-languageserver";
import type { Watcher } from "../import/pieces.ts";

/** Nobody needs to be told about what is over by then, in milliseconds. */
const PATIENCE = 700;

/** The reason of what people have stopped. */
export const STOPPED = new Error("Reading the tables was stopped. Score the session to read them again.");

export class ReadingProgress {
  private readonly connection: Connection;
  private canTell = false;

  constructor(connection: Connection) {
    this.connection = connection;
  }

  initialize({ capabilities }: InitializeParams): void {
    this.canTell = capabilities.window?.workDoneProgress ?? false;
  }

  /** Watches `work` while it reads tables. People may abort it through the controller that is given. */
  async during<Result>(
    controller: AbortController,
    work: (watcher: Watcher) => Promise<Result>,
  ): Promise<Result> {
    const start = Date.now();
    let bar: Promise<Bar> | undefined;
    const watcher: Watcher = {
      signal: controller.signal,
      progress: (file, bytes, size) => {
        if (!this.canTell || Date.now() - start < PATIENCE) return;
        bar ??= this.begin(controller);
        void bar.then(({ report }) => report(Math.round((100 * bytes) / size), nameOf(file)));
      },
    };
    try {
      return await work(watcher);
    } finally {
      void bar?.then(({ done }) => done());
    }
  }

  private async begin(controller: AbortController): Promise<Bar> {
    const reporter = await this.connection.window.createWorkDoneProgress();
    reporter.begin("Drillwright", 0, "reading tables", true);
    reporter.token.onCancellationRequested(() => controller.abort(STOPPED));
    return { report: (percent, file) => reporter.report(percent, file), done: () => reporter.done() };
  }
}

interface Bar {
  readonly report: (percent: number, file: string) => void;
  readonly done: () => void;
}

function nameOf(uri: string): string {
  return decodeURIComponent(uri.split("/").at(-1) ?? uri);
}
