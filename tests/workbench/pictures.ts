/**
 * Takes the pictures of the extension at work:
 *
 *     node tests/workbench/pictures.ts [name …] [--to folder] [--vsix file]
 *
 * Without names it takes all. Without `--vsix` it packs the built extension first. Add a picture by adding an
 * entry to the list.
 */
import { cp, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { createVSIX } from "@vscode/vsce";
import { openWorkbench, type Theme, type Workbench } from "./host/photograph.ts";
import { extensionFolder, repository } from "./host/places.ts";
import { ensureChromium } from "./host/tools.ts";
import { launchBrowser } from "./host/window.ts";

type Picture = {
  /** Also the file's name, without its ending. */
  readonly name: string;
  readonly theme: Theme;
  /** Relative to the repository; the window shows a copy. */
  readonly folder: string;
  readonly trusted?: boolean;
  readonly settings?: { readonly [key: string]: unknown };
  /** Brings the workbench into the state to be shown; the picture is taken afterwards. */
  readonly arrange: (workbench: Workbench) => Promise<void>;
};

const pictures: readonly Picture[] = [];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { to: { type: "string" }, vsix: { type: "string" } },
});
const unknown = positionals.filter((name) => pictures.every((picture) => picture.name !== name));
if (unknown.length > 0) {
  console.error(
    `No such picture: ${unknown.join(", ")}. There are: ${pictures.map(({ name }) => name).join(", ")}.`,
  );
  process.exit(2);
}
const wanted = pictures.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
await takePictures(wanted, resolve(values.to ?? join(repository, ".cache", "pictures")), values.vsix);

async function takePictures(wanted: readonly Picture[], to: string, vsix: string | undefined): Promise<void> {
  const scratch = await mkdtemp(join(tmpdir(), "drillwright-pictures-"));
  const browser = await launchBrowser(await ensureChromium());
  try {
    const packed = vsix ? resolve(vsix) : join(scratch, "extension.vsix");
    if (!vsix) await createVSIX({ cwd: extensionFolder(), packagePath: packed, dependencies: false });
    for (const { name, folder, arrange, ...options } of wanted) {
      const copy = join(scratch, name);
      await cp(join(repository, folder), copy, { recursive: true });
      const workbench = await openWorkbench({
        ...options,
        browser,
        vsix: packed,
        folder: copy,
        pictures: to,
        scale: 2,
      });
      try {
        await arrange(workbench);
        console.log(relative(process.cwd(), await workbench.photograph(name)));
      } finally {
        await workbench.close();
      }
    }
  } finally {
    await browser.close();
    await rm(scratch, { recursive: true, force: true });
  }
}
