/**
 * The file that `drillwright` starts. All it does is to refuse a Node that is too old, in words that such a Node still
 * understands, and to run the program with the code that was compiled for its last run.
 */
import { join } from "node:path";
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import { requireCompiled } from "../node/compiled-code.ts";

/** As `engines` in package.json says. */
const OLDEST_NODE = 22;

/** The newest Node known to have the flag below; one that lacks it would say so to whoever waits for a verdict. */
const NEWEST_TRIED = 26;

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
  if (command === "import" && node <= NEWEST_TRIED) {
    process.getBuiltinModule?.("node:v8").setFlagsFromString(FOR_IMPORTS); // no other command waits for it to be loaded
  }
  requireCompiled(join(__dirname, "main.cjs"), /^[a-z]+$/.exec(command)?.[0] ?? "");
}
