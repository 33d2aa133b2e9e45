import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { plural } from "../../../shared/plural.ts";
import { defineCommand, UsageError } from "../command.ts";
import { STDIN, STDIN_FILENAME } from "../stdin.ts";

export const format = defineCommand({
  summary: "Lay out plans and sessions, so that a change shows what it means.",
  operands: { usage: "[FILE|FOLDER|- ...]", least: 0, most: Infinity },
  description: [
    "Rewrites the files given and all .drill files in the folders given in the one layout of the language; without any, those of the working folder. Only white space changes. What cannot be read because of a mistake stays as it is. `-` reads standard input and writes the laid out text to standard output.",
    "With --check nothing is written: files that are not laid out are listed, and the exit code is 1 where there are any.",
  ],
  options: {
    check: { kind: "flag", meaning: "Only list the files that are not laid out." },
    "stdin-filename": STDIN_FILENAME,
  },
  examples: [
    ["format", "everything in the working folder"],
    ["format plans --check", "in a build, to keep a team's files alike"],
    ["format -", "what an editor pipes in"],
  ],
  async run({ operands, options, palette }, io) {
    if (operands.includes(STDIN) && operands.some((operand) => operand !== STDIN) && !options.check) {
      throw new UsageError(
        "`-` writes to standard output and files are rewritten: lay out one or the other.",
      );
    }
    const { openProject } = await import("../open-project.ts");
    const project = await openProject(operands, io, { stdinFilename: options["stdin-filename"] });
    const files = project.files
      .filter(({ isGiven, findings }) => isGiven && !findings.some(({ code }) => code === "unreadable"))
      .map((file) => ({
        ...file,
        text: file.document.textDocument.getText(),
        laidOut: project.laidOut(file),
      }));
    const unreadable = project.files.flatMap(({ findings }) =>
      findings.filter(({ code }) => code === "unreadable"),
    );
    for (const { file, message } of unreadable) io.stderr.write(`${file}: ${message}\n`);

    if (operands.includes(STDIN) && !options.check) {
      const { pathOfName } = await import("../../node/path-names.ts");
      const path = pathOfName(options["stdin-filename"], io.cwd);
      for (const { document, laidOut } of files) if (document.uri.fsPath === path) io.stdout.write(laidOut);
      return unreadable.length > 0 ? EXIT_CODES.planErrors.code : EXIT_CODES.ok.code;
    }
    const changed = files.filter(({ text, laidOut }) => text !== laidOut);
    const { writeWhole } = await import("../../node/writing.ts");
    for (const { name, document, laidOut } of changed) {
      if (!options.check) writeWhole(document.uri.fsPath, laidOut, io.cwd);
      io.stdout.write(`${name}\n`);
    }
    if (files.length === 0) return EXIT_CODES.planErrors.code; // none could be read, as was said
    const what = options.check ? "not laid out" : "laid out anew";
    io.stdout.write(
      `${palette.strong(`${plural(files.length, "file")} looked at, ${changed.length === 0 ? "all were laid out" : `${changed.length} ${what}`}.`)}\n`,
    );
    if (unreadable.length > 0) return EXIT_CODES.planErrors.code;
    return options.check && changed.length > 0 ? EXIT_CODES.missed.code : EXIT_CODES.ok.code;
  },
});
