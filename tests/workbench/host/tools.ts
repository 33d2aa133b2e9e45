/**
 * The two programs the workbench tests need and npm's own dependencies do not bring: the editor's server
 * (npm package `code-server`, which holds the real workbench and extension host) and a Chromium to show it.
 * What is not on the machine is installed once into the tools folder; after that no network is needed.
 */
import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, readdir, rename, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { basename, delimiter, dirname, join, relative } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { toolsFolder } from "./places.ts";

const run = promisify(execFile);

const codeServerVersion = "4.139.1";
const chromiumPackageVersion = "153.0.0";

/** The server's entry script, to be started with Node; installs the package first where it is missing. */
export async function ensureServer(): Promise<string> {
  const folder = join(toolsFolder(), `code-server-${codeServerVersion}`);
  const editor = join("node_modules", "code-server", "lib", "vscode");
  await installOnce(folder, "the editor's server (code-server, about 620 MB)", async (temporary) => {
    await npmInstall(temporary, `code-server@${codeServerVersion}`);
    // The package's own install script would do these two, and compile native modules that no test needs.
    await npmInstall(join(temporary, editor), "--omit=dev");
    await npmInstall(join(temporary, editor, "extensions"), "--omit=dev");
  });
  return join(folder, editor, "out", "server-main.js");
}

/** A Chromium executable: the one named, the one present, else one from the system's packages or from npm. */
export async function ensureChromium(): Promise<string> {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, which does not exist. Correct it, or unset it.`);
  }
  const target = join(toolsFolder(), "chromium");
  await othersAtIt(target); // what is half installed is found already
  const present = findChromium();
  if (present) return present;

  const reasons: string[] = [];
  for (const install of [chromiumFromSystemPackages, chromiumFromNpm]) {
    try {
      return await alone(target, install);
    } catch (error) {
      reasons.push(error instanceof Error ? error.message : String(error));
    }
  }
  throw new Error(
    [
      "The workbench tests need a Chromium (or Chrome, or Edge), and none was found or could be installed:",
      ...reasons.map((reason) => `  - ${reason}`),
      "Install one (Debian: apt-get install chromium), or set CHROMIUM_PATH to an executable.",
    ].join("\n"),
  );
}

const chromiumNames = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
];

/** Where browsers live on systems that keep programs off the search path. */
const chromiumPlaces: { readonly [platform: string]: readonly string[] } = {
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [process.env.ProgramFiles, process.env["ProgramFiles(x86)"]].flatMap((programs) =>
    programs
      ? [
          join(programs, "Google", "Chrome", "Application", "chrome.exe"),
          join(programs, "Microsoft", "Edge", "Application", "msedge.exe"),
        ]
      : [],
  ),
};

function findChromium(): string | undefined {
  const places = chromiumPlaces[process.platform] ?? [];
  return chromiumNames.map(onSearchPath).find((found) => found !== undefined) ?? places.find(existsSync);
}

async function chromiumFromSystemPackages(): Promise<string> {
  if (process.getuid?.() !== 0 || !onSearchPath("apt-get"))
    throw new Error("apt-get: needs Debian or a relative of it, and root");
  tell("installing chromium with apt-get, once");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const wait = ["-o", "DPkg::Lock::Timeout=300"];
  try {
    await run("apt-get", [...wait, "update"], { env, maxBuffer: Number.POSITIVE_INFINITY });
    const install = ["install", "-y", "--no-install-recommends", "chromium"];
    await run("apt-get", [...wait, ...install], { env, maxBuffer: Number.POSITIVE_INFINITY });
  } catch (error) {
    throw new Error(`apt-get: ${lastLine(error)}`);
  }
  const found = findChromium();
  if (!found) throw new Error("apt-get: installed the package chromium, but no such program is on the path");
  return found;
}

async function chromiumFromNpm(): Promise<string> {
  const name = "@sparticuz/chromium";
  try {
    if (process.platform !== "linux") throw new Error("it holds a build for Linux only");
    const folder = join(toolsFolder(), `chromium-${chromiumPackageVersion}`);
    await installOnce(folder, `a headless Chromium (${name})`, (temporary) =>
      npmInstall(temporary, `${name}@${chromiumPackageVersion}`),
    );
    const entry = pathToFileURL(createRequire(join(folder, "package.json")).resolve(name)).href;
    const { default: chromium } = (await import(entry)) as { default: { executablePath(): Promise<string> } };
    const executable = await chromium.executablePath();
    await run(executable, ["--no-sandbox", "--version"]);
    return executable;
  } catch (error) {
    throw new Error(`npm package ${name}: ${lastLine(error)}`);
  }
}

/**
 * Fills a temporary folder beside the target and renames it when all went well, so that an interrupted
 * install is never taken for a good one. Another process that is at it already is waited for.
 */
async function installOnce(
  target: string,
  what: string,
  fill: (folder: string) => Promise<void>,
): Promise<void> {
  await othersAtIt(target);
  if (existsSync(target)) return;
  const place = relative(process.cwd(), dirname(target));
  tell(`installing ${what} into ${place.startsWith("..") ? dirname(target) : place}, once`);
  await alone(target, async (temporary) => {
    await writeFile(join(temporary, "package.json"), '{ "private": true }\n');
    await fill(temporary);
    await rename(temporary, target).catch((error) => {
      if (!existsSync(target)) throw error;
    });
  });
}

/** Does something in a new folder beside the target, whose name tells other processes who is at it. */
async function alone<T>(target: string, work: (folder: string) => Promise<T>): Promise<T> {
  await removeAbandoned(target);
  const temporary = `${target}.installing-${process.pid}`;
  await mkdir(temporary, { recursive: true });
  try {
    return await work(temporary);
  } finally {
    await rm(temporary, { recursive: true, force: true });
  }
}

async function othersAtIt(target: string): Promise<void> {
  while ((await temporaries(target)).some(({ process: id }) => id !== process.pid && isRunning(id))) {
    await pause(500);
  }
}

async function removeAbandoned(target: string): Promise<void> {
  const abandoned = (await temporaries(target)).filter(({ process: id }) => !isRunning(id));
  await Promise.all(abandoned.map(({ folder }) => rm(folder, { recursive: true, force: true })));
}

/** The folders in which a target is or was being installed, with the process that made each. */
async function temporaries(target: string) {
  const prefix = `${basename(target)}.installing-`;
  const entries = await readdir(dirname(target)).catch(() => []);
  return entries
    .filter((name) => name.startsWith(prefix))
    .map((name) => ({ folder: join(dirname(target), name), process: Number(name.slice(prefix.length)) }));
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

async function npmInstall(folder: string, ...what: string[]): Promise<void> {
  const quiet = ["--ignore-scripts", "--no-audit", "--no-fund", "--no-progress", "--loglevel=error"];
  try {
    // On Windows npm is a script, which only a shell can start; none of these words needs quoting.
    const options = { cwd: folder, shell: process.platform === "win32", maxBuffer: Number.POSITIVE_INFINITY };
    await run("npm", ["install", ...quiet, ...what], options);
  } catch (error) {
    throw new Error(`npm install ${what.join(" ")} failed: ${lastLine(error)}`);
  }
}

function onSearchPath(program: string): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  return folders.map((folder) => join(folder, program)).find(existsSync);
}

function lastLine(error: unknown): string {
  const { stderr, message } = error as { stderr?: string; message?: string };
  const lines = (stderr?.trim() || message || String(error)).split("\n").filter((line) => line.trim() !== "");
  return lines.at(-1)?.trim() ?? "failed without a message";
}

function tell(what: string): void {
  process.stderr.write(`workbench tests: ${what}\n`);
}
