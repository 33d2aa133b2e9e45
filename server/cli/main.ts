/** The process around the command line: the only place that reads its words, streams and signals, and sets its exit code. */
import { fstatSync, writeSync } from "node:fs";
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import { codeOf, isSystemError, reasonOf } from "../node/system-errors.ts";
import { faultText } from "./fault.ts";
import type { Io, Output } from "./io.ts";
import { runCli } from "./run.ts";

const words = process.argv.slice(2);

const io: Io = {
  stdout: outputOf(1),
  stderr: outputOf(2),
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

/**
 * An output that whoever reads it may close at any time: `drillwright check | head` is no mistake. A full disk is one of
 * others. Files and pipes are written to as they are: opening a stream takes longer than what most runs write.
 */
function outputOf(descriptor: 1 | 2): Output {
  const isTerminalLike = isDevice(descriptor);
  let stream: NodeJS.WriteStream | undefined;
  const opened = () => {
    stream ??= (descriptor === 1 ? process.stdout : process.stderr).on("error", fail);
    return stream;
  };
  const fail = (error: unknown) => {
    if (!isSystemError(error)) throw error;
    if (codeOf(error) === "EPIPE" || descriptor === 2) return; // of what standard error does not take, nobody can be told
    io.stderr.write(`drillwright: Standard output cannot be written: ${reasonOf(error)}.\n`);
    process.exit(EXIT_CODES.usage.code);
  };
  return {
    get isTTY() {
      return isTerminalLike && opened().isTTY === true;
    },
    write(text) {
      if (isTerminalLike) return void opened().write(text);
      try {
        writeWhole(descriptor, Buffer.from(text));
      } catch (error) {
        fail(error);
      }
    },
  };
}

/** Whether it is something like a terminal. */
function isDevice(descriptor: number): boolean {
  try {
    return fstatSync(descriptor).isCharacterDevice();
  } catch {
    return true; // there is none, which the stream knows to deal with
  }
}

function writeWhole(descriptor: number, bytes: Uint8Array): void {
  for (let written = 0; written < bytes.length; ) {
    try {
      written += writeSync(descriptor, bytes, written);
    } catch (error) {
      if (codeOf(error) !== "EAGAIN") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, FULL_PIPE_PAUSE);
    }
  }
}

/** Milliseconds until a pipe that is full is tried again, where its other end made it one that does not wait. */
const FULL_PIPE_PAUSE = 5;

async function readStdin(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return Buffer.concat(chunks);
}
