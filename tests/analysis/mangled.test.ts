/** Whatever is typed, no check fails: texts with words taken out, doubled or exchanged. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Check, FAULT_CODE } from "../../language/checks/check.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { check } from "../checks/checked-files.ts";
import { unmark } from "../checks/marks.ts";

const checks = Object.values(CHECKS as Readonly<Record<string, Check>>);
const texts = checks.flatMap(({ reporting, silent }) => [unmark(reporting).text, silent]);
const others = Object.assign({}, ...checks.map(({ files }) => files ?? {})) as Record<string, string>;

const mangled = fc
  .record({
    text: fc.constantFrom(...texts),
    changes: fc.array(
      fc.record({ at: fc.nat(), by: fc.nat(), how: fc.constantFrom("out", "twice", "swap") }),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
  })
  .map(({ text, changes }) => {
    const words = text.split(/(\s+)/);
    for (const { at, by, how } of changes) {
      const place = at % words.length;
      const word = words[place] ?? "";
      if (how === "out") words[place] = "";
      else if (how === "twice") words[place] = `${word} ${word}`;
      else words[place] = words[by % words.length] ?? "";
    }
    return words.join("");
  });

test("no text makes a check fail", async () => {
  let errors = 0;
  await fc.assert(
    fc.asyncProperty(mangled, async (text) => {
      const found = await check(text, others);
      expect(found.filter(({ code }) => code === FAULT_CODE)).toEqual([]);
      if (found.some(({ severity }) => severity === "error")) errors++;
    }),
    { numRuns: 300 },
  );
  expect(errors).toBeGreaterThan(100);
});
