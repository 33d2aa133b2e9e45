/**
 * What the extension costs before anybody has typed: the size of what is installed and of what is loaded first, loading
 * and activation in a Node of its own, and activation as a real editor measures it, beside the editor's own JSON
 * support. `npm run bench` builds, packs and runs it. It prints and decides nothing.
 */
import { execFileSync } from "node:child_process";
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openWorkbench } from "../workbench/host/photograph.ts";
import { ensureChromium } from "../workbench/host/tools.ts";
import { launchBrowser } from "../workbench/host/window.ts";
import { median, printFigure } from "./figures.ts";

const RUNS = 20;
const WINDOWS = 3;

const root = fileURLToPath(new URL("../../", import.meta.url));
const stage = join(root, "dist", "extension");
const { version } = JSON.parse(readFileSync(join(stage, "package.json"), "utf8")) as { version: string };
const vsix = join(root, "dist", `drillwright-${version}.vsix`);

/** Loads and activates the first script with an editor that does nothing, and tells what else it has loaded. */
const PROGRAM = `
const Module = require("node:module");
const nothing = () => new Proxy(function () {}, {
  get: (_, key) => (key === Symbol.toPrimitive ? () => "" : key === "then" ? undefined : key === Symbol.iterator ? [][Symbol.iterator] : nothing()),
  set: () => true,
  apply: () => nothing(),
  construct: () => nothing(),
});
const editor = new Proxy({ workspace: new Proxy({ textDocuments: [] }, { get: (own, key) => own[key] ?? nothing() }) }, {
  get: (own, key) => own[key] ?? (own[key] = key === "Disposable" ? class { static from() { return { dispose() {} }; } } : nothing()),
});
const load = Module._load;
const loaded = [];
Module._load = function (request, ...rest) {
  if (request === "vscode") return editor;
  loaded.push(request);
  return load.call(this, request, ...rest);
};
const start = performance.now();
const { activate } = require(process.argv[1]);
const afterLoad = performance.now();
activate({ subscriptions: [], extension: { id: "" }, extensionUri: {} });
console.log(JSON.stringify({ load: afterLoad - start, activate: performance.now() - afterLoad, loaded: loaded.slice(1) }));
`;

interface Start {
  readonly load: number;
  readonly activate: number;
  readonly loaded: readonly string[];
}

function start(): Start {
  const script = join(stage, "extension.cjs");
  return JSON.parse(execFileSync(process.execPath, ["-e", PROGRAM, script], { encoding: "utf8" }));
}

/** Activation in milliseconds, by the name of the extension, as the editor lists it. */
async function activations(): Promise<ReadonlyMap<string, number>> {
  const browser = await launchBrowser(await ensureChromium());
  try {
    const folder = join(root, "examples");
    const size = { width: 1280, height: 2400 }; // the list must have room for all, since it draws no more
    const workbench = await openWorkbench({
      browser,
      extension: { vsix },
      folder,
      theme: "light",
      pictures: "",
      size,
    });
    await workbench.openFile("plans/seven-iron-start-line.drill");
    await workbench.waitForText("goals met");
    await workbench.runCommand("Developer: Show Running Extensions");
    await workbench.waitForText("Activation:");
    const rows = await workbench.page.locator(".runtime-extensions-editor .monaco-list-row").allInnerTexts();
    await workbench.close();
    return new Map(
      rows.flatMap((row) => {
        const time = /Activation: (\d+)ms/.exec(row)?.[1];
        const name = row.split("\n")[0]?.trim();
        return time === undefined || name === undefined ? [] : [[name, Number(time)]];
      }),
    );
  } finally {
    await browser.close();
  }
}

const kilobytes = (file: string) => `${(statSync(file).size / 1000).toFixed(0)} kB`;
console.log(`package ${kilobytes(vsix)} (at most 2,000 kB)`);
for (const script of [
  "extension.cjs",
  "client.cjs",
  "extension.browser.js",
  "server/server.cjs",
  "server/lsp.browser.js",
])
  console.log(`  ${script.padEnd(24)} ${kilobytes(join(stage, script))}`);

const starts = Array.from({ length: RUNS }, start);
printFigure(
  "load the first script, a Node of its own",
  starts.map(({ load }) => load),
);
printFigure(
  "activate, a Node of its own",
  starts.map(({ activate }) => activate),
);
console.log(`loaded besides before a plan is open: ${starts[0]?.loaded.join(", ") || "nothing"}`);

const windows: ReadonlyMap<string, number>[] = [];
for (let window = 0; window < WINDOWS; window++) windows.push(await activations());
const names = [...(windows[0]?.keys() ?? [])];
for (const name of names.filter((each) => /^(Drillwright|JSON Language Features)$/.test(each))) {
  const times = windows.flatMap((window) => window.get(name) ?? []);
  console.log(
    `${`activation as the editor measures it: ${name}`.padEnd(58)} p50 ${median(times).toFixed(0).padStart(8)} ms`,
  );
}
