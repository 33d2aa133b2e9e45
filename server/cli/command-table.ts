/** The only list of commands. */
import type { Command } from "./command.ts";
import { card } from "./commands/card.ts";
import { check } from "./commands/check.ts";
import { cohort } from "./commands/cohort.ts";
import { compile } from "./commands/compile.ts";
import { diff } from "./commands/diff.ts";
import { flight } from "./commands/flight.ts";
import { format } from "./commands/format.ts";
import { importTables } from "./commands/import.ts";
import { lsp } from "./commands/lsp.ts";
import { report } from "./commands/report.ts";
import { schema } from "./commands/schema.ts";
import { score } from "./commands/score.ts";
import { trend } from "./commands/trend.ts";

/** In the order in which help shows them. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  check,
  score,
  report,
  card,
  diff,
  trend,
  cohort,
  import: importTables,
  flight,
  format,
  compile,
  schema,
  lsp,
};
