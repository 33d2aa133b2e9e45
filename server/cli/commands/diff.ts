import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import type { PlanDiff } from "../../report/diff/plan-diff.ts";
import { defineCommand, UsageError } from "../command.ts";
import { STDIN, STDIN_FILENAME } from "../stdin.ts";

export const diff = defineCommand({
  summary: "Tell how the plans of two files differ in what they mean.",
  operands: { usage: "OLD NEW", least: 2, most: 2 },
  description: [
    "Compares goals, targets, tolerances, shots and all else that plans say. Layout, comments, order of declarations and other ways to say the same make no difference; what a drill says is compared in the blocks that use it. Plans and blocks are known by their names.",
    "git:REVISION:PATH is the file as a commit has it, and `-` reads standard input; what such a text uses is read from the working folder.",
    "Exits with 1 where the plans differ, with 3 where a file has errors, else with 0.",
  ],
  options: {
    format: {
      kind: "choice",
      choices: ["text", "json"],
      default: "text",
      meaning: "text for people; json by the schema that `drillwright schema plan-diff` prints.",
    },
    "stdin-filename": STDIN_FILENAME,
  },
  examples: [
    ["diff plans/irons.drill plans/irons-easier.drill", "two files"],
    ["diff git:HEAD:plans/irons.drill plans/irons.drill", "what was changed since the last commit"],
  ],
  async run({ operands: [old = STDIN, now = STDIN], options, palette, errorPalette }, io) {
    if (old === STDIN && now === STDIN) throw new UsageError("Only one of the two can be standard input.");
    const { modelOf, folderGiven, openModel } = await import("../open-model.ts");
    const { isRevision, revisionText } = await import("../revision-text.ts");
    const open = async (operand: string) => {
      if (!isRevision(operand)) return openModel(operand, io, options["stdin-filename"], errorPalette);
      const { loadProject } = await import("../../node/load-project.ts");
      const project = await loadProject([await revisionText(operand, io.cwd)], io.cwd);
      return modelOf(project, io, errorPalette, folderGiven(operand));
    };
    const [before, after] = [await open(old), await open(now)];
    if (before === undefined || after === undefined) return EXIT_CODES.planErrors.code;

    const { differencesBetween } = await import("../../report/diff/compare.ts");
    const { toolVersion } = await import("../../node/version.ts");
    const own = ({ model, file }: typeof before) =>
      model.plans.filter(({ location }) => location.file === file);
    const report: PlanDiff = {
      format: "drillwright/plan-diff",
      version: 1,
      tool: toolVersion(),
      old,
      new: now,
      differences: differencesBetween(own(before), own(after)),
    };
    const { diffText } = await import("../../report/formats/diff-text.ts");
    io.stdout.write(
      options.format === "json" ? `${JSON.stringify(report, null, 2)}\n` : diffText(report, palette),
    );
    return report.differences.length > 0 ? EXIT_CODES.missed.code : EXIT_CODES.ok.code;
  },
});
