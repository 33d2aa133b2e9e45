/** Drives a workbench with the extension in it as a person would, and takes pictures of it. */
import { mkdir, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Locator, Page } from "playwright-core";
import { type Server, startServer } from "./server.ts";
import { ensureServer } from "./tools.ts";
import { newWindow } from "./window.ts";

export type Theme = "light" | "dark" | "high contrast" | "high contrast light";

const themeIds: { readonly [theme in Theme]: string } = {
  light: "Light Modern",
  dark: "Dark Modern",
  "high contrast": "Default High Contrast",
  "high contrast light": "Default High Contrast Light",
};

/** Nothing that moves or blinks, so that the same state gives the same picture. */
const stillSettings = {
  "editor.cursorBlinking": "solid",
  "editor.minimap.enabled": false,
  "editor.smoothScrolling": false,
  "workbench.reduceMotion": "on",
};

/** How long a thing that should appear may take on a busy machine. */
const patience = 60_000;

export type WorkbenchOptions = {
  readonly browser: Browser;
  /** The extension: packaged, or as a folder that is ready to run. Absolute paths. */
  readonly extension: { readonly vsix: string } | { readonly folder: string };
  /** Absolute path of the folder, or `.code-workspace` file, to open. */
  readonly folder: string;
  readonly theme: Theme;
  /** Where pictures go. */
  readonly pictures: string;
  /** `false`: restricted mode. */
  readonly trusted?: boolean;
  readonly size?: { readonly width: number; readonly height: number };
  /** Device pixels per pixel of the page. */
  readonly scale?: number;
  readonly settings?: { readonly [key: string]: unknown };
};

export async function openWorkbench(options: WorkbenchOptions): Promise<Workbench> {
  const { extension } = options;
  const server = await startServer({
    script: await ensureServer(),
    trusted: options.trusted ?? true,
    ...("vsix" in extension ? extension : {}),
    settings: { "workbench.colorTheme": themeIds[options.theme], ...stillSettings, ...options.settings },
  });
  try {
    const { folder, size, scale } = options;
    const window = await newWindow(options.browser, {
      server,
      folder,
      ...("folder" in extension ? { payload: [remotePath(server, extension.folder)] } : {}),
      ...(size ? { size } : {}),
      ...(scale ? { scale } : {}),
    });
    const close = async (): Promise<void> => {
      await window.close();
      await server.stop();
    };
    const load = async () => {
      await window.load();
      await stands(window.page);
    };
    await load().catch(load); // a window that stays empty gets one reload
    return new Workbench(window.page, options.pictures, close);
  } catch (error) {
    await server.stop();
    throw error;
  }
}

/** Waits until the workbench of a page is drawn. */
async function stands(page: Page): Promise<void> {
  const drawn = page.locator(".monaco-workbench .part.statusbar .statusbar-item").first();
  await drawn.waitFor({ timeout: patience });
}

function remotePath({ authority }: Server, folder: string): readonly [string, string] {
  return ["extensionDevelopmentPath", `vscode-remote://${authority}${pathToFileURL(folder).pathname}`];
}

/** How serious a mark under the text is, by the editor's own names. */
export type MarkKind = "error" | "warning" | "info" | "hint";

export class Workbench {
  /** For what the methods below do not cover. */
  readonly page: Page;
  readonly close: () => Promise<void>;
  readonly #pictures: string;

  constructor(page: Page, pictures: string, close: () => Promise<void>) {
    this.page = page;
    this.close = close;
    this.#pictures = pictures;
    page.setDefaultTimeout(patience);
  }

  /** Opens a file through quick open; `path` is relative to the folder, or enough of it to be found first. */
  async openFile(path: string): Promise<void> {
    await this.#pick("Control+P", path, basename(path));
    await this.page
      .locator(`.tab.active[data-resource-name="${basename(path)}"]`)
      .first()
      .waitFor();
    await this.page.locator(".editor-instance .view-line").first().waitFor();
  }

  /** Runs a command from the palette by the title shown there, category included. */
  async runCommand(title: string): Promise<void> {
    await this.#pick("F1", `>${title}`, title);
  }

  /** Loads the window again, as people do. */
  async reload(): Promise<void> {
    await Promise.all([this.page.waitForEvent("load"), this.runCommand("Developer: Reload Window")]);
    await stands(this.page);
  }

  /** Puts the cursor there; line and column count from 1. */
  async goTo(line: number, column = 1): Promise<void> {
    await this.page.keyboard.press("Control+G");
    await this.#input().fill(`:${line}:${column}`);
    await this.page.keyboard.press("Enter");
    await this.#input().waitFor({ state: "hidden" });
  }

  /** Rests the pointer on a piece of text in the editor until a hover stands there and stays. */
  async hover(text: string): Promise<void> {
    const hover = this.page.locator(".monaco-hover:not(.hidden) .hover-row").first();
    const end = Date.now() + patience;
    const stays = async () => {
      await hover.waitFor({ timeout: 2_000 }).catch(() => {});
      await this.page.waitForTimeout(1_000);
      return hover.isVisible();
    };
    // Lines move while lenses and hints arrive, which takes the hover away: then the place is looked for again.
    for (let step = 0; !(await stays()); step++) {
      if (Date.now() > end) throw new Error(`There is no hover on “${text}”.`);
      const { x, y } = await this.#pointAt(text);
      await this.page.mouse.move(x - 4 - (step % 3), y);
      await this.page.mouse.move(x, y);
    }
  }

  /** Clicks on a piece of text in the editor. */
  async click(text: string): Promise<void> {
    const { x, y } = await this.#pointAt(text);
    await this.page.mouse.click(x, y);
  }

  /** Waits until the editor marks some text so. */
  async waitForMarks(kind: MarkKind): Promise<void> {
    await this.page.locator(`.monaco-editor .squiggly-${kind}`).first().waitFor({ state: "attached" });
  }

  /** Waits until a text stands somewhere in the workbench outside of webviews. */
  async waitForText(text: string): Promise<void> {
    await this.page.getByText(text).filter({ visible: true }).first().waitFor();
  }

  /** The document inside the webview that is shown, for waiting and looking. */
  webview(): Locator {
    return this.page.frameLocator("iframe.webview.ready").frameLocator("#active-frame").locator("body");
  }

  /** Takes a picture when nothing moves any more; of the whole window, or of a part. Returns the file. */
  async photograph(name: string, part?: Locator): Promise<string> {
    const shoot = () => (part ? part.screenshot() : this.page.screenshot());
    let picture = await shoot();
    for (let attempt = 0; attempt < 40; attempt += 1) {
      await this.page.waitForTimeout(250);
      const next = await shoot();
      const still = next.equals(picture);
      picture = next;
      if (still && (await this.page.locator(".monaco-progress-container.active:visible").count()) === 0)
        break;
    }
    await mkdir(this.#pictures, { recursive: true });
    const file = join(this.#pictures, `${name}.png`);
    await writeFile(file, picture);
    return file;
  }

  #input(): Locator {
    return this.page.locator(".quick-input-widget:visible input");
  }

  /** Types into the box that a key opens, and takes the first entry once it is the wanted one. */
  async #pick(key: string, typed: string, wanted: string): Promise<void> {
    const first = this.page.locator(".quick-input-widget:visible .monaco-list-row").first();
    const end = Date.now() + patience;
    const offers = async () => {
      await this.page.keyboard.press(key);
      await this.#input().fill(typed, { timeout: 10_000 });
      await first.filter({ hasText: wanted }).waitFor({ timeout: 10_000 });
      return true;
    };
    // A list that was opened before an extension is known does not learn of it, and one is closed by what takes the focus.
    const again = async (error: unknown) => {
      if (Date.now() > end) throw error;
      await this.page.keyboard.press("Escape");
      return false;
    };
    while (!(await offers().catch(again)));
    await this.page.keyboard.press("Enter");
    await this.#input().waitFor({ state: "hidden" });
  }

  /** Middle of the first place in the shown editor where the text stands on one line. */
  async #pointAt(text: string): Promise<{ readonly x: number; readonly y: number }> {
    const find = (wanted: string) => {
      for (const line of document.querySelectorAll(".editor-instance .view-line")) {
        const pieces: Text[] = [];
        const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
        while (walker.nextNode()) pieces.push(walker.currentNode as Text);
        // The editor shows spaces as unbreakable ones.
        const start = pieces
          .map((piece) => piece.data.replaceAll("\u00a0", " "))
          .join("")
          .indexOf(wanted);
        if (start < 0) continue;
        let rest = start + Math.floor(wanted.length / 2);
        for (const piece of pieces) {
          if (rest < piece.length) {
            const range = document.createRange();
            range.setStart(piece, rest);
            range.setEnd(piece, rest + 1);
            const box = range.getBoundingClientRect();
            return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
          }
          rest -= piece.length;
        }
      }
      return undefined;
    };
    const found = await this.page.waitForFunction(find, text).catch(() => {
      throw new Error(`The editor shows no line with “${text}”. Open the file and go near it first.`);
    });
    return (await found.jsonValue()) as { x: number; y: number };
  }
}
