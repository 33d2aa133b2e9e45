/** The version of this tool. */
import { readFileSync } from "node:fs";

/** Put in when the tool is built; a program that runs from its sources looks it up. */
declare const DRILLWRIGHT_VERSION: string | undefined;

export function toolVersion(): string {
  if (typeof DRILLWRIGHT_VERSION === "string") return DRILLWRIGHT_VERSION;
  const manifest = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  return (JSON.parse(manifest) as { version: string }).version;
}
