/** What `score` prints, by format. */
import type { ScoreReport } from "../../shared/score-report.ts";
import type { Palette } from "../report/palette.ts";
import type { ReportedSession } from "../report/reported-session.ts";
import type { NotScored, ScoreOutput } from "../report/score-output.ts";
import { COMPLETE, SHORT } from "../report/sections.ts";
import { errorsIn } from "./plan-errors.ts";
import type { Scored } from "./score-sessions.ts";

export type ScoreFormat = "text" | "json" | "markdown" | "junit" | "sarif";

export interface Look {
  readonly palette: Palette;
  readonly allRows: boolean;
  /** The version of this tool. */
  readonly version: string;
}

/** Writes sessions while they are scored: those of a season are not held until the last of them is. */
export interface ScoreWriter {
  /** What is to be printed when this session was scored, after those before it. */
  session(session: ReportedSession): string;
  /** What is to be printed in the end. */
  end(rest: Pick<Scored, "notScored" | "broken">): string;
}

/** Each format is loaded when it is asked for. */
export async function scoreWriter(
  format: ScoreFormat,
  { palette, allRows, version }: Look,
): Promise<ScoreWriter> {
  const limits = allRows ? COMPLETE : SHORT;
  switch (format) {
    case "text": {
      const { reportText, underText } = await import("../report/formats/text.ts");
      return prose(
        (session) => reportText(session, palette, limits),
        (reports) => (reports.length === 0 ? "" : underText(reports, palette)),
      );
    }
    case "markdown": {
      const { reportMarkdown, underMarkdown } = await import("../report/formats/markdown.ts");
      return prose((session) => reportMarkdown(session, limits), underMarkdown);
    }
    case "junit": {
      const { reportsJunit } = await import("../report/formats/junit.ts");
      return atOnce(reportsJunit);
    }
    case "sarif": {
      const { reportsSarif } = await import("../report/formats/sarif.ts");
      return atOnce((reports, notScored) => reportsSarif(reports, notScored, version));
    }
    case "json":
      return json(version);
  }
}

/** One text after the other, a blank line between them. */
function prose(
  text: (session: ReportedSession) => string,
  under: (reports: readonly Pick<ScoreReport, "verdict">[]) => string,
): ScoreWriter {
  const reports: Pick<ScoreReport, "verdict">[] = [];
  const between = () => (reports.length === 0 ? "" : "\n");
  return {
    session(session) {
      const written = `${between()}${text(session)}`;
      reports.push({ verdict: session.report.verdict });
      return written;
    },
    end: () => `${between()}${under(reports)}`,
  };
}

function atOnce(
  write: (reports: readonly ScoreReport[], notScored: readonly NotScored[]) => string,
): ScoreWriter {
  const reports: ScoreReport[] = [];
  return {
    session({ report }) {
      reports.push(report);
      return "";
    },
    end: ({ notScored }) => write(reports, notScored),
  };
}

/** A `ScoreOutput`, laid out as if it were written at once: its reports go where an empty list of them ends. */
function json(version: string): ScoreWriter {
  let hasReports = false;
  const around = (rest: Pick<ScoreOutput, "notScored" | "errors">) => {
    const output: ScoreOutput = {
      format: "drillwright/score-output",
      version: 1,
      tool: version,
      reports: [],
      ...rest,
    };
    const text = JSON.stringify(output, null, 2);
    const place = text.indexOf("[") + 1;
    return [text.slice(0, place), text.slice(place)] as const;
  };
  return {
    session({ report }) {
      const start = hasReports ? "," : around({ notScored: [], errors: [] })[0];
      hasReports = true;
      return `${start}\n${JSON.stringify(report, null, 2).replace(/^/gm, "    ")}`;
    },
    end({ notScored, broken }) {
      const [start, end] = around({ notScored: [...notScored], errors: broken.flatMap(errorsIn) });
      return `${hasReports ? "\n  " : start}${end}\n`;
    },
  };
}
