/** What the statement at the cursor speaks of, read from its words, since its tree is not finished yet. */
import type { Lexer } from "langium";
import { Dimension, isDimension, isMetric, Metric } from "../../generated/tree/ast.ts";
import type { NamedNode, NamedType } from "../../names/name-table.ts";
import type { Names } from "../../names/names.ts";
import { TIME } from "../../types/units.ts";
import type { DrillwrightEditorServices } from "../editor-module.ts";
import type { Place } from "./place.ts";

export class Subjects {
  private readonly lexer: Lexer;
  private readonly names: Names;

  constructor(services: DrillwrightEditorServices) {
    this.lexer = services.parser.Lexer;
    this.names = services.names.Names;
  }

  /** The metric whose amounts are written here: the last one named in the statement, or the one being declared. */
  metric(place: Place): Metric | undefined {
    const named = this.words(place.statement).reverse();
    return this.first(place, Metric.$type, [...named, ...this.declared(place, "metric")], isMetric);
  }

  /** The dimension of the amounts that are written here; undefined where any will do. */
  dimension(place: Place): Dimension | undefined {
    const [start] = this.words(place.statement);
    if (start === "formula") return undefined;
    if (start === "time") return this.first(place, Dimension.$type, [TIME], isDimension);
    if (start === "unit")
      return this.first(place, Dimension.$type, this.declared(place, "dimension"), isDimension);
    return this.metric(place)?.dimension?.ref;
  }

  /** Whether a side can be said of the amount that ends here: not of a tolerance, and not of a spread. */
  hasSide({ statement }: Place): boolean {
    const isTolerance = /\bwithin\s*(±|\+\/-)?\s*[\d.]+\s*[^\s\d]*\s*$/u.test(statement);
    return !isTolerance && !this.words(statement).includes("spread");
  }

  private words(text: string): string[] {
    return this.lexer.tokenize(text, { mode: "partial" }).tokens.map(({ image }) => image);
  }

  /** The name in an opening such as `metric tempo is ratio {`. */
  private declared({ opening }: Place, keyword: string): string[] {
    const [start, name] = this.words(opening);
    return start === keyword && name !== undefined ? [name] : [];
  }

  private first<T extends NamedNode>(
    { document }: Place,
    type: NamedType,
    candidates: readonly string[],
    is: (node: unknown) => node is T,
  ): T | undefined {
    for (const name of candidates) {
      const node = this.names.find(document, type, name)[0];
      if (is(node)) return node;
    }
    return undefined;
  }
}
