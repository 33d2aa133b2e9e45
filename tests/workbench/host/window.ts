/** Opens one editor window: a page of a headless Chromium that shows the workbench of a server. */
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import type { Server } from "./server.ts";

/** What the workbench is told beside the folder: pairs of name and value, see the editor's `payload`. */
export type Payload = readonly (readonly [name: string, value: string])[];

export type WindowOptions = {
  readonly server: Server;
  /** Absolute path of the folder or `.code-workspace` file, or the whole address of a folder that is no file. */
  readonly folder: string;
  readonly payload?: Payload;
  readonly size?: { readonly width: number; readonly height: number };
  /** Device pixels per pixel of the page; 2 gives crisp pictures. */
  readonly scale?: number;
};

export type EditorWindow = {
  readonly page: Page;
  /** Addresses outside this machine that the page asked for. None can be reached. */
  readonly outsideRequests: readonly string[];
  /** What people were told by notifications: `Info: …`. */
  readonly notifications: readonly string[];
  /** What workbench and extension host wrote to their consoles, newest last. */
  readonly log: readonly string[];
  /** Loads the window; a second call loads it anew. */
  load(): Promise<void>;
  close(): Promise<void>;
};

/** One browser serves many windows; each window has its own storage. */
export function launchBrowser(executablePath: string): Promise<Browser> {
  return chromium.launch({
    executablePath,
    args: [
      "--disable-gpu",
      "--disable-quic",
      // The tests hold without a network, so they run without one.
      "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost",
    ],
  });
}

export async function newWindow(browser: Browser, options: WindowOptions): Promise<EditorWindow> {
  const context = await browser.newContext({
    viewport: options.size ?? { width: 1280, height: 800 },
    deviceScaleFactor: options.scale ?? 1,
    locale: "en-US",
    timezoneId: "UTC",
  });
  const page = await context.newPage();
  const outsideRequests = watchRequests(context);
  const notifications = await watchNotifications(page);
  const log: string[] = [];
  page.on("console", (message) =>
    log.push(`${message.type()}: ${message.text().replace(/^%c\s*|color: \S+ /g, "")}`),
  );
  page.on("pageerror", (error) => log.push(`page error: ${error.message}`));
  page.on("crash", () => log.push("the page crashed"));
  const address = windowAddress(options);
  return {
    page,
    outsideRequests,
    notifications,
    log,
    load: async () => {
      await page.goto(address, { waitUntil: "domcontentloaded" });
    },
    close: () => context.close(),
  };
}

function windowAddress({ server, folder, payload }: WindowOptions): string {
  const query = new URLSearchParams({
    [folder.endsWith(".code-workspace") ? "workspace" : "folder"]: folder,
  });
  if (payload) query.set("payload", JSON.stringify(payload));
  return `http://${server.authority}/?${query}`;
}

/** Notifications are also spoken, which is where they are seen for certain: a window in the background draws none. */
async function watchNotifications(page: Page): Promise<readonly string[]> {
  const seen: string[] = [];
  await page.exposeFunction("notificationSeen", (text: string) => {
    if (!seen.includes(text)) seen.push(text);
  });
  await page.addInitScript(() => {
    const told = globalThis as typeof globalThis & { notificationSeen(text: string): void };
    const look = () => {
      for (const { textContent } of document.querySelectorAll(".monaco-aria-container .monaco-alert"))
        if (/^(Info|Warning|Error): /.test(textContent ?? "")) told.notificationSeen(textContent ?? "");
    };
    new MutationObserver(look).observe(document, { childList: true, subtree: true, characterData: true });
  });
  return seen;
}

function watchRequests(context: BrowserContext): readonly string[] {
  const outside: string[] = [];
  context.on("request", (request) => {
    const { protocol, hostname } = new URL(request.url());
    const local = hostname === "127.0.0.1" || hostname === "localhost";
    // Resources of webviews have an address of their own, which the editor answers itself.
    const ofWebview = hostname.endsWith(".vscode-resource.vscode-cdn.net");
    if (/^(https?|wss?):$/.test(protocol) && !local && !ofWebview) outside.push(request.url());
  });
  return outside;
}
