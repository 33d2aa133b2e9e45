/** What the sources of the editor's side must not do. */
import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const root = new URL("../../", import.meta.url);
const read = (file: string) => readFileSync(new URL(file, root), "utf8");
const extension = globSync("extension/**/*.ts", { cwd: root.pathname });
const everything = globSync("{extension,server,language,shared}/**/*.ts", { cwd: root.pathname });

/** The files in which something is found. */
function filesWith(files: readonly string[], what: RegExp): string[] {
  return files.filter((file) => what.test(read(file)));
}

test("files are reached through the editor, wherever it runs", () => {
  expect(extension.length).toBeGreaterThan(40);
  expect(filesWith(extension, /from "node:|require\(/)).toEqual([]);
});

test("a path of the disk is taken only where there is one", () => {
  // The server of a Node host is a script on its disk, and people are told paths as their system writes them.
  const known = ["extension/commands/create-sample.ts", "extension/language-client/node.ts"];
  expect(filesWith(extension, /\.fsPath\b/).sort()).toEqual(known);
  expect(read("extension/commands/create-sample.ts")).toContain('scheme === "file" ? folder.fsPath');
});

test("nothing uses a network, and nothing is counted", () => {
  const network = /\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\b|["'](?:node:)?(?:https?|net|tls|dgram|dns)["']/;
  expect(filesWith(everything, network)).toEqual([]);
  expect(filesWith(everything, /TelemetryLogger|sendTelemetry/)).toEqual([]);
});

test("no Markdown is trusted, and no page is made of a text", () => {
  expect(filesWith(extension, /isTrusted = true|supportHtml = true|\.html = `/)).toEqual([]);
});
