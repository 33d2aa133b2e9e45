import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Metafile } from "esbuild";

/**
 * The licences of the packages that went into a bundle, in full, as they ask for; packages under the very same text
 * stand together over it. Inputs are relative to `root`.
 */
export async function thirdPartyNotices({ inputs }: Pick<Metafile, "inputs">, root: string): Promise<string> {
  const folders = Object.keys(inputs).flatMap((file) => packageFolder(file) ?? []);
  const packages = new Map<string, string[]>();
  for (const folder of [...new Set(folders)].sort()) {
    const { title, text } = await licence(join(root, folder));
    packages.set(text, [...(packages.get(text) ?? []), title]);
  }
  return [...packages].map(([text, titles]) => `${[...titles, "", text].join("\n")}\n`).join(RULE);
}

const RULE = `\n${"-".repeat(80)}\n\n`;

/** `node_modules/a/node_modules/b` for a file in it; undefined for our own, and for what a plugin of the bundler made. */
function packageFolder(file: string): string | undefined {
  return /^[^:]*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0];
}

async function licence(folder: string): Promise<{ title: string; text: string }> {
  const { name, version, license } = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
  const files = (await readdir(folder)).filter((file) => /^(licen[cs]e|notice)/i.test(file)).sort();
  const texts = await Promise.all(files.map((file) => readFile(join(folder, file), "utf8")));
  return { title: `${name} ${version} (${license})`, text: texts.map((text) => text.trim()).join("\n\n") };
}
