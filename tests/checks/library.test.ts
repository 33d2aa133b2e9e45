/** The built-in vocabulary is held to what is asked of everybody's files. */
import type { LangiumDocument } from "langium";
import { describe, expect, test } from "vitest";
import type { Document } from "../../language/generated/tree/ast.ts";
import { libraryFiles } from "../../language/library/library.ts";
import { syntaxErrors } from "../../language/syntax/syntax-errors.ts";
import { services } from "./checked-files.ts";

const validator = services.validation.DocumentValidator;
const library = services.names.Names.library();

const parse = (text: string) => services.parser.LangiumParser.parse<Document>(text);

test("every library file is there", () => {
  expect(library.map(({ uri }) => uri.path).sort()).toEqual(
    libraryFiles()
      .map(({ uri }) => uri.path)
      .sort(),
  );
});

describe.each(library.map((document) => [document.uri.path, document] as const))("%s", (_, document) => {
  test("nothing is to be said against it", async () => {
    expect(document.references.length + document.parseResult.value.declarations.length).toBeGreaterThan(0);
    expect((await validator.validateDocument(document)).map(told)).toEqual([]);
  });

  test("every declaration in it is read", () => {
    const text = document.textDocument.getText();
    const opened = text.match(/^(dimension|metric|club) .*$/gm) ?? [];
    const read = document.parseResult.value.declarations.map(
      ({ $type, name }) => `${$type.toLowerCase()} ${name}`,
    );
    expect(read).toEqual(opened.map((line) => line.split(/\s+/, 2).join(" ")));
  });

  test("a word of the language as a name in it is noticed", () => {
    const text = document.textDocument.getText();
    const broken = text.replace(/^(dimension|metric|club) \S+/m, "$1 target");
    expect(syntaxErrors(parse(text))).toEqual([]);
    expect(syntaxErrors(parse(broken))).not.toEqual([]);
  });
});

function told({ message, range }: Awaited<ReturnType<typeof validator.validateDocument>>[number]): string {
  return `line ${range.start.line + 1}: ${typeof message === "string" ? message : message.value}`;
}

test("a mistake in a library file is found where it is", async () => {
  const [first] = library;
  const uri = first?.uri.with({ path: "/broken.drill" });
  const document: LangiumDocument<Document> = services.shared.workspace.LangiumDocumentFactory.fromString(
    "dimension area {\n  unit m²\n}\n",
    uri ?? expect.unreachable(),
  );
  expect((await validator.validateDocument(document)).map(told)).toEqual([
    "line 1: `area` is a word of the language and cannot be a name. Choose another, such as `my-area`.",
  ]);
});
