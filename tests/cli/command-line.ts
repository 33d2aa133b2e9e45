/** The command line without a process: folders to run it in, and what it writes. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { runCli } from "../../server/cli/run.ts";
import type { ExitCode } from "../../shared/exit-codes.ts";

/** Texts or bytes by path. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** A folder with these files, for the length of a test. */
export function folderWith(files: Files): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "drillwright-")));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

export interface Answer {
  readonly code: ExitCode;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Surroundings {
  /** What is piped in; nothing is, and somebody would have to type, where it is left out. */
  readonly stdin?: string | Uint8Array;
  readonly env?: Readonly<Record<string, string>>;
  /** Whether a person reads along. */
  readonly isTTY?: boolean;
}

/** What `drillwright` with these words answers in a folder with these files. */
export async function drillwright(
  place: Files | string,
  words: readonly string[],
  { stdin, env = {}, isTTY = false }: Surroundings = {},
): Promise<Answer> {
  const cwd = typeof place === "string" ? place : folderWith(place);
  const written = { stdout: "", stderr: "" };
  const output = (name: "stdout" | "stderr") => ({
    isTTY,
    write: (text: string) => {
      written[name] += text;
    },
  });
  const code = await runCli(words, {
    stdout: output("stdout"),
    stderr: output("stderr"),
    stdin: { isTTY: stdin === undefined, read: async () => Buffer.from(stdin ?? "") },
    cwd,
    env,
  });
  return { code, ...written };
}
