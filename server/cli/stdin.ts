/** Standard input in place of a file. */
import { UsageError } from "./command.ts";
import type { Io } from "./io.ts";

/** The operand that stands for standard input. */
export const STDIN = "-";

/** The option that commands which read standard input have. */
export const STDIN_FILENAME = {
  kind: "text",
  placeholder: "FILE",
  default: "stdin.drill",
  meaning:
    "The path that `-` is taken to have: messages name it, and the files it uses are looked for from there.",
} as const;

/** @throws UsageError where nothing is piped in. */
export async function readStdin({ stdin }: Io): Promise<Uint8Array> {
  if (stdin.isTTY) {
    throw new UsageError("`-` reads what is piped in, and nothing is. Pipe a plan in, or give its path.");
  }
  return stdin.read();
}
