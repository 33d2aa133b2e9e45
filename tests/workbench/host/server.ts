/** Starts the editor's server for one window, with a data folder of its own, and ends it without leftovers. */
import { execFile, spawn } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { type Scratch, scratchFolder } from "./scratch.ts";

export type ServerOptions = {
  /** The server's entry script, see `ensureServer`. */
  readonly script: string;
  /** `false` opens folders in restricted mode, as the editor does with a folder nobody has vouched for. */
  readonly trusted: boolean;
  /** User settings beside the quiet ones below. */
  readonly settings?: { readonly [key: string]: unknown };
  /** A packaged extension to install first. */
  readonly vsix?: string;
};

export type Server = {
  /** Host and port, as they stand in remote addresses. */
  readonly authority: string;
  /** What the server printed, newest last. */
  readonly output: () => string;
  /** Resolves when the process ends, for whatever reason. */
  readonly ended: Promise<void>;
  stop(): Promise<void>;
};

/** Nothing that greets, updates, recommends or asks: a test sees the extension and the editor only. */
const quietSettings = {
  "chat.disableAIFeatures": true,
  "extensions.autoCheckUpdates": false,
  "extensions.autoUpdate": false,
  "extensions.ignoreRecommendations": true,
  "git.enabled": false,
  "security.workspace.trust.startupPrompt": "never",
  "telemetry.telemetryLevel": "off",
  "update.showReleaseNotes": false,
  "workbench.secondarySideBar.defaultVisibility": "hidden",
  "workbench.startupEditor": "none",
  "workbench.tips.enabled": false,
};

const startLimit = 60_000;
const keeper = fileURLToPath(new URL("server-keeper.ts", import.meta.url));

export async function startServer(options: ServerOptions): Promise<Server> {
  const data = scratchFolder("server");
  const settingsFolder = join(data.path, "data", "User");
  mkdirSync(settingsFolder, { recursive: true });
  writeFileSync(
    join(settingsFolder, "settings.json"),
    JSON.stringify({ ...quietSettings, ...options.settings }, undefined, 2),
  );
  try {
    if (options.vsix) await installExtension(options.script, data.path, options.vsix);
    return await launch(options, data);
  } catch (error) {
    await data.remove();
    throw error;
  }
}

async function installExtension(script: string, dataFolder: string, vsix: string): Promise<void> {
  const args = [script, "--server-data-dir", dataFolder, "--install-extension", vsix];
  const { stdout, stderr } = await promisify(execFile)(process.execPath, args, {
    env: environment(dataFolder),
  });
  if (!stdout.includes("successfully installed"))
    throw new Error(`${vsix} could not be installed:\n${stdout}${stderr}`);
}

async function launch(options: ServerOptions, data: Scratch): Promise<Server> {
  const args = [options.script, "--host", "127.0.0.1", "--port", "0", "--server-data-dir", data.path];
  args.push("--without-connection-token", "--accept-server-license-terms", "--telemetry-level", "off");
  // Without the driver the workbench ignores the address of a test suite.
  args.push("--enable-smoke-test-driver");
  if (options.trusted) args.push("--disable-workspace-trust");

  const child = spawn(process.execPath, [keeper, data.path, ...args], {
    // A process group of its own, so that all of it can be ended at once.
    detached: process.platform !== "win32",
    env: environment(data.path),
    stdio: ["pipe", "pipe", "pipe"],
  });
  let printed = "";
  const port = Promise.withResolvers<string>();
  const collect = (chunk: Buffer): void => {
    printed = (printed + chunk.toString()).slice(-50_000);
    const match = /Extension host agent listening on (\d+)/.exec(printed);
    if (match?.[1]) port.resolve(match[1]);
  };
  child.stdout.on("data", collect);
  child.stderr.on("data", collect);

  const ended = new Promise<void>((resolve) => {
    child.once("exit", () => resolve());
    child.once("error", (error) => {
      printed += String(error);
      resolve();
    });
  });
  const stop = async (): Promise<void> => {
    child.stdin.end();
    await ended;
    await data.remove();
  };

  try {
    const failed = (why: string) => new Error(`The editor's server ${why}. It printed:\n${printed}`);
    const authority = `127.0.0.1:${await Promise.race([
      port.promise,
      ended.then(() => Promise.reject(failed("ended while starting"))),
      pause(startLimit, undefined, { ref: false }).then(() =>
        Promise.reject(failed("did not start in a minute")),
      ),
    ])}`;
    const answer = await fetch(`http://${authority}/`);
    if (!answer.ok) throw failed(`answered ${answer.status}`);
    await answer.body?.cancel();
    return { authority, output: () => printed, ended, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

/** The environment without what would change the server's ways: our test runner's options, another editor's. */
function environment(dataFolder: string): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^(VSCODE_|VITEST|ELECTRON_|NODE_OPTIONS$)/.test(name),
  );
  return {
    ...Object.fromEntries(kept),
    // Nobody's own settings come in, and sockets and scratch files go when the data folder goes.
    HOME: dataFolder,
    ...(process.platform === "linux" ? { TMPDIR: dataFolder, XDG_RUNTIME_DIR: dataFolder } : {}),
    // No gallery: nothing to ask the network for.
    EXTENSIONS_GALLERY: "{}",
  };
}
