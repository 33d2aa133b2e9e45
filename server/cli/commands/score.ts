import { defineCommand, UsageError } from "../command.ts";

export const score = defineCommand({
  summary: "Score practice sessions against their plans.",
  operands: { usage: "[FILE|FOLDER ...]", least: 0, most: Infinity },
  description: [
    "Scores every session that is declared in the files given and in the .drill files of the folders given; without any, in the working folder. --session and --plan choose among them.",
    "Exits with 3 where errors in a text keep a session from being scored, with 4 where unreadable data does, with 1 where a session misses its goals, else with 0. Undecided and unmeasured goals count as well when --fail-on is undecided.",
    "Nothing leaves this machine, and no file is changed.",
  ],
  options: {
    session: { kind: "text", placeholder: "NAME", meaning: "Only the session of that name." },
    plan: {
      kind: "text",
      placeholder: "NAME",
      meaning: "Only sessions that practised the plan of that name.",
    },
    format: {
      kind: "choice",
      choices: ["text", "json", "markdown", "junit", "sarif"],
      default: "text",
      meaning:
        "text for people; json by the schema that `drillwright schema score-output` prints; markdown for places that show it; junit (XML) and sarif (2.1.0) for programs that collect results.",
    },
    "fail-on": {
      kind: "choice",
      choices: ["missed", "undecided", "never"],
      default: "missed",
      meaning: "Which verdicts make the exit code 1.",
    },
    follow: {
      kind: "flag",
      meaning: "Go on, and score again whenever a table has a new row. Ends when it is interrupted.",
    },
    "all-rows": {
      kind: "flag",
      meaning: "List every row and every finding about the data, not only the first few.",
    },
  },
  examples: [
    ["score sessions/p-07-second-visit.drill", "the sessions of a file"],
    ["score sessions --plan Irons --format json", "for another program"],
    ["score sessions/today.drill --follow", "while somebody practises"],
    ["score --format junit > results.xml", "for a program that collects test results"],
    ["score --fail-on never", "everything in the working folder, for reading only"],
  ],
  async run({ operands, options, palette, errorPalette }, io) {
    const { follow: isFollowed, format } = options;
    if (isFollowed && format !== "text" && format !== "json") {
      throw new UsageError(
        `--follow shows a report for every new row, and --format ${format} has one for all. Use text or json.`,
      );
    }
    const { openProject } = await import("../open-project.ts");
    const { chooseSessions } = await import("../choose-sessions.ts");
    const project = await openProject(operands, io);
    const chosen = chooseSessions(project, options);

    const { brokenFiles, scoreSessions } = await import("../score-sessions.ts");
    const { toolVersion } = await import("../../node/version.ts");
    const version = toolVersion();
    if (isFollowed && brokenFiles(project, chosen).length === 0) {
      const { follow, followAll } = await import("../follow-scores.ts");
      const { reportsText } = await import("../../report/formats/text.ts");
      const { SHORT } = await import("../../report/sections.ts");
      const followed = chosen.map(({ session }) => follow(session, project, io.cwd, version));
      return followAll(followed, (session) => {
        const text =
          format === "json" ? `${JSON.stringify(session.report)}\n` : reportsText([session], palette, SHORT);
        io.stdout.write(text);
      });
    }

    const { scoreWriter } = await import("../score-formats.ts");
    const { outcomeOf, scoreExitCode } = await import("../score-exit.ts");
    const writer = await scoreWriter(format, { palette, allRows: options["all-rows"], version });
    const scored = await scoreSessions(project, chosen, io, { version }, (session) => {
      io.stdout.write(writer.session(session));
      return outcomeOf(session);
    });
    io.stdout.write(writer.end(scored));
    const { reportErrors } = await import("../plan-errors.ts");
    reportErrors(scored.broken, errorPalette, io);
    const { reportNotScored } = await import("../not-scored.ts");
    reportNotScored(scored.notScored, io);
    return scoreExitCode(scored, options["fail-on"]);
  },
});
