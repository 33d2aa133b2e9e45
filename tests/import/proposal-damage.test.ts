/** Whatever the bytes and the names in them, a proposal is text that parses, or a reason why there is none. */

import fc from "fast-check";
import { EmptyFileSystem } from "langium";
import { beforeAll, expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { type Document, isColumn, isSource } from "../../language/generated/tree/ast.ts";
import { type Proposal, ProposalReader, propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";

let vocabulary: Vocabulary;
const { drillwright } = createCoreServices(EmptyFileSystem);
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

const cell = fc.oneof(
  fc.constantFrom(
    "Carry",
    "Path (R+)",
    "Club",
    "Player",
    "Date",
    "Time",
    'a "b"',
    "150",
    "1,5",
    "-2 L",
    "7i",
    "12/10/2026",
    "",
    '"',
    "\\",
    "*/",
    "//",
    "{",
    "° L",
    "Carry\u0001 (m)",
    "Side\u2028(m)",
    "10:42",
  ),
  fc.string({ unit: "binary", maxLength: 8 }),
);
const table = fc
  .tuple(
    fc.constantFrom(",", ";", "\t", "|"),
    fc.array(fc.array(cell, { minLength: 1, maxLength: 8 }), { maxLength: 12 }),
  )
  .map(([separator, rows]) => rows.map((cells) => cells.join(separator)).join("\n"));
const content = fc.oneof(
  { weight: 4, arbitrary: table },
  fc.uint8Array({ maxLength: 300 }),
  fc.json().map((json) => `[${json}]`),
  fc
    .array(
      fc.record({ Carry: fc.double(), player: fc.string(), "club.path": fc.oneof(fc.double(), fc.string()) }),
    )
    .map((shots) => JSON.stringify(shots)),
);

function assertSound({ text, failed, sources }: Proposal): void {
  expect(text === "").toBe(sources.length === 0);
  expect(failed.length + sources.length).toBe(1);
  const { lexerErrors, parserErrors, value } = drillwright.parser.LangiumParser.parse<Document>(text);
  expect(
    [lexerErrors, parserErrors].flat().map(({ message }) => message),
    text,
  ).toEqual([]);
  // Whatever stands in a header, the column is found by it.
  const headers = sources.flatMap(({ columns }) => columns.map(({ header }) => header));
  const written = value.declarations
    .filter(isSource)
    .flatMap(({ statements }) => statements.filter(isColumn));
  for (const { header } of written) expect(headers).toContain(header);
}

test("every content gives a sound proposal or a reason", () => {
  fc.assert(
    fc.property(content, fc.constantFrom("a.csv", 'q"uo\\te.csv', "x/y z.json.gz"), (content, path) => {
      assertSound(propose([{ path, content }], { vocabulary }));
    }),
    { numRuns: 400 },
  );
});

test("the same content in pieces gives the same proposal", () => {
  fc.assert(
    fc.property(table, fc.integer({ min: 1, max: 50 }), (content, size) => {
      const bytes = new TextEncoder().encode(`abcd${content}`);
      const reader = new ProposalReader({ vocabulary });
      const file = reader.open("a.csv");
      for (let at = 0; at < bytes.length; at += size) file.push(bytes.subarray(at, at + size));
      file.end();
      expect(reader.proposal()).toEqual(propose([{ path: "a.csv", content: bytes }], { vocabulary }));
    }),
    { numRuns: 100 },
  );
});
