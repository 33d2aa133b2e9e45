import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Metafile } from "esbuild";

/** The licences of the packages that went into a bundle, in full, as they ask for. Inputs are relative to `root`. */
export async function thirdPartyNotices({ inputs }: Metafile, root: string): Promise<string> {
  const folders = Object.keys(inputs).flatMap((file) => packageFolder(file) ?? []);
  const notices = await Promise.all([...new Set(folders)].sort().map((folder) => notice(join(root, folder))));
  return notices.join(`\n${"-".repeat(80)}\n\n`);
}

/** `node_modules/a/node_modules/b` for a file in it. */
function packageFolder(file: string): string | undefined {
  return /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0];
}

async function notice(folder: string): Promise<string> {
  const { name, version, license } = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
  const files = (await readdir(folder)).filter((file) => /^(licen[cs]e|notice)/i.test(file)).sort();
  const texts = await Promise.all(files.map((file) => readFile(join(folder, file), "utf8")));
  return `${[`${name} ${version} (${license})`, ...texts.map((text) => text.trim())].join("\n\n")}\n`;
}
