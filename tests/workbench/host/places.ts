/** Where things lie. */
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

export const repository = fileURLToPath(new URL("../../../", import.meta.url));

/** Where tools are kept between runs; `DRILLWRIGHT_TOOLS` names another place. */
export function toolsFolder(): string {
  return resolve(repository, process.env.DRILLWRIGHT_TOOLS ?? join(".cache", "tools"));
}

/**
 * The folder of the extension under test, manifest and scripts in it, ready to run: the one
 * `DRILLWRIGHT_EXTENSION` names, else the one that the build stages.
 */
export function extensionFolder(): string {
  const folder = resolve(repository, process.env.DRILLWRIGHT_EXTENSION ?? join("dist", "extension"));
  if (existsSync(join(folder, "package.json"))) return folder;
  throw new Error(`There is no extension in ${folder}: it has no package.json. Build the extension first.`);
}
