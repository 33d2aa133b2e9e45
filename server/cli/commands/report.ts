import { defineCommand } from "../command.ts";
import { assertWritable, OUTPUT, writeOutput } from "../write-output.ts";

export const report = defineCommand({
  summary: "Write a report on practice sessions: for the player first, with pictures.",
  operands: { usage: "[FILE|FOLDER ...]", least: 0, most: Infinity },
  description: [
    "Scores the sessions as `drillwright score` does and writes one report on them. html is a page that stands for itself: it needs no network and no other file, and prints well.",
    "Exits with 3 where errors in a text keep a session from being scored, with 4 where unreadable data does, else with 0: what the verdicts are makes no difference here.",
  ],
  options: {
    ...OUTPUT,
    session: { kind: "text", placeholder: "NAME", meaning: "Only the session of that name." },
    plan: {
      kind: "text",
      placeholder: "NAME",
      meaning: "Only sessions that practised the plan of that name.",
    },
    format: {
      kind: "choice",
      choices: ["html", "markdown"],
      default: "html",
      meaning: "A page, or text for places that show Markdown.",
    },
    "all-rows": {
      kind: "flag",
      meaning: "List every row and every finding about the data, not only the first few.",
    },
  },
  examples: [
    ["report sessions/p-07-second-visit.drill --output p-07.html", "a page for the player"],
    ["report sessions --plan Irons --format markdown", "for a place that shows Markdown"],
  ],
  async run({ operands, options, errorPalette }, io) {
    assertWritable(options, io);
    const { openProject } = await import("../open-project.ts");
    const { chooseSessions } = await import("../choose-sessions.ts");
    const project = await openProject(operands, io);
    const chosen = chooseSessions(project, options);

    const { scoreSessions } = await import("../score-sessions.ts");
    const { toolVersion } = await import("../../node/version.ts");
    const scored = await scoreSessions(project, chosen, io, { version: toolVersion() }, (session) => session);
    if (scored.sessions.length > 0) {
      const { COMPLETE, SHORT } = await import("../../report/sections.ts");
      const limits = options["all-rows"] ? COMPLETE : SHORT;
      const text =
        options.format === "html"
          ? (await import("../../report/formats/html.ts")).reportsHtml(scored.sessions, limits)
          : (await import("../../report/formats/markdown.ts")).reportsMarkdown(scored.sessions, limits);
      const tables = scored.sessions.flatMap((session) => session.report.data.map(({ file }) => file));
      writeOutput(text, options, [...project.files.map(({ name }) => name), ...tables], io);
    }
    const { reportErrors } = await import("../plan-errors.ts");
    const { reportNotScored } = await import("../not-scored.ts");
    reportErrors(scored.broken, errorPalette, io);
    reportNotScored(scored.notScored, io);
    const { scoreExitCode } = await import("../score-exit.ts");
    return scoreExitCode(scored, "never");
  },
});
