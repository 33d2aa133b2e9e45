/** However files are written, renamed, deleted, opened and closed: in the end the editor says what the command line says. */
import { execFileSync } from "node:child_process";
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, test } from "vitest";
import type { Diagnostic } from "vscode-languageserver";
import { type Project, project } from "../../shared/protocol/project.ts";
import { LspClient } from "../support/lsp-client.ts";

const COMMAND_LINE = fileURLToPath(new URL("../../dist/cli/drillwright.cjs", import.meta.url));
const SEVERITIES = ["error", "warning", "information", "hint"];

let client: LspClient;
afterEach(() => client.stop());

interface CheckReport {
  readonly files: readonly string[];
  readonly findings: readonly {
    readonly file: string;
    readonly code: string;
    readonly severity: string;
    readonly range: { readonly start: { readonly line: number; readonly character: number } };
  }[];
}

/** What a program that has just been started says of the folder. */
function cold(): CheckReport {
  try {
    return JSON.parse(run());
  } catch (error) {
    // Errors in plans are told by the exit code as well.
    return JSON.parse((error as { stdout: string }).stdout);
  }
}

function run(): string {
  return execFileSync(process.execPath, [COMMAND_LINE, "check", "--format", "json"], {
    cwd: client.folder,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });
}

const place = (file: string, line: number, character: number, severity: string, code: string) =>
  `${file}:${line}:${character} ${severity} ${code}`;

function coldFindings(): string[] {
  return cold()
    .findings.map(({ file, code, severity, range: { start } }) =>
      place(file, start.line, start.character, severity, code),
    )
    .sort();
}

/** What the editor was told last of every file. */
function told(): string[] {
  const byFile = new Map<string, readonly Diagnostic[]>();
  for (const { method, params } of client.notifications) {
    if (method !== "textDocument/publishDiagnostics") continue;
    const { uri, diagnostics } = params as { uri: string; diagnostics: Diagnostic[] };
    byFile.set(uri, diagnostics);
  }
  return [...byFile]
    .flatMap(([uri, all]) =>
      all.map(({ range: { start }, severity, code }) =>
        place(
          decodeURIComponent(uri.slice(client.uri("").length)).replace(/^\//, ""),
          start.line,
          start.character,
          SEVERITIES[(severity ?? 1) - 1] ?? "",
          String(code),
        ),
      ),
    )
    .sort();
}

async function untilTheSame(): Promise<void> {
  const wanted = coldFindings();
  await client.until(
    () => JSON.stringify(told()) === JSON.stringify(wanted),
    () =>
      `in the editor ${JSON.stringify(told(), null, 1)}, and from the command line ${JSON.stringify(wanted, null, 1)}`,
  );
}

const watched = (changes: readonly { path: string; type: 1 | 2 | 3 }[]) =>
  client.connection.sendNotification("workspace/didChangeWatchedFiles", {
    changes: changes.map(({ path, type }) => ({ uri: client.uri(path), type })),
  });

async function remove(path: string): Promise<void> {
  rmSync(join(client.folder, path), { recursive: true });
  await watched([{ path, type: 3 }]);
}

async function rename(from: string, to: string): Promise<void> {
  renameSync(join(client.folder, from), join(client.folder, to));
  await watched([
    { path: from, type: 3 },
    { path: to, type: 1 },
  ]);
}

const CLUBS = "club chipper\n";
const PLAN = 'use "./words"\nplan "Gate" {\n  for chipper\n  block "One" test { 10 shots }\n}\n';
const SOUND = { "words.drill": CLUBS, "plan.drill": PLAN };

describe("step by step", () => {
  test("a used file goes and comes back", async () => {
    client = await LspClient.start({ files: SOUND });
    await client.open("plan.drill", PLAN);
    await untilTheSame();
    await remove("words.drill");
    await untilTheSame();
    expect(told().join()).toContain("used-file-must-exist");
    await client.write("words.drill", CLUBS);
    await untilTheSame();
    expect(told().join()).not.toContain("used-file-must-exist");
  });

  test("a file with mistakes is renamed, and deleted", async () => {
    client = await LspClient.start({ files: { ...SOUND, "bad.drill": 'plan "Bad" { for nothing }\n' } });
    await client.open("plan.drill", PLAN);
    await untilTheSame();
    await rename("bad.drill", "worse.drill");
    await untilTheSame();
    expect(told().join()).toContain("worse.drill:0");
    expect(told().join()).not.toContain("bad.drill:0");
    await remove("worse.drill");
    await untilTheSame();
  });

  test("a file has come and gone by the time that this is told, and one has gone and come", async () => {
    const bad = 'plan "Bad" { for nothing }\n';
    client = await LspClient.start({ files: { ...SOUND, "gone.drill": bad, "back.drill": bad } });
    await client.open("plan.drill", PLAN);
    await untilTheSame();
    rmSync(join(client.folder, "gone.drill"));
    await watched([
      { path: "gone.drill", type: 2 },
      { path: "back.drill", type: 3 },
      { path: "gone.drill", type: 3 },
      { path: "back.drill", type: 1 },
    ]);
    await untilTheSame();
    expect(told().join()).toContain("back.drill:0");
  });

  test.each(["bad.drill", "folder"])(
    "a file stays what its editor shows when %s is deleted",
    async (deleted) => {
      const path = deleted === "folder" ? "folder/bad.drill" : deleted;
      const bad = 'plan "Bad" { for nothing }\n';
      client = await LspClient.start({ files: { ...SOUND, [path]: bad } });
      await client.open(path, bad);
      await client.diagnosticsOf(path, (all) => all.length > 0);
      await remove(deleted);
      const hover = await client.connection.sendRequest("textDocument/hover", {
        textDocument: { uri: client.uri(path) },
        position: { line: 0, character: 1 },
      });
      expect(hover).not.toBeNull();
      expect(told().join()).toContain(`${path}:0`);
      await client.close(path);
      await untilTheSame();
    },
  );

  test("what was typed and never saved is forgotten when the file is closed", async () => {
    client = await LspClient.start({ files: SOUND });
    await client.open("words.drill", CLUBS);
    await client.open("plan.drill", PLAN);
    await client.change("words.drill", "club jigger\n");
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ severity }) => severity === 1));
    await client.close("words.drill");
    await untilTheSame();
  });

  test("a whole folder is moved, as when another branch is checked out", async () => {
    client = await LspClient.start({
      files: {
        "a/words.drill": CLUBS,
        "a/plan.drill": PLAN,
        "b/plan.drill": PLAN,
        "b/words.drill": "club jigger\n",
      },
    });
    await client.open("a/plan.drill", PLAN);
    await client.close("a/plan.drill");
    await untilTheSame();
    await rename("a", "c");
    await untilTheSame();
    await remove("b");
    await untilTheSame();
  });
});

test("both look for files in the same places", async () => {
  const plan = 'plan "Here" { for nothing }\n';
  client = await LspClient.start({
    files: {
      "plan.drill": plan,
      "deep/er/plan.drill": plan,
      "out/plan.drill": plan,
      "node_modules/a/plan.drill": plan,
      "dist/plan.drill": plan,
      ".git/plan.drill": plan,
      ".hidden.drill": plan,
      "data/shots.csv": "Carry\n150\n",
    },
  });
  const { plans } = await client.request<Project>(project.method, null);
  const read = plans.map(({ file }) => file.slice(client.uri("").length).replace(/^\//, "")).sort();
  expect(read).toEqual([...cold().files].sort());
  expect(read).toEqual(["deep/er/plan.drill", "out/plan.drill", "plan.drill"]);
});

describe("files that nobody looks for", () => {
  test("are read where another file uses them, and follow what becomes of them", async () => {
    const plan = 'use "./dist/words"\nuse "./.more/words"\nplan "Gate" { for chipper, jigger }\n';
    client = await LspClient.start({
      files: {
        "plan.drill": plan,
        "dist/words.drill": CLUBS,
        "dist/unused.drill": 'plan "Bad" { for nothing }\n',
      },
    });
    await client.open("plan.drill", plan);
    await untilTheSame();
    expect(told().join()).toContain("used-file-must-exist");
    await client.write(".more/words.drill", "club jigger\n");
    await untilTheSame();
    expect(told().join()).not.toContain("must");
    await client.write("dist/unused.drill", 'plan "Worse" { for nothing }\n');
    await client.write("dist/words.drill", "club putting-iron\n");
    await untilTheSame();
    expect(told().join()).toContain("name-must-be-known");
    await remove("dist");
    await untilTheSame();
    expect(told().join()).toContain("used-file-must-exist");
  });
});

test("files that cannot be read say so as from the command line, and the log says why each was left out", async () => {
  client = await LspClient.start({ files: SOUND });
  const late = (name: string) => join(client.folder, "late", name);
  mkdirSync(late(""));
  writeFileSync(late("latin.drill"), Buffer.from('plan "Übung" {}\n', "latin1"));
  writeFileSync(late("binary.drill"), "plan\0");
  writeFileSync(late("long.drill"), "#".repeat(1_000_001));
  writeFileSync(late(".hidden.drill"), CLUBS);
  symlinkSync(join("..", "plan.drill"), late("link.drill"));
  symlinkSync("nowhere.drill", late("broken.drill"));
  await watched([{ path: "late", type: 1 }]);
  await client.until(
    () => told().length >= 3,
    () => JSON.stringify(told()),
  );
  await untilTheSame();
  expect(told().join()).toContain("late/latin.drill:0:0 error unreadable");
  const log = client.notifications
    .filter(({ method }) => method === "window/logMessage")
    .map(({ params }) => (params as { message: string }).message)
    .filter((line) => line.startsWith("Not read: "));
  expect(log.sort()).toEqual([
    "Not read: late/.hidden.drill: Its name begins with a dot. Rename it to have it read.",
    "Not read: late/binary.drill: This file is no text. Was something else saved under its name?",
    "Not read: late/broken.drill: It is a link that leads to no file. Mend the link, or take it out.",
    "Not read: late/latin.drill: This file is not written in UTF-8. Save it again with that encoding, if it is a plan.",
    "Not read: late/long.drill: This file has 1000001 characters; a plan file may have 1000000. Split it, or leave it out of the folder.",
  ]);
  await client.write("late/latin.drill", 'plan "Übung" {}\n');
  await untilTheSame();
  expect(told().join()).not.toContain("late/latin.drill:0:0 error unreadable");
});

describe("at random", () => {
  /** Numbers that look random and are the same every time. */
  function* noise(seed: number): Generator<number, never> {
    for (let state = seed; ; yield state >>> 8) state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  }

  const TEXTS = [
    CLUBS,
    "club jigger\n",
    PLAN,
    'use "./plan"\nuse "./words"\nplan "More" {\n  for jigger\n  block "One" test { 10 shots success at least 12 of 10 shots with carry at least 5 yd }\n}\n',
    'plan "Gate" {',
    "",
  ];
  const PATHS = ["words.drill", "plan.drill", "more.drill"];

  test.each([1, 2, 3, 4, 5, 6])("seed %i", async (seed) => {
    client = await LspClient.start({ files: SOUND });
    const numbers = noise(seed);
    const pick = <T>(all: readonly T[]): T => all[numbers.next().value % all.length] as T;
    const open = new Set<string>();
    const onDisk = (path: string) => readdirSync(client.folder).includes(path);
    const steps: Record<string, (path: string) => Promise<void>> = {
      write: (path) => client.write(path, pick(TEXTS)),
      remove: async (path) => {
        if (onDisk(path)) await remove(path);
      },
      rename: async (path) => {
        const to = pick(PATHS);
        if (onDisk(path) && to !== path) await rename(path, to);
      },
      open: async (path) => {
        if (open.has(path) || !onDisk(path)) return;
        open.add(path);
        await client.open(path, readFileSync(join(client.folder, path), "utf8"));
      },
      change: async (path) => {
        if (open.has(path)) await client.change(path, pick(TEXTS));
      },
      close: async (path) => {
        if (open.delete(path)) await client.close(path);
      },
    };
    const asked: Promise<unknown>[] = [];
    const ask = (path: string) => {
      const textDocument = { uri: client.uri(path) };
      const position = { line: 0, character: 2 };
      const range = { start: position, end: position };
      const ask = (method: string, params: object) =>
        asked.push(client.connection.sendRequest(`textDocument/${method}`, { textDocument, ...params }));
      ask("hover", { position });
      ask("documentSymbol", {});
      ask("codeLens", {});
      ask("inlayHint", { range });
      ask("codeAction", { range, context: { diagnostics: [] } });
    };
    for (let step = 0; step < 40; step++) {
      await steps[pick(Object.keys(steps))]?.(pick(PATHS));
      for (const path of open) ask(path);
    }
    // What is overtaken may be refused; nothing may go without an answer.
    await Promise.allSettled(asked);
    for (const path of open) await client.close(path);
    if (!PATHS.some(onDisk)) await client.write("words.drill", CLUBS);
    await untilTheSame();
  });
});
