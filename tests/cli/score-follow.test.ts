/** `drillwright score --follow`, as a process from its sources. */
import { type ChildProcess, spawn } from "node:child_process";
import { appendFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, onTestFinished, test } from "vitest";
import { folderWith } from "./command-line.ts";
import { practice } from "./practice.ts";

const PROGRAM = fileURLToPath(new URL("../../server/cli/main.ts", import.meta.url));
const HEADER = "Block,Start,Carry,Smash\n";

/** Starts it in a folder, and waits for reports as JSON, one on a line. */
function start(folder: string): { child: ChildProcess; next: () => Promise<{ data: { shots: number }[] }> } {
  const child = spawn(process.execPath, [PROGRAM, "score", "--follow", "--format", "json"], { cwd: folder });
  onTestFinished(() => void child.kill("SIGKILL"));
  const lines: string[] = [];
  let rest = "";
  let said = "";
  let hasEnded = false;
  let wake = () => {};
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    said += text;
  });
  child.on("close", () => {
    hasEnded = true;
    wake();
  });
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    const parts = (rest + text).split("\n");
    rest = parts.pop() ?? "";
    lines.push(...parts);
    wake();
  });
  const next = async () => {
    while (lines.length === 0) {
      if (hasEnded) throw new Error(`It has ended: ${said}`);
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
    return JSON.parse(lines.shift() ?? "");
  };
  return { child, next };
}

test("scores again with every row that is written, takes no half row, and ends when it is interrupted", async () => {
  const folder = folderWith(practice(`${HEADER}Gate,1,155,1.35\n`));
  const table = join(folder, "data/monday.csv");
  const { child, next } = start(folder);
  const shots = async () => (await next()).data[0]?.shots;
  expect(await shots()).toBe(1);
  appendFileSync(table, "Gate,2,156,1.36\nGate,1,15");
  expect(await shots()).toBe(2);
  appendFileSync(table, "7,1.35\n");
  expect(await shots()).toBe(3);
  writeFileSync(table, `${HEADER}Gate,1,155,1.35\n`);
  expect(await shots()).toBe(1);
  child.kill("SIGINT");
  const code = await new Promise((resolve) => child.on("close", resolve));
  expect(code).toBe(130);
});

test("a last row without a line end counts when nothing more comes", async () => {
  const folder = folderWith(practice(`${HEADER}Gate,1,155,1.35\nGate,2,150,1.3`));
  const { next } = start(folder);
  expect((await next()).data[0]?.shots).toBe(1);
  expect((await next()).data[0]?.shots).toBe(2);
});
