import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { defineCommand } from "../command.ts";
import { STDIN, STDIN_FILENAME } from "../stdin.ts";

export const compile = defineCommand({
  summary: "Print the plan model of a file: what it means, as JSON.",
  operands: { usage: "FILE|-", least: 1, most: 1 },
  description: [
    "Prints what the file declares, what its sessions refer to, and the vocabulary they can use: references resolved, numbers in SI units. The schema is printed by `drillwright schema plan-model`.",
    "A file with errors, or one that uses a file with errors, has no model: the errors are shown, and the exit code is 3.",
  ],
  options: { "stdin-filename": STDIN_FILENAME },
  examples: [["compile plans/irons.drill > irons.json", "the model of a plan"]],
  async run({ operands: [operand = STDIN], options, errorPalette }, io) {
    const { openModel } = await import("../open-model.ts");
    const noFolder = `compile takes one file, and ${operand} is a folder.`;
    const opened = await openModel(operand, io, options["stdin-filename"], errorPalette, noFolder);
    if (opened === undefined) return EXIT_CODES.planErrors.code;
    io.stdout.write(`${JSON.stringify(opened.model, null, 2)}\n`);
    return EXIT_CODES.ok.code;
  },
});
