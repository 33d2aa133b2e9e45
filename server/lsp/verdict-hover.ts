/** What a goal means and how it came out, where its verdict is not shown on its line anyway. */
import type { LangiumDocument } from "langium";
import type { Hover, HoverParams, Position } from "vscode-languageserver";
import { list, paragraphs, plain } from "../../language/editor/descriptions/markdown.ts";
import type { DrillwrightEditorServices } from "../../language/editor/editor-module.ts";
import { DrillwrightHoverProvider } from "../../language/editor/hover-provider.ts";
import type { CriterionResult } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";
import { details, leads } from "./evidence.ts";
import type { ScoredSession } from "./scorer.ts";
import type { Scores } from "./scores.ts";

export class VerdictHover extends DrillwrightHoverProvider {
  private readonly scores: () => Scores | undefined;
  /** Whether a verdict is to be seen in a file, and not as a diagnostic, which every editor shows by itself. */
  private readonly isWanted: (uri: string, criterion: CriterionResult) => boolean;

  constructor(
    services: DrillwrightEditorServices,
    scores: () => Scores | undefined,
    isWanted: (uri: string, criterion: CriterionResult) => boolean,
  ) {
    super(services);
    this.scores = scores;
    this.isWanted = isWanted;
  }

  override getHoverContent(document: LangiumDocument, params: HoverParams): Hover | undefined {
    const hover = super.getHoverContent(document, params);
    const uri = document.uri.toString();
    const evidence = this.evidenceAt(uri, params.position);
    const worth = this.worthAt(uri, params.position);
    if (evidence === undefined && worth === undefined) return hover;
    const contents = hover?.contents;
    const own = typeof contents === "object" && "value" in contents ? contents.value : undefined;
    return {
      ...hover,
      contents: { kind: "markdown", value: paragraphs(own, evidence, worth && plain(worth)) },
    };
  }

  /** What a degree is worth there, where the line is a target or a goal of a plan that was scored. */
  private worthAt(uri: string, position: Position): string | undefined {
    for (const { session } of this.scores()?.current().plans ?? []) {
      for (const { name, targets, criteria } of session?.report.blocks ?? []) {
        const isHere = ({ location }: Pick<CriterionResult, "location">) =>
          location.file === uri && contains(location.range, position);
        const metrics = targets.find(isHere)?.metrics ?? criteria.find(isHere)?.evidence.metrics;
        if (session !== undefined && metrics !== undefined) return session.whatIf(name, metrics);
      }
    }
    return undefined;
  }

  private evidenceAt(uri: string, position: Position): string | undefined {
    for (const { session } of this.scores()?.current().plans ?? []) {
      const criterion = session?.report.blocks
        .flatMap(({ criteria }) => criteria)
        .find(({ location: { file, range } }) => file === uri && contains(range, position));
      if (session !== undefined && criterion !== undefined && this.isWanted(uri, criterion))
        return evidenceText(criterion, session);
    }
    return undefined;
  }
}

function evidenceText({ verdict, evidence }: CriterionResult, { readingsAt }: ScoredSession): string {
  const { observed, required, rows, metrics } = evidence;
  const outcome = `**${inWords(verdict)}**: ${plain(observed)} (required: ${plain(required)})`;
  const places = leads(rows, metrics, readingsAt).map(
    ({ location: { file, range }, text }) => `[${plain(text)}](${file}#L${range.start.line + 1})`,
  );
  return paragraphs(outcome, details(evidence).map(plain).join("  \n"), list(places));
}

function contains(
  { start, end }: CriterionResult["location"]["range"],
  { line, character }: Position,
): boolean {
  const isAfterStart = line > start.line || (line === start.line && character >= start.character);
  return isAfterStart && (line < end.line || (line === end.line && character <= end.character));
}
