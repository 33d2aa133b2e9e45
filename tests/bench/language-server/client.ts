/** A client that asks as an editor does, and takes the time. */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import {
  createProtocolConnection,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import type { Contender } from "./contenders.ts";
import { SCHEMA } from "./texts.ts";

const KEYSTROKES = 60;
const WARM_UP = 15;
const PAUSE = 5; // milliseconds: nobody types without
const SETTLED = 2_000; // milliseconds: diagnostics still on their way would be taken for those of the first key

/** A server with one file open. */
export interface Session {
  /** Milliseconds from the start of the process to the first diagnostics of the file. */
  readonly time: number;
  readonly connection: ProtocolConnection;
  readonly uri: string;
  readonly text: string;
  /** Makes a change and waits for the diagnostics of the file. */
  diagnostics(change: () => Promise<void>): Promise<void>;
  /** Milliseconds from the start of the process to when so many files of the workspace had diagnostics. */
  allPublished(files: number): Promise<number>;
  /** The most memory that the process has taken, in megabytes; not a number where the system does not tell. */
  peakMemory(): number;
  /** As an editor does that is closed: what a server keeps for its next start is kept. */
  stop(): Promise<void>;
}

/** Starts a server, opens a file and waits for its diagnostics. @param workspace a folder of files that are not opened. */
export async function start(
  contender: Contender,
  file: string,
  text: string,
  workspace?: string,
): Promise<Session> {
  const started = performance.now();
  const server = spawn(process.execPath, [...contender.command], { stdio: ["pipe", "pipe", "ignore"] });
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  const uri = pathToFileURL(file).toString();
  const published = new Map<string, number>();
  let waiting: (() => void) | undefined;
  let counting: (() => void) | undefined;
  connection.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) => items.map(() => ({})));
  connection.onRequest("client/registerCapability", () => null);
  connection.onNotification("textDocument/publishDiagnostics", (params: { uri: string }) => {
    if (params.uri.startsWith("file:") && !published.has(params.uri)) {
      published.set(params.uri, performance.now() - started);
    }
    counting?.();
    if (params.uri === uri) waiting?.();
  });
  connection.listen();
  const folders =
    workspace === undefined ? null : [{ name: "bench", uri: pathToFileURL(workspace).toString() }];
  const { capabilities } = await connection.sendRequest<{ capabilities: { diagnosticProvider?: unknown } }>(
    "initialize",
    {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: folders,
      initializationOptions: { provideFormatter: true, handledSchemaProtocols: ["file"] },
      capabilities: {
        textDocument: { publishDiagnostics: {}, diagnostic: {} },
        workspace: { workspaceFolders: true },
      },
    },
  );
  const pulls = capabilities.diagnosticProvider !== undefined;
  const diagnostics = async (change: () => Promise<void>) => {
    const done = new Promise<void>((resolve) => {
      waiting = resolve;
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
  return {
    time: performance.now() - started,
    connection,
    uri,
    text,
    diagnostics,
    allPublished: (files) =>
      new Promise((resolve) => {
        counting = () => {
          if (published.size >= files) resolve(Math.max(...published.values()));
        };
        counting();
      }),
    peakMemory: () => {
      try {
        const [, kilobytes] = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${server.pid}/status`, "utf8")) ?? [];
        return Number(kilobytes) / 1024;
      } catch {
        return Number.NaN;
      }
    },
    stop: async () => {
      const ended = new Promise((resolve) => server.once("exit", resolve));
      await connection.sendRequest("shutdown");
      await connection.sendNotification("exit");
      await ended;
      connection.dispose();
    },
  };
}

/** The place of a word in the middle of the text, for a change to replace. */
export function middleOf(text: string, word: string) {
  const offset = text.indexOf(word, Math.floor(text.length / 2));
  if (offset < 0) throw new Error(`There is no ${word} in the second half of the text.`);
  const before = text.slice(0, offset).split("\n");
  const start = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  return { start, end: { line: start.line, character: start.character + word.length } };
}

/** From a digit that is typed in the middle to the diagnostics, in milliseconds. */
export async function keystrokes(session: Session): Promise<number[]> {
  await pause(SETTLED);
  const range = middleOf(session.text, "12");
  const times: number[] = [];
  for (let key = 0; key < WARM_UP + KEYSTROKES; key++) {
    const began = performance.now();
    await session.diagnostics(() => typed(session, range, key % 2 === 0 ? "11" : "12"));
    if (key >= WARM_UP) times.push(performance.now() - began);
    await pause();
  }
  return times;
}

/** From a letter that is typed to the list of what may stand there. Letters at the front of a name, as it is being written. */
export async function completions(session: Session, word: string, times = 30): Promise<number[]> {
  const { start, end } = middleOf(session.text, word);
  const letters = (count: number) => ({ line: start.line, character: start.character + count });
  await session.diagnostics(() => typed(session, { start, end }, word.slice(0, 2)));
  const result: number[] = [];
  for (let key = 0; key < times; key++) {
    const long = key % 2 === 1;
    await pause();
    const began = performance.now();
    const range = { start: letters(1), end: letters(long ? 1 : 2) };
    await typed(session, range, long ? (word[1] ?? "") : "");
    const position = letters(long ? 2 : 1);
    const answer = await session.connection.sendRequest<{ items?: unknown[] } | unknown[]>(
      "textDocument/completion",
      { textDocument: { uri: session.uri }, position },
    );
    const items = Array.isArray(answer) ? answer : (answer?.items ?? []);
    if (items.length === 0) throw new Error("Nothing was offered.");
    if (key >= 6) result.push(performance.now() - began);
  }
  return result;
}

/** From the question for the layout of the whole file to the edits. */
export async function formattings(session: Session, times = 15): Promise<number[]> {
  const result: number[] = [];
  for (let round = 0; round < times; round++) {
    const began = performance.now();
    const edits = await session.connection.sendRequest<unknown[]>("textDocument/formatting", {
      textDocument: { uri: session.uri },
      options: { tabSize: 2, insertSpaces: true },
    });
    if ((edits ?? []).length === 0) throw new Error("Nothing was laid out.");
    if (round >= 3) result.push(performance.now() - began);
  }
  return result;
}

let version = 1;

function typed({ connection, uri }: Session, range: unknown, text: string): Promise<void> {
  version++;
  return connection.sendNotification("textDocument/didChange", {
    textDocument: { uri, version },
    contentChanges: [{ range, text }],
  });
}

function pause(milliseconds = PAUSE): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
