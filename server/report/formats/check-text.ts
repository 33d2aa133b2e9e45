/** Findings in `.drill` files as text for people: each with the line it is about. */
import { pluralUnlessNone } from "../../../shared/plural.ts";
import type { Finding, FindingSeverity } from "../check-report.ts";
import { excerpt } from "../excerpt.ts";
import type { Palette } from "../palette.ts";
import { printable } from "../printable.ts";

/** What is shown of a file. */
export interface FoundIn {
  readonly text: string;
  readonly findings: readonly Finding[];
}

/**
 * Every finding with its place, its line and what it says; a blank line between two. Ends with a line end, or is empty.
 *
 * ```
 * plans/irons.drill:12:14 error hits-must-not-exceed-shots
 *    12 |     at least 12 of 10 shots on target
 *       |              ^^
 *   12 of 10 shots is more hits than shots. Ask for at most 10.
 * ```
 */
export function findingsText(files: readonly FoundIn[], palette: Palette): string {
  return files
    .flatMap(({ text, findings }) => findings.map((finding) => findingText(finding, text, palette)))
    .map((lines) => `${lines.join("\n")}\n`)
    .join("\n");
}

function findingText(
  { file, range, severity, code, message }: Finding,
  text: string,
  palette: Palette,
): string[] {
  const { line, character } = range.start;
  const place = palette.strong(printable(`${file}:${line + 1}:${character + 1}`));
  return [
    `${place} ${paintOf(severity, palette)(severity)} ${palette.faint(printable(code))}`,
    ...excerpt(text, range, palette),
    `  ${printable(message)}`,
  ];
}

function paintOf(severity: FindingSeverity, palette: Palette) {
  return severity === "error" ? palette.bad : severity === "warning" ? palette.open : palette.faint;
}

/** How many findings of each severity. */
export function countFindings(findings: readonly Finding[]) {
  const count = (wanted: FindingSeverity) => findings.filter(({ severity }) => severity === wanted).length;
  return { errors: count("error"), warnings: count("warning"), hints: count("hint") };
}

/** `3 files checked: 2 errors and 1 warning.`, or `3 files checked, nothing found.` */
export function checkSummary(findings: readonly Finding[], files: number): string {
  const { errors, warnings, hints } = countFindings(findings);
  const counted = [
    pluralUnlessNone(errors, "error"),
    pluralUnlessNone(warnings, "warning"),
    pluralUnlessNone(hints, "hint"),
  ].filter((part) => part !== undefined);
  const inFiles = pluralUnlessNone(files, "file") ?? "no file";
  if (counted.length === 0) return `${inFiles} checked, nothing found.`;
  const list = counted.length === 1 ? counted[0] : `${counted.slice(0, -1).join(", ")} and ${counted.at(-1)}`;
  return `${inFiles} checked: ${list}.`;
}
