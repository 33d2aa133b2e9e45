/** What the statement at the cursor speaks of, read from its words, since its tree is not finished yet. */
import type { Lexer } from "langium";
import { Dimension, isDimension, isMetric, Metric, type Parameter } from "../../generated/tree/ast.ts";
import type { NamedNode, NamedType } from "../../names/name-table.ts";
import type { Names } from "../../names/names.ts";
import { combine, sameDimension, vectorOf } from "../../types/dimensions.ts";
import { TIME } from "../../types/units.ts";
import type { DrillwrightEditorServices } from "../editor-module.ts";
import { openUse } from "./drills.ts";
import type { Place } from "./place.ts";

/** The dimension of the amounts of statements that speak of no metric, by the word they begin with. */
const CIRCUMSTANCES: Readonly<Record<string, string>> = {
  time: TIME,
  review: TIME,
  wind: "speed",
  temperature: "air-temperature",
  pressure: "air-pressure",
  altitude: "length",
};

/** The words of amounts that are no place on the metric's scale. */
const WIDTHS: ReadonlySet<string> = new Set(["spread", "spans", "ellipse", "reads"]);
const CHANGES: ReadonlySet<string> = new Set(["gains", "loses", "rises", "falls", "stays"]);

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
    const words = this.words(place.statement);
    const [start = ""] = words;
    if (start === "formula") return undefined;
    const parameter = this.parameter(place, words);
    if (parameter !== undefined) return this.first(place, Dimension.$type, [parameter], isDimension);
    const circumstance = CIRCUMSTANCES[start];
    if (circumstance !== undefined) return this.first(place, Dimension.$type, [circumstance], isDimension);
    if (start === "unit")
      return this.first(place, Dimension.$type, this.declared(place, "dimension"), isDimension);
    if (words.includes("ellipse") && words.includes("area")) return this.area(place, words);
    return this.metric(place)?.dimension?.ref;
  }

  /** Whether the amount may also be a share of what there was: a change. */
  mayBeShare({ statement }: Place): boolean {
    return this.words(statement).some((word) => CHANGES.has(word));
  }

  /** Whether a side can be said of the amount that ends here: not of a tolerance, a spread or a change. */
  hasSide({ statement }: Place): boolean {
    const words = this.words(statement);
    const isTolerance = /\bwithin\s*(±|\+\/-)?\s*[\d.]+\s*[^\s\d]*\s*$/u.test(statement);
    return !isTolerance && !words.some((word) => WIDTHS.has(word) || CHANGES.has(word));
  }

  /** Whether the value that is being given to a parameter is a club; undefined where none is given to one that is known. */
  wantsClub(place: Place): boolean | undefined {
    const words = this.words(place.statement);
    const equals = words.lastIndexOf("=");
    if (words[equals - 2] === ":") return words[equals - 1] === "club";
    return this.parameterCalled(place, words[equals - 1])?.isClub;
  }

  private parameterCalled(place: Place, name: string | undefined): Parameter | undefined {
    const parameters = openUse(place.statement, place.document, this.names)?.drill.parameters;
    return parameters?.find((parameter) => parameter.name === name);
  }

  /** The name of the dimension of the parameter whose value is being given: `width = …`, `width: angle = …`. */
  private parameter(place: Place, words: readonly string[]): string | undefined {
    const equals = words.lastIndexOf("=");
    if (equals < 1 || words.length - equals > 3) return undefined;
    if (words[equals - 2] === ":") return words[equals - 1];
    return this.parameterCalled(place, words[equals - 1])?.dimension?.$refText;
  }

  /** The dimension of the product of the two metrics of an ellipse. */
  private area(place: Place, words: readonly string[]): Dimension | undefined {
    const [second, first] = words.toReversed().flatMap((word) => {
      const metric = this.first(place, Metric.$type, [word], isMetric)?.dimension?.ref;
      return metric === undefined ? [] : [metric];
    });
    if (first === undefined || second === undefined) return undefined;
    const product = combine(vectorOf(first), vectorOf(second), 1);
    return [...this.names.visible(place.document, Dimension.$type)]
      .filter(isDimension)
      .find((dimension) => sameDimension(vectorOf(dimension), product));
  }

  private words(text: string): string[] {
    return this.lexer.tokenize(text, { mode: "partial" }).tokens.map(({ image }) => image);
  }

  /** The name in an opening such as `metric tempo is ratio {`. */
  private declared({ openings }: Place, keyword: string): string[] {
    const [start, name] = this.words(openings.at(-1) ?? "");
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
