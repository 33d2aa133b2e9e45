import { expect, test } from "vitest";
import { buildExamples, drillFiles } from "./examples.ts";

const { documents } = await buildExamples();

test.each(drillFiles())("nothing is to be said against %s", (path) => {
  const diagnostics = documents.get(path)?.diagnostics;
  const found = diagnostics?.map(
    ({ range, code, message }) => `line ${range.start.line + 1}: ${message} (${code})`,
  );
  expect(found).toEqual([]);
});
