/** Runs one suite inside a real extension host and brings its results back. */
import { cp, readFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { serveToBrowser, virtualFolder } from "./browser-host.ts";
import { runInDesktop } from "./desktop.ts";
import { scratchFolder } from "./scratch.ts";
import { type Server, startServer } from "./server.ts";
import { bundleSuite, type SuiteBundle } from "./suite-bundle.ts";
import type { SuiteFacts, TestResult } from "./suite-results.ts";
import { ensureChromium, ensureServer } from "./tools.ts";
import { readResults, type Watched, watchSuite } from "./watch-suite.ts";
import { launchBrowser, newWindow } from "./window.ts";

export type SuiteRun = {
  /** The suite's source. Paths are absolute here and below. */
  readonly suite: string;
  /** The folder with the extension's manifest, built and ready to run; a copy is run, so that a build meanwhile does no harm. */
  readonly extension: string;
  /** The folder to open; the suite gets a copy and may write in it. */
  readonly folder: string;
  /** `false`: restricted mode. */
  readonly trusted: boolean;
  /** `editor`: the extension's Node side. `browser`: its web worker side, on a virtual folder. */
  readonly host: "editor" | "browser";
  readonly settings?: { readonly [key: string]: unknown };
};

export type SuiteOutcome = {
  readonly tests: readonly TestResult[];
  /** Why the tests are not all there, in words for the reader; undefined when all had their turn. */
  readonly problem?: string;
  /** Addresses outside this machine that the window asked for. */
  readonly outsideRequests: readonly string[];
  /** What the workbench has told in the corner of the window; of a desktop editor nobody knows. */
  readonly notifications: readonly string[];
};

/** Where one run happens: copies of extension and folder, the bundled suite, its results, a desktop editor's data. */
type Place = {
  readonly extension: string;
  readonly folder: string;
  readonly script: string;
  readonly results: string;
  readonly profile: string;
};

/** Never rejects for a failing test; a suite that cannot be run comes back as a problem. */
export async function runSuite(run: SuiteRun): Promise<SuiteOutcome> {
  const scratch = scratchFolder("suite");
  try {
    const place: Place = {
      extension: join(scratch.path, "extension"),
      folder: join(scratch.path, "workspace"),
      script: join(scratch.path, "suite.cjs"),
      results: join(scratch.path, "results.json"),
      profile: join(scratch.path, "profile"),
    };
    await cp(run.extension, place.extension, { recursive: true });
    await cp(run.folder, place.folder, { recursive: true });
    const desktop = run.host === "editor" ? process.env.VSCODE_EXECUTABLE : undefined;
    return await (desktop ? inDesktop(run, place, desktop) : inServer(run, place));
  } catch (error) {
    return {
      tests: [],
      problem: error instanceof Error ? error.message : String(error),
      outsideRequests: [],
      notifications: [],
    };
  } finally {
    await scratch.remove();
  }
}

async function inDesktop(run: SuiteRun, place: Place, executable: string): Promise<SuiteOutcome> {
  if (!run.trusted) {
    const message = "The desktop editor trusts every folder that it opens for tests.";
    const all: TestResult = { name: "all of it", outcome: "skipped", milliseconds: 0, message };
    return { tests: [all], outsideRequests: [], notifications: [] };
  }
  const bundle = await bundleFor(run, place, "desktop", pathToFileURL(place.results).href);
  const printed = await runInDesktop({
    executable,
    extension: place.extension,
    suiteScript: place.script,
    folder: place.folder,
    profile: place.profile,
    settings: run.settings ?? {},
  });
  const results = await readResults(place.results);
  const problem = `The desktop editor ended before all tests had their turn. It printed:\n${printed}`;
  return outcome(
    bundle,
    { ...(results ? { results } : {}), ...(results?.finished ? {} : { problem }) },
    [],
    [],
  );
}

async function inServer(run: SuiteRun, place: Place): Promise<SuiteOutcome> {
  const script = await ensureServer();
  const browser = await launchBrowser(await ensureChromium());
  try {
    const first = await attempt(run, place, script, browser);
    if (!first.worthAnotherAttempt) return first;
    process.stderr.write(`workbench tests: trying once more with a new server. ${first.problem}\n`);
    return await attempt(run, place, script, browser);
  } finally {
    await browser.close();
  }
}

async function attempt(run: SuiteRun, place: Place, script: string, browser: Browser) {
  const server = await startServer({ script, trusted: run.trusted, settings: run.settings ?? {} });
  try {
    const inBrowser = run.host === "browser";
    const results = pathToFileURL(place.results);
    const resultsUri = inBrowser ? `vscode-remote://${server.authority}${results.pathname}` : results.href;
    const bundle = await bundleFor(run, place, inBrowser ? "browser" : "remote", resultsUri);
    const window = await newWindow(
      browser,
      inBrowser ? { server, folder: virtualFolder } : remoteWindow(place, server),
    );
    if (inBrowser) await serveToBrowser(window.page, { ...place, server });
    const watched = await watchSuite(window, server, place.results);
    await window.close();
    return {
      ...outcome(bundle, watched, window.outsideRequests, window.notifications),
      worthAnotherAttempt: watched.worthAnotherAttempt,
    };
  } finally {
    await server.stop();
  }
}

/** The window that loads extension and suite into the extension host beside the server. */
function remoteWindow(place: Place, server: Server) {
  const remote = (path: string) => `vscode-remote://${server.authority}${pathToFileURL(path).pathname}`;
  const payload = [
    ["extensionDevelopmentPath", remote(place.extension)],
    ["extensionTestsPath", remote(place.script)],
  ] as const;
  return { server, folder: place.folder, payload };
}

async function bundleFor(
  run: SuiteRun,
  place: Place,
  host: SuiteFacts["host"],
  resultsUri: string,
): Promise<SuiteBundle> {
  const text = await readFile(join(place.extension, "package.json"), "utf8");
  const { publisher, name } = JSON.parse(text) as { readonly publisher: string; readonly name: string };
  const facts = { host, trusted: run.trusted, extensionId: `${publisher}.${name}` };
  return bundleSuite({ suite: run.suite, script: place.script, facts, resultsUri });
}

function outcome(
  bundle: SuiteBundle,
  { results, problem }: Pick<Watched, "results" | "problem">,
  outsideRequests: readonly string[],
  notifications: readonly string[],
): SuiteOutcome {
  const tests = (results?.tests ?? []).map((each) =>
    each.stack === undefined ? each : { ...each, stack: bundle.sourcePositions(each.stack) },
  );
  const why = problem ?? (tests.length === 0 ? "The suite defines no test." : undefined);
  return { tests, outsideRequests, notifications, ...(why === undefined ? {} : { problem: why }) };
}
