/**
 * From process start to the first diagnostics, and from a keystroke to its diagnostics, beside a JSON server with a
 * schema on equal content and the framework's bare server on the same grammar. `npm run bench:server` builds and runs it.
 * It prints and decides nothing.
 */
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { buildSync } from "esbuild";
import {
  createProtocolConnection,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { ensureServer } from "../workbench/host/tools.ts";
import { printFigure, printRatio } from "./figures.ts";

const STARTS = 7;
const KEYSTROKES = 60;
const WARM_UP = 15;

interface Contender {
  readonly name: string;
  readonly command: readonly string[];
  readonly languageId: string;
  readonly file: string;
  /** A text of about so many lines, and the places of numbers in it that a keystroke may change. */
  readonly text: (lines: number) => string;
}

const root = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "drillwright-bench-"));

/** Blocks of ten lines each, as a coach writes them. */
function planText(lines: number): string {
  const blocks = Array.from({ length: Math.max(1, Math.round((lines - 4) / 10)) }, (_, index) =>
    [
      `  block "Gate ${index}" blocked {`,
      "    18 shots",
      '    cue "Brush the grass a hand past the ball"',
      "    target club-path within 2° of 1° in-to-out",
      "    require attack-angle between 2° down and 6° down",
      "    success {",
      "      at least 12 of 18 shots on target",
      "      spread of start-direction at most 2.5°",
      "    }",
      "  }",
    ].join("\n"),
  );
  return `plan "Bench" {\n  for 7-iron\n  time 55 min\n${blocks.join("\n")}\n}\n`;
}

const SCHEMA = {
  type: "object",
  required: ["plan", "blocks"],
  properties: {
    plan: { type: "string" },
    blocks: {
      type: "array",
      items: {
        type: "object",
        required: ["name", "kind", "shots", "success"],
        additionalProperties: false,
        properties: {
          name: { type: "string" },
          kind: { enum: ["warm-up", "baseline", "blocked", "test"] },
          shots: { type: "integer", minimum: 1 },
          cue: { type: "string" },
          target: {
            type: "object",
            required: ["metric"],
            properties: { metric: { enum: ["club-path", "carry"] } },
          },
          success: { type: "array", items: { type: "object" } },
        },
      },
    },
  },
};

function jsonText(lines: number): string {
  const blocks = Array.from({ length: Math.max(1, Math.round((lines - 4) / 10)) }, (_, index) =>
    [
      "    {",
      `      "name": "Gate ${index}",`,
      '      "kind": "blocked",',
      '      "shots": 18,',
      '      "cue": "Brush the grass a hand past the ball",',
      '      "target": { "metric": "club-path", "within": 2, "of": 1 },',
      '      "success": [',
      '        { "atLeast": 12, "of": 18 }, { "spread": "start-direction", "atMost": 2.5 }',
      "      ]",
      "    }",
    ].join("\n"),
  );
  return `{\n  "plan": "Bench",\n  "blocks": [\n${blocks.join(",\n")}\n  ]\n}\n`;
}

/** The JSON server of the editor itself, as the workbench tests install it: it answers as fast as it can when asked. */
async function jsonServer(): Promise<string> {
  const editor = join(dirname(await ensureServer()), "..");
  return join(editor, "extensions/json-language-features/server/dist/node/jsonServerMain.js");
}

/** Starts a server on a file and waits for its diagnostics. */
async function start(contender: Contender, text: string) {
  const started = performance.now();
  const server = spawn(process.execPath, [...contender.command], { stdio: ["pipe", "pipe", "ignore"] });
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  const uri = pathToFileURL(join(folder, contender.file)).toString();
  let published: (() => void) | undefined;
  connection.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) => items.map(() => ({})));
  connection.onRequest("client/registerCapability", () => null);
  connection.onNotification("textDocument/publishDiagnostics", (params: { uri: string }) => {
    if (params.uri === uri) published?.();
  });
  connection.listen();
  const { capabilities } = await connection.sendRequest<{ capabilities: { diagnosticProvider?: unknown } }>(
    "initialize",
    {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: null,
      initializationOptions: { provideFormatter: false, handledSchemaProtocols: ["file"] },
      capabilities: { textDocument: { publishDiagnostics: {}, diagnostic: {} } },
    },
  );
  const pulls = capabilities.diagnosticProvider !== undefined;
  const diagnostics = async (change: () => Promise<void>) => {
    const done = new Promise<void>((resolve) => {
      published = resolve;
    });
    await change();
    if (pulls) await connection.sendRequest("textDocument/diagnostic", { textDocument: { uri } });
    else await done;
  };
  await connection.sendNotification("initialized", {});
  if (contender.languageId === "json") {
    await connection.sendNotification("json/schemaAssociations", [
      { uri: "schema://bench/plan.json", fileMatch: ["*.json"], schema: SCHEMA },
    ]);
  }
  await diagnostics(() =>
    connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri, languageId: contender.languageId, version: 1, text },
    }),
  );
  const time = performance.now() - started;
  const stop = () => {
    connection.dispose();
    server.kill();
  };
  return { time, connection, uri, diagnostics, stop };
}

async function keystrokes(contender: Contender, lines: number): Promise<number[]> {
  const text = contender.text(lines);
  const { connection, uri, diagnostics, stop } = await start(contender, text);
  const middle = text.indexOf("12", Math.floor(text.length / 2));
  const before = text.slice(0, middle).split("\n");
  const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  const range = { start: position, end: { line: position.line, character: position.character + 2 } };
  const times: number[] = [];
  for (let version = 2; version < 2 + WARM_UP + KEYSTROKES; version++) {
    const began = performance.now();
    await diagnostics(() => typed(connection, uri, version, range, version % 2 === 0 ? "11" : "12"));
    if (version >= 2 + WARM_UP) times.push(performance.now() - began);
    await new Promise((resolve) => setTimeout(resolve, 5)); // nobody types without pause
  }
  stop();
  return times;
}

function typed(connection: ProtocolConnection, uri: string, version: number, range: unknown, text: string) {
  return connection.sendNotification("textDocument/didChange", {
    textDocument: { uri, version },
    contentChanges: [{ range, text }],
  });
}

const bare = join(folder, "bare.cjs");
buildSync({
  entryPoints: [join(root, "tests/bench/bare-server.ts")],
  bundle: true,
  minify: true,
  platform: "node",
  format: "cjs",
  outfile: bare,
  logLevel: "error",
});
writeFileSync(join(folder, "schema.json"), JSON.stringify(SCHEMA));

const ours: Contender = {
  name: "drillwright",
  command: [join(root, "dist/extension/server/lsp.cjs"), "--stdio"],
  languageId: "drillwright",
  file: "bench.drill",
  text: planText,
};
const langium: Contender = { ...ours, name: "bare Langium server", command: [bare, "--stdio"] };
const json: Contender = {
  name: "JSON server with schema",
  command: [await jsonServer(), "--stdio"],
  languageId: "json",
  file: "bench.json",
  text: jsonText,
};

const contenders = [ours, langium, json];
const starts = new Map<Contender, number[]>();
for (let round = 0; round < STARTS; round++) {
  for (const contender of contenders) {
    const { time, stop } = await start(contender, contender.text(60));
    stop();
    starts.set(contender, [...(starts.get(contender) ?? []), time]);
  }
}
const timesOf = (contender: Contender) => starts.get(contender) ?? [];
for (const contender of contenders) {
  printFigure(`start → first diagnostics, 60 lines, ${contender.name}`, timesOf(contender));
}
printRatio("start, against the JSON server", timesOf(ours), timesOf(json));
printRatio("start, against bare Langium", timesOf(ours), timesOf(langium));

for (const lines of [60, 5_000]) {
  const times = new Map<Contender, number[]>();
  for (const contender of contenders) {
    times.set(contender, await keystrokes(contender, lines));
    printFigure(`keystroke → diagnostics, ${lines} lines, ${contender.name}`, times.get(contender) ?? []);
  }
  const of = (contender: Contender) => times.get(contender) ?? [];
  printRatio(
    `keystroke, ${lines} lines, against the JSON server`,
    of(ours),
    of(json),
    lines === 60 ? 2 : undefined,
  );
  printRatio(
    `keystroke, ${lines} lines, against bare Langium`,
    of(ours),
    of(langium),
    lines === 60 ? undefined : 0.65,
  );
}
rmSync(folder, { recursive: true, force: true });
process.exit(0); // the pipes of the servers that were stopped would keep the process alive
