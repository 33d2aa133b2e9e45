/** The example centre as the extension hands it out: plans, sessions and tables, with a front page of its own. */
import { readdir, readFile } from "node:fs/promises";
import { join, relative, sep } from "node:path";

/** What is made for people, not for those who maintain the examples. */
const ENDINGS = [".drill", ".csv"];

/** The text of each file by its path in the folder. */
export async function sampleFolder(root: string): Promise<Readonly<Record<string, string>>> {
  const own = await textsOf(join(root, "extension", "sample"), () => true);
  const examples = await textsOf(join(root, "examples"), (path) => ENDINGS.some((end) => path.endsWith(end)));
  return Object.fromEntries([...own, ...examples].sort(([a], [b]) => (a < b ? -1 : 1)));
}

async function textsOf(folder: string, isWanted: (path: string) => boolean): Promise<[string, string][]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  return Promise.all(
    files
      .filter(isWanted)
      .map(async (file) => [relative(folder, file).split(sep).join("/"), await readFile(file, "utf8")]),
  );
}
