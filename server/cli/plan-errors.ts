/** Errors in the texts that keep a command from its work. */
import type { ProjectFile } from "../node/load-project.ts";
import type { Finding } from "../report/check-report.ts";
import { findingsText } from "../report/formats/check-text.ts";
import type { Palette } from "../report/palette.ts";
import type { Io } from "./io.ts";

export function errorsIn({ findings }: ProjectFile): Finding[] {
  return findings.filter(({ severity }) => severity === "error");
}

/** Shows the errors of these files on standard error. */
export function reportErrors(files: readonly ProjectFile[], palette: Palette, io: Io): void {
  const found = files.map((file) => ({
    text: file.document.textDocument.getText(),
    findings: errorsIn(file),
  }));
  io.stderr.write(findingsText(found, palette));
}
