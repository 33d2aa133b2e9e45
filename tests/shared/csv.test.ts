import fc from "fast-check";
import { expect, test } from "vitest";
import { splitText } from "../../server/import/table/delimited.ts";
import { csvLine, harmless } from "../../shared/csv.ts";

test.each([
  "=1+1",
  "+1+1",
  "-1+1",
  "@SUM(A1)",
  "\t=1",
  "\r=1",
  " =1",
  "=cmd|' /C calc'!A0",
  "-2+3|x",
  "＝1",
  '"=1"',
  "-",
  "+",
])("%j is not run", (text) => {
  expect(harmless(text)).toBe(`'${text}`);
});

test.each([
  "",
  "150",
  "-1.5",
  "+3",
  "−2",
  "-1,234.5",
  "- 3",
  "-.5",
  "-1e-7",
  "-5 %",
  "P-01",
  "7-iron",
  "a=b",
  "3 = 3",
])("%j stays as it is", (text) => {
  expect(harmless(text)).toBe(text);
});

test("cells are read back as they were, and none begins like a formula", () => {
  const cell = fc.string({
    unit: fc.constantFrom("=", "+", "-", "@", "a", "1", '"', ",", ";", "\n", "\t", " ", "'"),
    maxLength: 6,
  });
  fc.assert(
    fc.property(
      fc.array(cell, { minLength: 1, maxLength: 4 }),
      fc.constantFrom(",", ";", "\t"),
      (cells, separator) => {
        const [record] = splitText(`${csvLine(cells, separator)}\n`, separator).records;
        expect(record?.cells).toEqual(cells.map(harmless));
        for (const read of record?.cells ?? [])
          expect(/^[\s'"]*[=@]/.test(read) && !read.startsWith("'")).toBe(false);
      },
    ),
  );
});
