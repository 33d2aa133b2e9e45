import { defineCommand } from "../command.ts";

export const cohort = defineCommand({
  summary: "Show where every player of a plan stands.",
  operands: { usage: "[FILE|FOLDER ...]", least: 0, most: Infinity },
  description: [
    "Scores the sessions as `drillwright score` does and takes the latest of each player: which goals of the plan each has met, and of how many players each goal is met.",
    "Exits with 3 where errors in a text keep a session from being scored, with 4 where unreadable data does, else with 0: what the verdicts are makes no difference here.",
  ],
  options: {
    plan: {
      kind: "text",
      placeholder: "NAME",
      meaning: "Sessions of the plan of that name. Needed where the sessions practised several.",
    },
    format: {
      kind: "choice",
      choices: ["text", "json", "csv"],
      default: "text",
      meaning:
        "text for people; json by the schema that `drillwright schema cohort` prints; csv for spreadsheets.",
    },
  },
  examples: [["cohort sessions --plan Irons", "all players of a plan"]],
  async run({ operands, options, palette, errorPalette }, io) {
    const { scorePlan } = await import("../score-plan.ts");
    const { scoreExitCode } = await import("../score-exit.ts");
    const { toolVersion } = await import("../../node/version.ts");
    const version = toolVersion();
    const scored = await scorePlan(operands, options, io, { version, errorPalette }, () => false);
    if (scored.sessions.length > 0) {
      const { cohortOf } = await import("../../report/overview/cohort.ts");
      const found = cohortOf(scored.sessions, version);
      if (options.format === "json") io.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
      else if (options.format === "csv") {
        io.stdout.write((await import("../../report/formats/cohort-csv.ts")).cohortCsv(found));
      } else {
        io.stdout.write((await import("../../report/formats/cohort-text.ts")).cohortText(found, palette));
      }
    }
    return scoreExitCode(scored, "never");
  },
});
