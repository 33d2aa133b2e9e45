import { EXIT_CODES, type ExitCode } from "../../../shared/exit-codes.ts";
import type { Verdict } from "../../../shared/score-report.ts";
import type { ReportedSession } from "../../report/reported-session.ts";
import type { ScoreOutput } from "../../report/score-output.ts";
import { defineCommand } from "../command.ts";
import type { Scored } from "../score-sessions.ts";

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
      choices: ["text", "json"],
      default: "text",
      meaning: "text for people; json by the schema that `drillwright schema score-output` prints.",
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
    ["score --fail-on never", "everything in the working folder, for reading only"],
  ],
  async run({ operands, options, palette, errorPalette }, io) {
    const { openProject } = await import("../open-project.ts");
    const { chooseSessions } = await import("../choose-sessions.ts");
    const project = await openProject(operands, io);
    const chosen = chooseSessions(project, options);

    const { scoreSessions } = await import("../score-sessions.ts");
    const { toolVersion } = await import("../../node/version.ts");
    const version = toolVersion();
    const scored = await scoreSessions(project, chosen, io.cwd, { version });
    if (options.follow && scored.broken.length === 0) {
      const { follow, followAll } = await import("../follow-scores.ts");
      const { reportsText } = await import("../../report/formats/text.ts");
      const { SHORT } = await import("../../report/sections.ts");
      const followed = chosen.map(({ session }) => follow(session, project, io.cwd, version));
      return followAll(followed, (session) => {
        const text =
          options.format === "json"
            ? `${JSON.stringify(session.report)}\n`
            : reportsText([session], palette, SHORT);
        io.stdout.write(text);
      });
    }

    const { reportErrors, errorsIn } = await import("../plan-errors.ts");
    if (options.format === "json") {
      const output: ScoreOutput = {
        format: "drillwright/score-output",
        version: 1,
        tool: version,
        reports: scored.sessions.map(({ report }) => report),
        notScored: [...scored.notScored],
        errors: scored.broken.flatMap(errorsIn),
      };
      io.stdout.write(`${JSON.stringify(output, null, 2)}\n`);
    } else {
      const { reportsText } = await import("../../report/formats/text.ts");
      const { COMPLETE, SHORT } = await import("../../report/sections.ts");
      io.stdout.write(reportsText(scored.sessions, palette, options["all-rows"] ? COMPLETE : SHORT));
    }
    reportErrors(scored.broken, errorPalette, io);
    const { printable } = await import("../../report/printable.ts");
    for (const { session, location, message } of scored.notScored) {
      const line = `${location.file}:${location.range.start.line + 1} session "${session}" is not scored. ${message}`;
      io.stderr.write(`${printable(line)}\n`);
    }
    return exitCode(scored, options["fail-on"]);
  },
});

/** The gravest of what happened. */
function exitCode(
  { sessions, notScored, broken }: Scored,
  failOn: "missed" | "undecided" | "never",
): ExitCode {
  if (broken.length > 0 || notScored.some(({ reason }) => reason === "plan-errors")) {
    return EXIT_CODES.planErrors.code;
  }
  const isUnread = ({ report }: ReportedSession) =>
    report.findings.some(({ severity }) => severity === "error");
  if (notScored.length > 0 || sessions.some(isUnread)) return EXIT_CODES.dataUnreadable.code;
  return sessions.some(({ report }) => FAILING[failOn].has(report.verdict))
    ? EXIT_CODES.missed.code
    : EXIT_CODES.ok.code;
}

const FAILING: Readonly<Record<"missed" | "undecided" | "never", ReadonlySet<Verdict | null>>> = {
  missed: new Set(["missed"]),
  undecided: new Set(["missed", "undecided", "not-measured"]),
  never: new Set(),
};
