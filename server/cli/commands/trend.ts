import { defineCommand } from "../command.ts";

export const trend = defineCommand({
  summary: "Show how a player stood in the sessions of a plan, one after the other.",
  operands: { usage: "[FILE|FOLDER ...]", least: 0, most: Infinity },
  description: [
    "Scores the sessions as `drillwright score` does and puts them in the order of their dates: the verdict on every goal, and the averages of what goals look at, with their intervals.",
    "Exits with 3 where errors in a text keep a session from being scored, with 4 where unreadable data does, else with 0: what the verdicts are makes no difference here.",
  ],
  options: {
    plan: {
      kind: "text",
      placeholder: "NAME",
      meaning: "Sessions of the plan of that name. Needed where the sessions practised several.",
    },
    player: {
      kind: "text",
      placeholder: "NAME",
      meaning: "Sessions of the player of that name. Needed where the sessions are of several.",
    },
    format: {
      kind: "choice",
      choices: ["text", "json", "csv"],
      default: "text",
      meaning:
        "text for people; json by the schema that `drillwright schema trend` prints; csv for spreadsheets.",
    },
  },
  examples: [["trend sessions --plan Irons --player P-07", "a player's way through a plan"]],
  async run({ operands, options, palette, errorPalette }, io) {
    const { ofPlayer, scorePlan } = await import("../score-plan.ts");
    const { scoreExitCode } = await import("../score-exit.ts");
    const { toolVersion } = await import("../../node/version.ts");
    const version = toolVersion();
    const isLookedAt = (player: string) => (options.player ?? player) === player;
    const scored = await scorePlan(operands, options, io, { version, errorPalette }, isLookedAt);
    const sessions = ofPlayer(scored, options.player);
    const [first] = sessions;
    if (first !== undefined) {
      const { trendOf } = await import("../../report/overview/trend.ts");
      const found = trendOf(sessions, version);
      if (options.format === "json") io.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
      else if (options.format === "csv") {
        io.stdout.write((await import("../../report/formats/trend-csv.ts")).trendCsv(found));
      } else {
        const { trendText } = await import("../../report/formats/trend-text.ts");
        const { input } = first;
        const reading = { metrics: input.metrics, hand: input.player.hand ?? ("right" as const) };
        io.stdout.write(trendText(found, reading, palette));
      }
    }
    return scoreExitCode(scored, "never");
  },
});
