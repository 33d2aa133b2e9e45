import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { PathError } from "../../node/path-error.ts";
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
    const { openProject } = await import("../open-project.ts");
    const project = await openProject([operand], io, options["stdin-filename"]);
    const [file, ...others] = project.files.filter(({ isGiven }) => isGiven);
    if (file === undefined || others.length > 0) {
      throw new PathError(`compile takes one file, and ${operand} is a folder.`);
    }
    const { errorsIn, reportErrors } = await import("../plan-errors.ts");
    const broken = project.reach(file.name).filter((each) => errorsIn(each).length > 0);
    if (broken.length > 0) {
      reportErrors(broken, errorPalette, io);
      return EXIT_CODES.planErrors.code;
    }
    const { IncompleteError } = await import("../../../language/lowering/unresolved.ts");
    try {
      const model = project.lowering.document(file.document);
      io.stdout.write(`${JSON.stringify(model, null, 2)}\n`);
      return EXIT_CODES.ok.code;
    } catch (error) {
      if (!(error instanceof IncompleteError)) throw error;
      io.stderr.write(`${file.name}: ${error.message}\n`);
      return EXIT_CODES.planErrors.code;
    }
  },
});
