/** What is said when the tool itself fails. */
import { toolVersion } from "../node/version.ts";
import type { Io } from "./io.ts";

/** The message, how to report it, and with `--debug` or DRILLWRIGHT_DEBUG where in the program it happened. */
export function faultText(error: unknown, words: readonly string[], env: Io["env"]): string {
  const { message, stack } = error instanceof Error ? error : new Error(String(error));
  const lines = [
    `drillwright: something went wrong that is our fault, not yours: ${message.split("\n", 1)[0]}`,
  ];
  if (words.includes("--debug") || (env.DRILLWRIGHT_DEBUG ?? "") !== "") {
    lines.push(`drillwright ${toolVersion()}, Node ${process.version}, ${process.platform}`, stack ?? "");
  } else {
    lines.push("Please report it to the project, with what the same command says when --debug is added.");
  }
  return `${lines.join("\n")}\n`;
}
