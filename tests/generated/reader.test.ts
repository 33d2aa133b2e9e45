/** The reader of texts without a mistake, written from the grammar. */
import { expect, test } from "vitest";
import { reflection } from "../../language/generated/tree/ast.ts";
import { DrillwrightGrammar } from "../../language/generated/tree/grammar.ts";
import { partPropertiesModule, readerModule } from "./reader-module.ts";

const grammar = DrillwrightGrammar();

test("the reader is that of the grammar", async () => {
  await expect(readerModule(grammar, reflection)).toMatchFileSnapshot("../../language/generated/reader.ts");
});

test("the properties are those of the grammar", async () => {
  await expect(partPropertiesModule(grammar)).toMatchFileSnapshot(
    "../../language/generated/part-properties.ts",
  );
});
