import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { defineCommand, UsageError } from "../command.ts";
import { didYouMean } from "../parse-arguments.ts";

/** The documents for machines, and what each is. */
const SCHEMAS = {
  "plan-model": "what a .drill file means, as `compile` prints it",
  "score-report": "the verdicts on one session",
  "check-report": "what `check --format json` prints",
  "score-output": "what `score --format json` prints: score reports, and why other sessions have none",
  "plan-diff": "what `diff --format json` prints",
  trend: "what `trend --format json` prints",
  cohort: "what `cohort --format json` prints",
  "flight-estimates": "what `flight --format json` prints",
} as const;

export type SchemaName = keyof typeof SCHEMAS;

export const schema = defineCommand({
  summary: "Print the JSON schemas of what other commands print.",
  operands: { usage: "[NAME]", least: 0, most: 1 },
  description: [
    "Prints the JSON Schema (draft 2020-12) of that name, or the names there are. The documents carry `format` and `version`; within a version members are only ever added, so readers should ignore those they do not know.",
  ],
  options: {},
  examples: [
    ["schema", "which schemas there are"],
    ["schema score-report > score-report.schema.json", "one of them"],
  ],
  async run({ operands: [name] }, io) {
    if (name === undefined) {
      for (const [each, meaning] of Object.entries(SCHEMAS))
        io.stdout.write(`${each.padEnd(18)}${meaning}\n`);
      return EXIT_CODES.ok.code;
    }
    if (!isSchemaName(name)) {
      const names = Object.keys(SCHEMAS);
      throw new UsageError(
        `There is no schema ${name}.${didYouMean(name, names)} There are ${names.join(", ")}.`,
      );
    }
    const { jsonSchema } = await import("../json-schema.ts");
    io.stdout.write(`${JSON.stringify(jsonSchema(name), null, 2)}\n`);
    return EXIT_CODES.ok.code;
  },
});

function isSchemaName(name: string): name is SchemaName {
  return Object.hasOwn(SCHEMAS, name);
}
