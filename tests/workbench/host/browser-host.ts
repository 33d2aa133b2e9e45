/**
 * Brings an extension into the web worker extension host, as an editor in a browser does: its files come over
 * HTTP, its workspace is virtual. The addresses lie under the server's own origin, as the workbench's content
 * security policy asks, and are answered here.
 */
import { readdir, readFile } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import type { Server } from "./server.ts";

/** Address of the virtual folder; `serveToBrowser` says what is in it. */
export const virtualFolder = "vscode-vfs://memory/workspace";

export async function serveToBrowser(
  page: Page,
  options: {
    readonly server: Server;
    readonly extension: string;
    /** The bundled suite. */
    readonly script: string;
    /** The folder on disk that the virtual one starts as a copy of. */
    readonly folder: string;
  },
): Promise<void> {
  const { authority } = options.server;
  const memoryFolder: { readonly [path: string]: string } = {
    "package.json": JSON.stringify(memoryFolderManifest),
    "extension.js": await bundleMemoryFolder(options.folder),
  };
  await page.route(`http://${authority}/served/**`, async (route) => {
    const [, , root, ...rest] = decodeURIComponent(new URL(route.request().url()).pathname).split("/");
    const path = rest.join("/");
    const body =
      root === "memory-folder"
        ? memoryFolder[path]
        : await readFile(path === "suite.cjs" ? options.script : join(options.extension, path)).catch(
            () => undefined,
          );
    await route.fulfill(body === undefined ? { status: 404 } : { body, contentType: contentType(path) });
  });

  const served = (path: string) => ({ scheme: "http", authority, path: `/served/${path}` });
  await page.addInitScript(
    (development) => {
      // The workbench reads its construction options from an attribute; there is no other way to these two.
      const read = Element.prototype.getAttribute;
      Element.prototype.getAttribute = function (name) {
        const value = read.call(this, name);
        if (this.id !== "vscode-workbench-web-configuration" || name !== "data-settings" || !value)
          return value;
        const options = JSON.parse(value);
        return JSON.stringify({
          ...options,
          developmentOptions: { ...options.developmentOptions, ...development },
        });
      };
    },
    {
      extensions: [served("extension"), served("memory-folder")],
      // A suite runs in the host of the extension it lies in.
      extensionTestsPath: served("extension/suite.cjs"),
    },
  );
}

const memoryFolderManifest = {
  name: "memory-folder",
  publisher: "drillwright-tests",
  version: "0.0.0",
  engines: { vscode: "^1.100.0" },
  browser: "./extension.js",
  activationEvents: ["onFileSystem:vscode-vfs", "onSearch:vscode-vfs"],
  enabledApiProposals: ["fileSearchProvider"],
  capabilities: { virtualWorkspaces: true, untrustedWorkspaces: { supported: true } },
};

async function bundleMemoryFolder(folder: string): Promise<string> {
  const files: { [path: string]: string } = {};
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const file = join(entry.parentPath, entry.name);
    const path = relative(folder, file).split(sep).join("/");
    files[`${new URL(virtualFolder).pathname}/${path}`] = await readFile(file, "base64");
  }
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL("memory-folder.ts", import.meta.url))],
    bundle: true,
    write: false,
    format: "cjs",
    platform: "browser",
    target: "es2022",
    external: ["vscode"],
    define: { FILES: JSON.stringify(files), ROOT: JSON.stringify(virtualFolder) },
    logLevel: "silent",
  });
  return outputFiles[0]?.text ?? "";
}

function contentType(path: string): string {
  if (path.endsWith(".json")) return "application/json";
  if (/\.[cm]?js$/.test(path)) return "text/javascript";
  return "application/octet-stream";
}
