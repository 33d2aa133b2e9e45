import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { defineCommand, UsageError } from "../command.ts";
import { STDIN, STDIN_FILENAME } from "../stdin.ts";
import { assertWritable, OUTPUT, writeOutput } from "../write-output.ts";

export const card = defineCommand({
  summary: "Write a card to take to the range: a plan on a printed page or two.",
  operands: { usage: "FILE|-", least: 1, most: 1 },
  description: [
    "Writes a page for each plan of the file: its blocks in order with a box for every shot, what to think of, what is aimed at, what counts as done, and what to take care of. It stands for itself and prints on a page or two.",
    "A file with errors, or one that uses a file with errors, has no card: the errors are shown, and the exit code is 3.",
  ],
  options: {
    ...OUTPUT,
    plan: { kind: "text", placeholder: "NAME", meaning: "Only the plan of that name." },
    "stdin-filename": STDIN_FILENAME,
  },
  examples: [["card plans/irons.drill --output irons.html", "to be printed"]],
  async run({ operands: [operand = STDIN], options, errorPalette }, io) {
    assertWritable(options, io);
    const { openModel } = await import("../open-model.ts");
    const opened = await openModel(operand, io, options["stdin-filename"], errorPalette);
    if (opened === undefined) return EXIT_CODES.planErrors.code;
    const declared = opened.model.plans.filter(({ location }) => location.file === opened.file);
    const plans = declared.filter(({ name }) => options.plan === undefined || name === options.plan);
    if (plans.length === 0) {
      const { didYouMean, thereAre } = await import("../parse-arguments.ts");
      const names = declared.map(({ name }) => name);
      throw new UsageError(
        options.plan === undefined
          ? `${opened.file} declares no plan. Give the file of a plan: plan "Name" { … }.`
          : `${opened.file} declares no plan "${options.plan}".${didYouMean(options.plan, names)}${thereAre(names)}`,
      );
    }
    const { cardsHtml } = await import("../../report/card/card.ts");
    writeOutput(cardsHtml(plans), options, opened.files, io);
    return EXIT_CODES.ok.code;
  },
});
