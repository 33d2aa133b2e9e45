/** Where a table is looked for, on every system. */
import { EmptyFileSystem, URI } from "langium";
import { expect, test } from "vitest";
import { CachedDataFiles } from "../../server/lsp/cached-data-files.ts";

const files = new CachedDataFiles(EmptyFileSystem.fileSystemProvider(), () => "");
const locate = (path: string, session: string) => files.locate(path, session);

test.each([
  ["../data/a.csv", "file:///centre/sessions/s.drill", "file:///centre/data/a.csv"],
  ["a.csv", "file:///centre/s.drill", "file:///centre/a.csv"],
  ["../data/week 1.csv", "file:///centre/sessions/s.drill", "file:///centre/data/week%201.csv"],
  ["../data/größe.csv", "file:///centre/s/s.drill", "file:///centre/data/gr%C3%B6%C3%9Fe.csv"],
  ["../data/a.csv", "file:///c%3A/Centre/sessions/s.drill", "file:///c%3A/Centre/data/a.csv"],
  ["../data/a.csv", "vscode-vfs://memory/centre/sessions/s.drill", "vscode-vfs://memory/centre/data/a.csv"],
])("%s in %s is %s", (path, session, uri) => {
  expect(locate(path, session)).toBe(uri);
});

test("one file has one address, whatever case its drive is written in by the editor", () => {
  // Editors write drives small; URIs that are parsed and written again stay as they are.
  const uri = URI.file("/c:/Centre/sessions/s.drill").toString();
  expect(locate("../data/a.csv", uri)).toBe(URI.file("/c:/Centre/data/a.csv").toString());
});

test("what would be fetched over a network is not there", async () => {
  expect(await files.read("file://server/share/a.csv")).toBeUndefined();
  // Two slashes lead to another machine on some systems. Written in a session they are one, and stay on this.
  expect(locate("//server/share/a.csv", "file:///centre/s.drill")).toBe("file:///server/share/a.csv");
});
