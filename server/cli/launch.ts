/**
 * The file that `drillwright` starts. All it does is to refuse a Node that is too old, in words that such a Node still
 * understands, and to let Node keep compiled code between starts, which only helps files that are loaded afterwards.
 */
import module from "node:module";
import { EXIT_CODES } from "../../shared/exit-codes.ts";

/** As `engines` in package.json says. */
const OLDEST_NODE = 22;

if (Number.parseInt(process.versions.node, 10) < OLDEST_NODE) {
  console.error(`drillwright needs Node ${OLDEST_NODE} or newer, and this is Node ${process.version}.`);
  process.exitCode = EXIT_CODES.usage.code;
} else {
  module.enableCompileCache();
  require("./main.ts"); // a file of its own in the bundle
}
