/** A cohort as a table: a row for each goal of each player, that spreadsheets can open without harm. */
import { csvLine } from "../../../shared/csv.ts";
import type { Cohort } from "../overview/cohort.ts";

const HEADER = ["player", "date", "session", "block", "goal", "verdict", "observed"];

/** The observed number as people read it. RFC 4180. */
export function cohortCsv({ goals, players }: Cohort): string {
  const rows = players.flatMap(({ name, latest, results }) =>
    goals.map(({ block, text }, place) => {
      const result = results[place] ?? null;
      return [name, latest.date ?? "", latest.name, block, text, result?.verdict ?? "", result?.brief ?? ""];
    }),
  );
  return [HEADER, ...rows].map((row) => `${csvLine(row)}\r\n`).join("");
}
