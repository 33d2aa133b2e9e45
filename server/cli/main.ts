/** The process around the command line: the only place that reads its words, streams and signals, and sets its exit code. */
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import { isSystemError, reasonOf } from "../node/system-errors.ts";
import { faultText } from "./fault.ts";
import type { Io, Output } from "./io.ts";
import { runCli } from "./run.ts";

const words = process.argv.slice(2);

const io: Io = {
  stdout: outputOf(process.stdout),
  stderr: outputOf(process.stderr),
  stdin: {
    get isTTY() {
      return process.stdin.isTTY === true; // looking at it opens it, which takes time
    },
    read: readStdin,
  },
  cwd: process.cwd(),
  env: process.env,
};

process.on("SIGINT", () => process.exit(EXIT_CODES.interrupted.code));
process.on("uncaughtException", (error) => {
  io.stderr.write(faultText(error, words, process.env));
  process.exit(EXIT_CODES.fault.code);
});

void runCli(words, io).then((code) => {
  process.exitCode = code;
});

/** A stream that whoever reads it may close at any time: `drillwright check | head` is no mistake. A full disk is one of others. */
function outputOf(stream: NodeJS.WriteStream): Output {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") return;
    if (stream !== process.stdout || !isSystemError(error)) throw error;
    io.stderr.write(`drillwright: Standard output cannot be written: ${reasonOf(error)}.\n`);
    process.exit(EXIT_CODES.usage.code);
  });
  return { write: (text) => void stream.write(text), isTTY: stream.isTTY === true };
}

async function readStdin(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return Buffer.concat(chunks);
}
