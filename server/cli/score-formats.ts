/** What `score` prints, by format. */
import type { Palette } from "../report/palette.ts";
import type { ScoreOutput } from "../report/score-output.ts";
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

/** Each format is loaded when it is asked for. */
export async function scoredAs(
  format: ScoreFormat,
  scored: Scored,
  { palette, allRows, version }: Look,
): Promise<string> {
  const { sessions, notScored, broken } = scored;
  const reports = sessions.map(({ report }) => report);
  const limits = allRows ? COMPLETE : SHORT;
  switch (format) {
    case "text":
      return (await import("../report/formats/text.ts")).reportsText(sessions, palette, limits);
    case "markdown":
      return (await import("../report/formats/markdown.ts")).reportsMarkdown(sessions, limits);
    case "junit":
      return (await import("../report/formats/junit.ts")).reportsJunit(reports, notScored);
    case "sarif":
      return (await import("../report/formats/sarif.ts")).reportsSarif(reports, notScored, version);
    case "json": {
      const output: ScoreOutput = {
        format: "drillwright/score-output",
        version: 1,
        tool: version,
        reports,
        notScored: [...notScored],
        errors: broken.flatMap(errorsIn),
      };
      return `${JSON.stringify(output, null, 2)}\n`;
    }
  }
}
