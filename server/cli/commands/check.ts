import { FAULT_CODE, SEVERITIES } from "../../../language/checks/check.ts";
import { EXIT_CODES, type ExitCode } from "../../../shared/exit-codes.ts";
import type { CheckReport, Finding } from "../../report/check-report.ts";
import { defineCommand } from "../command.ts";
import { STDIN_FILENAME } from "../stdin.ts";

export const check = defineCommand({
  summary: "Look for mistakes in plans and sessions.",
  operands: { usage: "[FILE|FOLDER|- ...]", least: 0, most: Infinity },
  description: [
    "Checks the files given and all .drill files in the folders given, and the files they use; without any, the working folder. Folders whose name begins with a dot, node_modules and dist are left out. `-` reads standard input.",
    "Exits with 3 where a file has errors, with 1 where there are warnings and --fail-on is warning, else with 0.",
  ],
  options: {
    format: {
      kind: "choice",
      choices: ["text", "json"],
      default: "text",
      meaning: "text for people; json by the schema that `drillwright schema check-report` prints.",
    },
    "fail-on": {
      kind: "choice",
      choices: ["error", "warning", "never"],
      default: "error",
      meaning: "The least severity that makes the exit code other than 0.",
    },
    "stdin-filename": STDIN_FILENAME,
  },
  examples: [
    ["check", "everything in the working folder"],
    ["check plans --fail-on warning", "a folder, and warnings count"],
    ["check - --stdin-filename plans/irons.drill", "what an editor pipes in"],
  ],
  async run({ operands, options, palette }, io) {
    const { openProject } = await import("../open-project.ts");
    const { files } = await openProject(operands, io, {
      stdinFilename: options["stdin-filename"],
      severities: SEVERITIES,
    });
    const findings = files.flatMap((file) => file.findings);
    const { checkSummary, countFindings, findingsText } = await import("../../report/formats/check-text.ts");
    if (options.format === "json") {
      const { toolVersion } = await import("../../node/version.ts");
      const report: CheckReport = {
        format: "drillwright/check-report",
        version: 1,
        tool: toolVersion(),
        files: files.map(({ name }) => name),
        findings,
        counts: countFindings(findings),
      };
      io.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
    } else {
      const found = files.map((file) => ({
        text: file.document.textDocument.getText(),
        findings: file.findings,
      }));
      const text = findingsText(found, palette);
      const summary = palette.strong(checkSummary(findings, files.length));
      io.stdout.write(`${text === "" ? "" : `${text}\n`}${summary}\n`);
    }
    return exitCode(findings, options["fail-on"]);
  },
});

/** What `check` answers for these findings. Our own fault goes before everything else. */
export function exitCode(findings: readonly Finding[], failOn: "error" | "warning" | "never"): ExitCode {
  if (findings.some(({ code }) => code === FAULT_CODE)) return EXIT_CODES.fault.code;
  const has = (severity: Finding["severity"]) => findings.some((finding) => finding.severity === severity);
  if (failOn === "never") return EXIT_CODES.ok.code;
  if (has("error")) return EXIT_CODES.planErrors.code;
  return failOn === "warning" && has("warning") ? EXIT_CODES.missed.code : EXIT_CODES.ok.code;
}
