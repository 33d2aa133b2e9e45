/** What is no plan and no table, given to the bundled server: it answers, and goes on as if nothing had been. */
import { afterEach, describe, expect, test } from "vitest";
import type { Diagnostic, Hover, Position } from "vscode-languageserver";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  for 7-iron
  block "Start line" test {
    4 shots
    target start-direction within ±2°
    success at least 3 of 4 shots on target
  }
}
`;
const SESSION = `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Start" is start-direction in ° positive right
}
session "First try" { plan "Gate" player "P-01" date 2026-10-12 data "shots.csv" from "Table" }
`;
const DATA = "Start\n1.0\n-3.5\n0.5\n2.5\n";

/** Numbers that look random and are the same every time. */
function* noise(seed: number): Generator<number, never> {
  for (let state = seed; ; yield state >>> 8) state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
}

const numbers = noise(7);
const bytes = Uint8Array.from({ length: 20_000 }, () => numbers.next().value % 256);

const GARBAGE: readonly (readonly [name: string, content: Uint8Array | string])[] = [
  ["random bytes", bytes],
  ["a file cut in the middle of a letter", Buffer.from(PLAN).subarray(0, Buffer.from(PLAN).indexOf("±") + 1)],
  ["a file cut in the middle of a statement", PLAN.slice(0, PLAN.indexOf("least"))],
  ["a line of a million letters", "x".repeat(1_000_000 - 1)],
  ["a hundred thousand nested braces", `plan "Gate" ${"{".repeat(100_000)}`],
  ["a hundred thousand nested brackets", `metric pace is speed {\n  formula ${"(".repeat(100_000)}carry\n}`],
  ["nothing but zero bytes", new Uint8Array(100_000)],
];

const asText = (content: Uint8Array | string) =>
  typeof content === "string" ? content : new TextDecoder().decode(content);

let client: LspClient;
afterEach(() => client.stop());

async function start(files: Readonly<Record<string, string | Uint8Array>>): Promise<void> {
  client = await LspClient.start({ files: files as Readonly<Record<string, string>> });
}

/** What is shown over `target`, in a plan that is in order. */
async function hoverOverTarget(path: string): Promise<Hover | null> {
  const textDocument = { uri: client.uri(path) };
  return client.request("textDocument/hover", { textDocument, position: { line: 4, character: 6 } });
}

const errors = (found: readonly Diagnostic[]) => found.filter(({ severity }) => severity === 1);

describe.each(GARBAGE)("%s", (_, content) => {
  test("typed as a plan", async () => {
    await start({ "plan.drill": PLAN });
    await client.open("plan.drill", PLAN);
    await client.open("garbage.drill", asText(content));
    const found = await client.diagnosticsOf("garbage.drill", (all) => errors(all).length > 0);
    for (const { message } of errors(found)) expect(String(message).length).toBeLessThan(500);
    expect(await hoverOverTarget("plan.drill")).not.toBeNull();
    await client.change("garbage.drill", "");
    await client.diagnosticsOf("garbage.drill", (all) => all.length === 0);
  });

  test("found in the folder", async () => {
    await start({ "plan.drill": PLAN, "garbage.drill": content });
    await client.open("plan.drill", PLAN);
    await client.diagnosticsOf("plan.drill");
    expect(await hoverOverTarget("plan.drill")).not.toBeNull();
  });

  test("as the table of a session", async () => {
    await start({ "plan.drill": PLAN, "session.drill": SESSION, "shots.csv": content });
    await client.open("session.drill", SESSION);
    await client.open("plan.drill", PLAN);
    const isAboutData = ({ source }: Diagnostic) => source === "drillwright data";
    const found = await client.diagnosticsOf("session.drill", (all) => all.some(isAboutData));
    expect(found.filter(isAboutData)).toHaveLength(1);
    await client.write("shots.csv", DATA);
    await client.diagnosticsOf("session.drill", (all) => !all.some(isAboutData));
    expect(await hoverOverTarget("plan.drill")).not.toBeNull();
  });
});

describe("hundreds of edits", () => {
  const FILES = { "plan.drill": PLAN, "session.drill": SESSION };
  const WORDS = [
    "{",
    "}",
    '"',
    " at least ",
    "tagret ",
    "10 shots\n",
    "/*",
    "*/",
    "°",
    "\n",
    "9",
    "(",
    "use ",
  ];

  /** One edit: a stretch of the text, and what stands there afterwards. */
  function editOf(text: string, random: Iterator<number, never>) {
    const number = (below: number) => random.next().value % below;
    const from = number(text.length + 1);
    const length = number(3) === 0 ? number(30) : number(2);
    const word = number(4) === 0 ? "" : (WORDS[number(WORDS.length)] ?? "");
    return { from, to: Math.min(text.length, from + length), word };
  }

  function positionAt(text: string, offset: number): Position {
    const before = text.slice(0, offset).split("\n");
    return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  }

  const described = (found: readonly Diagnostic[], source?: string) =>
    found
      .filter((one) => source === undefined || one.source === source)
      .map(({ range, message }) => `${range.start.line}:${range.start.character} ${message}`)
      .sort();

  test.each([1, 2, 3, 4])("leave the server knowing what a new one would find, seed %i", async (seed) => {
    const random = noise(seed);
    await start({ ...FILES, "shots.csv": DATA });
    const texts: Record<string, string> = { ...FILES };
    for (const [path, text] of Object.entries(texts)) await client.open(path, text);
    for (let round = 0; round < 150; round++) {
      const path = random.next().value % 2 === 0 ? "plan.drill" : "session.drill";
      const text = texts[path] ?? "";
      const { from, to, word } = editOf(text, random);
      await client.change(path, word, { start: positionAt(text, from), end: positionAt(text, to) });
      texts[path] = text.slice(0, from) + word + text.slice(to);
      if (round % 10 === 0) await hoverOverTarget("plan.drill");
    }
    await expectAsNew(texts, "drillwright");
    for (const [path, text] of Object.entries(FILES)) await client.change(path, text);
    await expectAsNew(FILES);
    expect(await hoverOverTarget("plan.drill")).not.toBeNull();
  });

  /** Waits until the server has found what a new one finds in these texts; of one source, if only that is sure to come. */
  async function expectAsNew(texts: Readonly<Record<string, string>>, source?: string): Promise<void> {
    const fresh = await LspClient.start({ files: { ...texts, "shots.csv": DATA } });
    try {
      for (const [path, text] of Object.entries(texts)) await fresh.open(path, text);
      for (const path of Object.keys(texts)) {
        const isComplete = (all: readonly Diagnostic[]) =>
          source !== undefined || all.some((one) => one.source === "drillwright score");
        const expected = described(await fresh.diagnosticsOf(path, isComplete), source);
        const isAsNew = (all: readonly Diagnostic[]) =>
          JSON.stringify(described(all, source)) === JSON.stringify(expected);
        expect(described(await client.diagnosticsOf(path, isAsNew), source)).toEqual(expected);
      }
    } finally {
      await fresh.stop();
    }
  }
});
