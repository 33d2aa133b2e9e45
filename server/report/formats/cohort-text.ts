/** A cohort as text for people. */

import { CAUTION } from "../../../shared/care.ts";
import { plural } from "../../../shared/plural.ts";
import type { Cohort } from "../overview/cohort.ts";
import type { Palette } from "../palette.ts";
import { printable } from "../printable.ts";
import { markWords } from "../section.ts";
import { tableLines } from "./table.ts";

export function cohortText({ plan, goals, players }: Cohort, palette: Palette): string {
  const lines = [
    palette.strong(
      printable(`${plural(players.length, "player")} of "${plan}", by the latest session of each`),
    ),
    ...tableLines(
      players.map(({ name, latest, sessions, verdict, results }) => [
        `  ${name}`,
        latest.date ?? "no date",
        verdict === null ? "no goals" : markWords(verdict),
        `${results.filter((result) => result?.verdict === "met").length} of ${plural(goals.length, "goal")} met`,
        plural(sessions, "session"),
      ]),
    ),
    "",
    ...goals.flatMap(({ block, text, standing }, place) => [
      `${palette.strong(printable(`${block}: ${text}`))}  met by ${standing.hits} of ${players.length}`,
      ...tableLines(
        players.map(({ name, results }) => {
          const result = results[place] ?? null;
          return [
            `  ${name}`,
            result === null ? "not a goal then" : markWords(result.verdict),
            result?.brief ?? "",
          ];
        }),
      ),
    ]),
    "",
    "Players are in the order of their names: one session each is too little for a rank.",
    CAUTION,
  ];
  return `${lines.join("\n")}\n`;
}
