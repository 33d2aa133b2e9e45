/** Flights of a table for people: a line each. */
import { plural } from "../../../shared/plural.ts";
import type { Estimate } from "../../flight/estimate.ts";
import { printable } from "../../report/printable.ts";
import type { StatedAir } from "./conditions.ts";
import type { LaunchEstimates } from "./estimates.ts";
import { airWords, closing, shown, table, uncertaintyWords, type Words } from "./words.ts";

export function tableText(all: readonly LaunchEstimates[], air: StatedAir, words: Words): string {
  const { palette } = words;
  const header = ["line", "carry", "±", "offline", "curve", "apex", "descent", "time"];
  const hasStandard = all.some(({ standardCarry }) => standardCarry !== null);
  const hasEfficiency = all.some(({ launchEfficiency }) => launchEfficiency !== null);
  const rows = all.map(({ stated, flight, standardCarry, launchEfficiency }) => [
    `${stated.line ?? ""}`,
    cell(flight.carry, "carry", words),
    flight.carry.status === "not-measured" ? "" : uncertaintyWords(flight.carry, "carry", words),
    cell(flight.offline, "offline", words),
    cell(flight.curve, "curve", words),
    cell(flight.apex, "apex", words),
    cell(flight["descent-angle"], "descent-angle", words),
    cell(flight["flight-time"], "flight-time", words),
    ...(hasStandard ? [standardCarry === null ? "" : cell(standardCarry, "carry", words)] : []),
    ...(hasEfficiency
      ? [launchEfficiency === null ? "" : cell(launchEfficiency, "launch-efficiency", words)]
      : []),
    flight.carry.status === "extrapolated" ? "!" : flight.carry.status === "not-measured" ? "–" : "",
  ]);
  const names = [
    ...header,
    ...(hasStandard ? ["standard"] : []),
    ...(hasEfficiency ? ["efficiency"] : []),
    "",
  ];
  const widths = names.map((name, column) =>
    Math.max(...[name, ...rows.map((row) => row[column] ?? "")].map(({ length }) => length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((text, column) => text.padStart(widths[column] ?? 0))
      .join("  ")
      .trimEnd();
  const lines = [
    palette.strong(`${plural(all.length, "flight")}, estimated`),
    ...table([["air", airWords(air)]]),
    "",
    palette.faint(line(names)),
    ...rows.map(line),
    ...remarkLines(all),
    "",
    ...closing(false, words),
  ];
  return `${lines.join("\n")}\n`;
}

/** What of a table was extrapolated, not computed, or could not be read, and why: a line for each reason. */
function remarkLines(all: readonly LaunchEstimates[]): string[] {
  const lines = new Map<string, number[]>();
  const note = (text: string, line: number | null) =>
    lines.set(text, [...(lines.get(text) ?? []), line ?? 0]);
  for (const { stated, flight } of all) {
    for (const problem of stated.problems) note(problem, stated.line);
    const { carry } = flight;
    if (carry.status === "not-measured") note(carry.reason, stated.line);
    else if (carry.warning !== null) note(`! ${carry.warning}`, stated.line);
  }
  const remarks = [...lines].map(([text, places]) => {
    const first = places.slice(0, 8).join(", ");
    const more = places.length > 8 ? ` and ${places.length - 8} more` : "";
    return printable(`${places.length === 1 ? "line" : "lines"} ${first}${more}: ${text}`);
  });
  return remarks.length === 0 ? [] : ["", ...remarks];
}

function cell(estimate: Estimate, name: string, words: Words): string {
  return estimate.status === "not-measured" ? "–" : shown(name, estimate.value, words);
}
