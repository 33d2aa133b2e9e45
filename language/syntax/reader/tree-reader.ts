/**
 * What the reader that is written from the grammar (`language/generated/reader.ts`) is made of. It reads texts without a
 * mistake, to the very tree that the framework's parser makes, and gives every other text up: the parser explains it.
 */
import { type AstNode, type Grammar, type Reference, ValueConverter } from "langium";
import { TOKENS } from "../../generated/lookahead.ts";
import { DEEPEST, MOST_OPERATORS } from "../limits.ts";
import { type PlaceOfNode, type PlaceOfToken, Readings } from "./places.ts";
import type { Scan } from "./scan.ts";

/** A node while it is read, with all properties that its rule can give it. */
// biome-ignore lint/suspicious/noExplicitAny: the written methods know the properties of their nodes
export type Made = Record<string, any>;

/** What makes the references of a tree. */
export interface ReferenceMaker {
  buildReference(node: AstNode, property: string, place: PlaceOfNode | PlaceOfToken, text: string): Reference;
}

/** Thrown where a text is not read any further. */
export const GIVEN_UP = new Error("This text is left to the parser.");

const END_OF_FILE = TOKENS.indexOf("EOF");
/** What can be a name, and is none of a line before where it starts one. */
const NAMES = ["WORD", "effort"].map((name) => TOKENS.indexOf(name));

/** The number of a reading. */
export type Reading = number;

export abstract class TreeReader {
  /** The kinds of all tokens, of which that at `at` is next. */
  protected readonly kinds: readonly number[];
  protected at = 0;
  private readonly readings: Readings;
  private readonly references: ReferenceMaker;
  private depth = 0;
  /** Of the rule that ended last. */
  private last: Reading = 0;

  constructor(text: string, scan: Scan, references: ReferenceMaker, grammar: () => Grammar) {
    this.readings = new Readings(text, scan, grammar);
    this.kinds = scan.tokens.kinds;
    this.references = references;
  }

  /** The tree of the whole text. @throws GIVEN_UP */
  read(): AstNode {
    const root = this.linked(this.readDocument(0), 0);
    if (this.kinds[this.at] !== END_OF_FILE) throw GIVEN_UP;
    return root as unknown as AstNode;
  }

  protected abstract readDocument(whole: Reading): Made;

  /** Starts a rule within another. Its method closes it. */
  protected open(around: Reading, part: number): Reading {
    if (++this.depth >= DEEPEST) throw GIVEN_UP;
    return this.readings.add(part, this.at, around);
  }

  /** Ends a rule. */
  protected close(reading: Reading): void {
    this.depth--;
    this.last = reading;
    this.readings.close(reading);
  }

  /** Takes a token. @throws GIVEN_UP where the next is another one */
  protected take(kind: number, within: Reading, part: number): Reading {
    if (this.kinds[this.at] !== kind) throw GIVEN_UP;
    return this.readings.add(part, this.at++, within);
  }

  /** The text of the token taken last. */
  protected taken(): string {
    const { text, tokens } = this.readings;
    return text.slice(tokens.starts[this.at - 1], tokens.ends[this.at - 1]);
  }

  protected takenText(): string {
    return ValueConverter.convertString(this.taken());
  }

  protected takenNumber(): number {
    return ValueConverter.convertNumber(this.taken());
  }

  /** Whether a name is next that starts a line: it is never what the line before could still go on with. */
  protected startsNameOnNewLine(): boolean {
    const { at } = this;
    if (at === 0 || !NAMES.includes(this.kinds[at] as number)) return false;
    const { text, tokens } = this.readings;
    return /[\n\r]/.test(text.slice(tokens.ends[at - 1], tokens.starts[at]));
  }

  /** Gives the node that was read last to another one as its property. */
  protected adopt(child: Made, node: Made, property: string): Made {
    child.$container = node;
    child.$containerProperty = property;
    return this.linked(child);
  }

  /** Gives the node that was read last to another one as one more of several. */
  protected adoptOneOf(child: Made, node: Made, property: string, others: Made[]): void {
    child.$containerIndex = others.length;
    others.push(this.adopt(child, node, property));
  }

  /** Has the node that was read last and its place know each other. */
  protected linked(node: Made, reading = this.last): Made {
    const place = this.readings.placeOf(reading) as PlaceOfNode;
    node.$cstNode = place;
    place.node = node as AstNode;
    return node;
  }

  protected reference(node: Made, property: string, reading: Reading, text: string): Reference {
    return this.references.buildReference(node as AstNode, property, this.readings.placeOf(reading), text);
  }

  /**
   * A chain of operands with an operator between each two, as a tree.
   * @param levels how loosely each operator binds; those of one level are taken from the left
   */
  protected chain(
    type: string,
    operands: readonly Made[],
    operators: readonly string[],
    levels: Readonly<Record<string, number>>,
    reading: Reading,
  ): Made {
    if (operators.length > MOST_OPERATORS) throw GIVEN_UP;
    this.close(reading);
    if (operators.length === 0) return operands[0] as Made;
    const place = this.readings.placeOf(reading);
    const between = (first: number, last: number): Made => {
      if (first === last) return operands[first] as Made;
      let loosest = first;
      for (let at = first; at < last; at++) {
        if (level(at) >= level(loosest)) loosest = at;
      }
      const node: Made = {
        $type: type,
        $container: undefined,
        $containerProperty: undefined,
        $containerIndex: undefined,
        $cstNode: place,
        left: between(first, loosest),
        operator: operators[loosest],
        right: between(loosest + 1, last),
      };
      for (const side of ["left", "right"]) {
        node[side].$container = node;
        node[side].$containerProperty = side;
      }
      return node;
    };
    const level = (at: number) => levels[operators[at] as string] as number;
    return between(0, operators.length);
  }
}
