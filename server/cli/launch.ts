/**
 * The file that `drillwright` starts. All it does is to refuse a Node that is too old, in words that such a Node still
 * understands, and to run the program with the code that was compiled for its last run.
 */
import { join } from "node:path";
import v8 from "node:v8";
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import { requireCompiled } from "../node/compiled-code.ts";

/** As `engines` in package.json says. */
const OLDEST_NODE = 22;

/** The newest Node known to have the flags below; one that lacks them would say so to whoever waits for a verdict. */
const NEWEST_TRIED = 26;

/**
 * Most runs are over before it would pay to optimise code, so only what was called ten times as often as usual is, and
 * before the young generation has grown step by step.
 */
const FOR_SHORT_RUNS = [
  "--invocation-count-for-maglev=4000",
  "--invocation-count-for-turbofan=30000",
  "--semi-space-growth-factor=16",
];

/**
 * What an import allocates would be judged by what it began with: the first rows of a table are all held, to understand
 * it, and a million rows after them would be put where the long-lived goes. It takes ten milliseconds at the start.
 */
const FOR_IMPORTS = ["--no-allocation-site-pretenuring"];

const node = Number.parseInt(process.versions.node, 10);
if (node < OLDEST_NODE) {
  console.error(`drillwright needs Node ${OLDEST_NODE} or newer, and this is Node ${process.version}.`);
  process.exitCode = EXIT_CODES.usage.code;
} else {
  const [command = ""] = process.argv.slice(2);
  // A server stays, so that there it pays soon.
  const flags = command === "lsp" ? [] : [...FOR_SHORT_RUNS, ...(command === "import" ? FOR_IMPORTS : [])];
  if (node <= NEWEST_TRIED) for (const flag of flags) v8.setFlagsFromString(flag);
  requireCompiled(join(__dirname, "main.cjs"), /^[a-z]+$/.exec(command)?.[0] ?? "");
}
