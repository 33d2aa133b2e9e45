/**
 * The file that `drillwright` starts. All it does is to refuse a Node that is too old, in words that such a Node still
 * understands, and to run the program with the code that was compiled for its last run.
 */
import { join } from "node:path";
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import { requireCompiled } from "../node/compiled-code.ts";
import { setEngineFlag } from "../node/engine-flag.ts";

/** As `engines` in package.json says. */
const OLDEST_NODE = 22;

/**
 * What an import allocates would be judged by what it began with: the first rows of a table are all held, to understand
 * it, and a million rows after them would be put where the long-lived goes. It takes ten milliseconds at the start.
 */
const FOR_IMPORTS = "--no-allocation-site-pretenuring";

const node = Number.parseInt(process.versions.node, 10);
if (node < OLDEST_NODE) {
  console.error(`drillwright needs Node ${OLDEST_NODE} or newer, and this is Node ${process.version}.`);
  process.exitCode = EXIT_CODES.usage.code;
} else {
  const [command = ""] = process.argv.slice(2);
  if (command === "import") setEngineFlag(FOR_IMPORTS); // no other command waits for that
  requireCompiled(join(__dirname, "main.cjs"), /^[a-z]+$/.exec(command)?.[0] ?? "");
}
