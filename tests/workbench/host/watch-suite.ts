/** Loads a window that runs a suite, and follows the suite's results to their end or to what cut them short. */
import { readFile } from "node:fs/promises";
import { setTimeout as pause } from "node:timers/promises";
import type { Server } from "./server.ts";
import type { SuiteResults } from "./suite-results.ts";
import type { EditorWindow } from "./window.ts";

export type Watched = {
  /** What there is, complete or not; undefined when no test began. */
  readonly results?: SuiteResults;
  /** Why the results are not complete. */
  readonly problem?: string;
  /** No test began, for a reason that lies in the machinery: another attempt hides nothing. */
  readonly worthAnotherAttempt: boolean;
};

/** Generous limits on a busy machine's account: they end what hangs, and decide no test. */
const startLimit = 60_000;
const silenceLimit = 180_000;

/** A window in which no test begins gets one reload; once one has begun, the suite is left alone. */
export async function watchSuite(
  window: EditorWindow,
  server: Server,
  resultsFile: string,
): Promise<Watched> {
  const signs = await watchForEnd(window, server);
  const cutShort = (why: string, results: SuiteResults | undefined, machinery: boolean): Watched => ({
    ...(results ? { results } : {}),
    problem: [
      results?.running ? `${why} It was during “${results.running}”.` : why,
      ...logTail(window.log),
    ].join("\n"),
    worthAnotherAttempt: machinery && results === undefined,
  });

  await window.load();
  let loads = 1;
  let latest: SuiteResults | undefined;
  let deadline = Date.now() + startLimit;
  while (true) {
    // Looked at before the results, which are written before the end shows.
    const { over, lost } = signs;
    const results = await readResults(resultsFile);
    if (results && JSON.stringify(results) !== JSON.stringify(latest)) {
      latest = results;
      deadline = Date.now() + silenceLimit;
    }
    if (latest?.finished) return { results: latest, worthAnotherAttempt: false };
    if (over) return cutShort(over, latest, false);
    if (lost) return cutShort(lost, latest, true);
    if (Date.now() > deadline) {
      if (latest) return cutShort("The extension host fell silent.", latest, false);
      if (loads === 2) return cutShort("The suite did not start, after a reload either.", latest, true);
      process.stderr.write("workbench tests: no test began within a minute; loading the window anew\n");
      await window.load();
      loads += 1;
      deadline = Date.now() + startLimit;
    }
    await pause(50);
  }
}

export async function readResults(file: string): Promise<SuiteResults | undefined> {
  try {
    return JSON.parse(await readFile(file, "utf8")) as SuiteResults;
  } catch {
    // There is none yet, or it is being written just now.
    return undefined;
  }
}

type Signs = {
  /** The editor says that the suite is over or cannot be run. */
  over?: string;
  /** Something below the editor broke. */
  lost?: string;
};

async function watchForEnd({ page }: EditorWindow, server: Server): Promise<Signs> {
  const signs: Signs = {};
  await page.exposeFunction("codeAutomationExit", (code: number) => {
    signs.over ??= `The extension host ended with code ${code} before all tests had their turn.`;
  });
  page.on("console", (message) => {
    if (message.text().startsWith("No extension host found")) signs.over ??= message.text();
  });
  page.on("crash", () => {
    signs.lost ??= "The window crashed.";
  });
  server.ended.then(() => {
    signs.lost ??= `The editor's server ended. It printed:\n${server.output()}`;
  });
  return signs;
}

/** What the editor says on every start here, for want of native modules, and what says nothing. */
const noise =
  /bindings file|watchdog|spdlog|sqlite3|AgentHost|Failed to load resource|Service ?Worker|vsda|iframe/;

function logTail(log: readonly string[]): readonly string[] {
  const telling = log.filter((line) => /error|warn/i.test(line) && !noise.test(line)).slice(-15);
  const lines = telling.map((line) => `  ${line.slice(0, 600)}`);
  return lines.length === 0 ? [] : ["The window's log says:", ...lines];
}
