/** A file that is looked at after another in which the same words stand: what is said of it is what is said of it alone. */
import { expect, test } from "vitest";
import { DrillwrightDocumentValidator } from "../../language/checks/document-validator.ts";
import { services, withChecked } from "../checks/checked-files.ts";

const CONFLICT = `target carry at least 150 yd
    require carry at most 140 yd`;
const SURE_AVERAGE = "success average carry within 3 yd of 155 yd at 90 % confidence";
const SURE_GAIN = "success carry gains at least 4 yd against the baseline at 90 % confidence";

const plan = (lines: string) => `plan "Length" {
${lines}
}
`;

const block = (lines: string, name = "Gate", kind = "test") => `  block "${name}" ${kind} {
    20 shots
    ${lines}
  }
`;

const window = `window "Path" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path at least 5° in-to-out
}
`;

const path = (range: string) =>
  block(`target inside "Path"
    require club-path ${range}`);

const pathOff = path("at most 2° out-to-in");

const PAIRS: Readonly<Record<string, readonly [string, string]>> = {
  "the same in another file": [plan(block(CONFLICT)), plan(block(CONFLICT))],
  "further down": [plan(block(CONFLICT)), `// A line more.\n${plan(block(CONFLICT))}`],
  "with a window further up": [`${window}\n${plan(pathOff)}`, `${window}${plan(pathOff)}`],
  "with another window": [
    `${window}${plan(pathOff)}`,
    `${window.replace("is club-path within 2°", "is club-path within 9°")}${plan(pathOff)}`,
  ],
  "with another club": [
    `${window}${plan(path("at most 4° in-to-out"))}`,
    `${window}${plan(`  for driver\n${path("at most 4° in-to-out")}`)}`,
  ],
  "beside a block that expects less": [
    plan(block(SURE_AVERAGE) + block("success spread of carry at most 40 yd", "Other")),
    plan(block(SURE_AVERAGE) + block("success spread of carry at most 1 yd", "Other")),
  ],
  "after another baseline": [
    plan(block("", "Before", "baseline").replace("20", "4") + block(SURE_GAIN)),
    plan(block("", "Before", "baseline").replace("20", "400") + block(SURE_GAIN)),
  ],
  "with a mistake in the block": [
    plan(block(CONFLICT)),
    plan(block(`${CONFLICT}\n    target clubpath at most 2°`)),
  ],
  "with a mistake in the plan": [plan(block(CONFLICT)), plan(`  for nothing\n${block(CONFLICT)}`)],
};

test.for(Object.entries(PAIRS))("%s", ([, [one, other]]) =>
  withChecked(one, { "other.drill": other }, async (main, others) => {
    const documents = [main, ...others.values()].map(({ document }) => document);
    const alone = documents.map(({ diagnostics }) => diagnostics);
    expect(alone.flat()).not.toEqual([]);
    for (const order of [documents, documents.toReversed()]) {
      const validator = new DrillwrightDocumentValidator(services);
      for (const document of order) {
        expect(await validator.validateDocument(document)).toEqual(alone[documents.indexOf(document)]);
      }
    }
  }),
);
