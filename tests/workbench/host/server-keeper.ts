/**
 * Keeps the editor's server as long as its standard input is open, then ends it with all it has started, and
 * removes its data. Whatever becomes of the process at the other end of the pipe, nothing is left behind.
 *
 *     node server-keeper.ts <data folder> <server script> [argument …]
 */
import { spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";

const patience = 5_000;

const [dataFolder, ...command] = process.argv.slice(2);
const server = spawn(process.execPath, command, { stdio: ["ignore", "inherit", "inherit"] });
const serverEnded = new Promise<void>((resolve) => {
  server.once("exit", () => resolve());
  server.once("error", (error) => {
    console.error(error.message);
    resolve();
  });
});
const inputEnded = new Promise<void>((resolve) => {
  process.stdin.once("close", resolve).resume();
});

await Promise.race([serverEnded, inputEnded]);
server.kill("SIGTERM");
await Promise.race([serverEnded, pause(patience)]);
if (dataFolder) rmSync(dataFolder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
// The keeper leads a process group: with it go extension host, language server and whatever else hangs on.
if (process.platform !== "win32") process.kill(-process.pid, "SIGKILL");
else process.exit();
