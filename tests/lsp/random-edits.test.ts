/**
 * Thousands of random edits against the bundled server: it never falls over, and what it says in the end is what a server
 * says that has never seen anything else.
 */
import { afterEach, expect, test } from "vitest";
import type { Diagnostic, Position } from "vscode-languageserver";
import { score } from "../../shared/protocol/score.ts";
import { DRILLS, PLANS } from "../editor/reuse.ts";
import { randomFrom } from "../support/generator.ts";
import { LspClient } from "../support/lsp-client.ts";
import { SAMPLE } from "../support/sample.ts";

const FILES: Readonly<Record<string, string>> = {
  ...SAMPLE,
  "reuse/plans.drill": PLANS,
  "reuse/drills.drill": DRILLS,
};
const PATHS = Object.keys(FILES).filter((path) => path.endsWith(".drill"));
const EDITS = 2500;

/** Pieces that open what others close, begin what others end, or turn one word into another. */
const PIECES = [
  ...'{ } " ( ) , = ± ° % \n \t / 7 - ; é 🏌',
  '"Gate"',
  "/*",
  "*/",
  "//",
  "use ",
  'use "./drills"\n',
  "block ",
  "drill ",
  "target ",
  "at least ",
  "within ±2° ",
  "carry ",
  "plan",
  "}\n}\n",
  " of ",
  "with width = 2°",
];

const clients: LspClient[] = [];
afterEach(async () => {
  await Promise.all(clients.splice(0).map((client) => client.stop()));
});

async function started(files: Readonly<Record<string, string>>): Promise<LspClient> {
  const client = await LspClient.start({ files });
  clients.push(client);
  return client;
}

/** What is said about each file, without what only a machine can tell apart. */
async function said(client: LspClient, texts: ReadonlyMap<string, string>) {
  const found: Record<string, readonly string[]> = {};
  for (const path of texts.keys()) {
    found[path] = (await client.diagnosticsOf(path)).map(line).sort();
  }
  return found;
}

function line({ range, code, message }: Diagnostic): string {
  return `${range.start.line}:${range.start.character} ${code} ${typeof message === "string" ? message : ""}`;
}

/** Waits until all is said about the texts as they stand: that is when a score is answered. */
async function settled(client: LspClient): Promise<void> {
  const [path = ""] = PATHS;
  await client.request(score.method, { file: client.uri(path) });
  for (const each of PATHS) {
    expect(client.published(each).at(-1)?.version, each).toBe(client.versionOf(each));
  }
}

function positionAt(text: string, offset: number): Position {
  const lines = text.slice(0, offset).split("\n");
  return { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
}

const QUESTIONS = [
  "textDocument/hover",
  "textDocument/completion",
  "textDocument/documentSymbol",
  "textDocument/semanticTokens/full",
  "textDocument/formatting",
  "textDocument/foldingRange",
  "textDocument/signatureHelp",
  "textDocument/definition",
  "textDocument/references",
];

test("random edits end where a fresh server begins", { timeout: 240_000 }, async () => {
  const client = await started(FILES);
  const texts = new Map(PATHS.map((path) => [path, FILES[path] ?? ""]));
  for (const [path, text] of texts) await client.open(path, text);
  const random = randomFrom(20261126);
  const pick = <T>(items: readonly T[]) => items[Math.floor(random() * items.length)] as T;
  const answers: Promise<unknown>[] = [];

  for (let edit = 1; edit <= EDITS; edit++) {
    const path = pick(PATHS);
    const text = texts.get(path) ?? "";
    const from = Math.floor(random() * (text.length + 1));
    const to = Math.min(text.length, from + Math.floor(random() * (random() < 0.1 ? 80 : 6)));
    // Every now and then a file is put right, or becomes what another one is.
    const whole = random() < 0.02 ? (FILES[random() < 0.8 ? path : pick(PATHS)] ?? "") : undefined;
    const piece = pick(PIECES);
    const range = { start: positionAt(text, from), end: positionAt(text, to) };
    texts.set(path, whole ?? text.slice(0, from) + piece + text.slice(to));
    if (whole !== undefined) await client.change(path, whole);
    else await client.change(path, piece, range);
    if (random() < 0.1) {
      const question = client.request(pick(QUESTIONS), {
        textDocument: { uri: client.uri(path) },
        position: range.start,
        options: { tabSize: 2, insertSpaces: true },
        context: { includeDeclaration: true, triggerKind: 1, isRetrigger: false },
      });
      // What was asked of a text that is gone may be refused, but not left without an answer.
      answers.push(
        question.catch((error: { code?: number }) => expect([-32800, -32801, -32803]).toContain(error.code)),
      );
    }
    if (edit % 100 === 0) await Promise.all(answers.splice(0));
  }
  await Promise.all(answers);

  for (const state of ["as the edits left them", "after the last repair"]) {
    if (state === "after the last repair") {
      for (const path of PATHS) {
        texts.set(path, FILES[path] ?? "");
        await client.change(path, FILES[path] ?? "");
      }
    }
    await settled(client);
    const fresh = await started({ ...FILES, ...Object.fromEntries(texts) });
    for (const [path, text] of texts) await fresh.open(path, text);
    await settled(fresh);
    expect(await said(client, texts), state).toEqual(await said(fresh, texts));
  }
});
