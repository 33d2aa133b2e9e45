/** What must not be left behind. */
import { spawn } from "node:child_process";
import { readdir } from "node:fs/promises";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, expect, test } from "vitest";
import { scratchFolder } from "./scratch.ts";
import { startServer } from "./server.ts";
import { ensureServer } from "./tools.ts";

const scratch = scratchFolder("server-test");

afterAll(() => scratch.remove());

test("a stopped server answers no more", async () => {
  const server = await startServer({ script: await ensureServer(), trusted: true });
  expect(await answers(server.authority)).toBe(true);
  await server.stop();
  expect(await answers(server.authority)).toBe(false);
});

test("a server whose user was killed goes, with its data", async () => {
  const script = await ensureServer();
  const program = `
    import { startServer } from ${JSON.stringify(import.meta.resolve("./server.ts"))};
    console.log((await startServer({ script: ${JSON.stringify(script)}, trusted: true })).authority);
    setInterval(() => {}, 1000);`;
  const user = spawn(process.execPath, ["--input-type=module", "--eval", program], {
    env: { ...process.env, TMPDIR: scratch.path, TEMP: scratch.path },
  });
  const authority = await new Promise<string>((resolve, reject) => {
    user.stdout.once("data", (line: Buffer) => resolve(line.toString().trim()));
    user.once("exit", () => reject(new Error("the server's user ended by itself")));
  });
  expect(await answers(authority)).toBe(true);
  expect(await readdir(scratch.path)).toHaveLength(1);
  user.removeAllListeners("exit");
  user.kill("SIGKILL");
  while ((await answers(authority)) || (await readdir(scratch.path)).length > 0) await pause(50);
});

async function answers(authority: string): Promise<boolean> {
  return fetch(`http://${authority}/version`).then(
    async (response) => (await response.text()).length > 0,
    () => false,
  );
}
