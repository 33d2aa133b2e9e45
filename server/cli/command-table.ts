/** The only list of commands. */
import type { Command } from "./command.ts";
import { check } from "./commands/check.ts";
import { compile } from "./commands/compile.ts";
import { format } from "./commands/format.ts";
import { importTables } from "./commands/import.ts";
import { lsp } from "./commands/lsp.ts";
import { schema } from "./commands/schema.ts";
import { score } from "./commands/score.ts";

/** In the order in which help shows them. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  check,
  score,
  import: importTables,
  format,
  compile,
  schema,
  lsp,
};
