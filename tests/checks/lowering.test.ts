import fc from "fast-check";
import { expect, test } from "vitest";
import type { Check } from "../../language/checks/check.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { isSession } from "../../language/generated/tree/ast.ts";
import { Lowering } from "../../language/lowering/document.ts";
import { PlanModel } from "../../shared/plan-model.ts";
import { services, withChecked } from "./checked-files.ts";
import { unmark } from "./marks.ts";

// The examples of the checks, good and bad, taken apart and put together anew, are programs with every kind of mistake.
// Where nothing is reported as an error, there must be nothing that the plan model cannot say.

const checks = Object.values(CHECKS as Readonly<Record<string, Check>>);
const others = Object.assign({}, ...checks.map(({ files }) => files ?? {})) as Record<string, string>;
const good = checks.flatMap(({ fixed, silent }) => [silent, fixed ?? ""]);
const bad = checks.map(({ reporting }) => unmark(reporting).text);

/** Whole declarations, each from its opening line to the brace at the left. */
const declarationsOf = (texts: readonly string[]) => [
  ...new Set(texts.flatMap((text) => text.split(/\n\n+/).map((part) => part.trim())).filter(Boolean)),
];

/** Single lines. */
const lines = [...new Set([...good, ...bad].flatMap((text) => text.split("\n")))].filter((line) =>
  /^ +[^ }{]+[^{}]*$/.test(line),
);
const indentation = (line: string) => line.length - line.trimStart().length;

const some = (keyword: string) => {
  const starting = (texts: readonly string[]) =>
    declarationsOf(texts).filter((part) => part.startsWith(`${keyword} `));
  return fc.oneof(
    { weight: 8, arbitrary: fc.constantFrom(...starting(good)) },
    { weight: 1, arbitrary: fc.constantFrom(...starting(bad)) },
    { weight: 2, arbitrary: fc.constant("") },
  );
};

const KEYWORDS = [
  ...["use", "dimension", "metric", "window", "drill", "finding", "plan", "curriculum"],
  ...["player", "instrument", "source", "session"],
];

/** One declaration of each kind, from anywhere, so that sessions find what they name. */
const mixed = fc
  .tuple(...KEYWORDS.map(some))
  .map((parts) => parts.filter((part) => part !== undefined).join("\n\n"));

const swaps = fc.array(fc.record({ at: fc.nat(), by: fc.constantFrom(...lines) }), { maxLength: 2 });

/** A program, mixed or as it stands in an example, in which one or two lines are others. */
const program = fc.tuple(fc.oneof(mixed, fc.constantFrom(...good)), swaps).map(([whole, swapped]) => {
  const text = whole.split("\n");
  for (const { at, by } of swapped) {
    const alike = text.flatMap((line, index) => (indentation(line) === indentation(by) ? [index] : []));
    const place = alike[at % Math.max(1, alike.length)];
    if (place !== undefined && !/[{}]/.test(text[place] ?? "")) text[place] = by;
  }
  return text.join("\n");
});

test("a program without errors can be lowered, and its model is one", { timeout: 120_000 }, async () => {
  let lowered = 0;
  let sessions = 0;
  await fc.assert(
    fc.asyncProperty(program, async (text) => {
      await withChecked(text, others, ({ found, document }) => {
        if (found.some(({ severity }) => severity === "error")) return;
        const lowering = new Lowering(services, (uri) => uri.path);
        const model = lowering.document(document);
        expect(PlanModel.safeParse(model).success).toBe(true);
        for (const session of document.parseResult.value.declarations.filter(isSession)) {
          expect(lowering.session(session).session.name).toBe(session.name);
          sessions++;
        }
        lowered++;
      });
    }),
    { numRuns: 1500, seed: 20261012 },
  );
  // So many of the programs are free of errors that the test says something.
  expect(lowered).toBeGreaterThan(50);
  expect(sessions).toBeGreaterThan(10);
});
