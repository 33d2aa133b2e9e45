/**
 * Where the parts of a tree stand in its text: the framework's concrete syntax tree. The reader writes down numbers for it;
 * few of its nodes are ever asked for, and those are made then.
 */
import type {
  AstNode,
  CompositeCstNode,
  CstNode,
  Grammar,
  GrammarAST,
  LeafCstNode,
  RootCstNode,
} from "langium";
import { firstIndexWhere } from "../../../shared/first-index.ts";
import { TOKENS } from "../../generated/lookahead.ts";
import { PART_PROPERTIES } from "../../generated/part-properties.ts";
import type { TokenType } from "../tokens.ts";
import { partsOf } from "./grammar-parts.ts";
import type { Scan, Tokens } from "./scan.ts";

type Range = CstNode["range"];

/**
 * What the parts of the grammar have read of a text, each before those within it: an entry in every list for each rule and
 * each token. The first is the whole text.
 */
export class Readings {
  readonly text: string;
  readonly tokens: Tokens;
  private readonly comments: Tokens;
  private readonly grammar: () => Grammar;
  /** The parts of the grammar, by their numbers in `partsOf`; -1 for the whole text. */
  private readonly parts: number[] = [];
  /** The first tokens. */
  private readonly firsts: number[] = [];
  /** The readings behind all those within them. */
  private readonly ends: number[] = [];
  /** The readings around them. */
  private readonly arounds: number[] = [];
  private readonly places: (PlaceOfNode | PlaceOfToken | undefined)[] = [];
  private lines: readonly number[] | undefined = undefined;

  constructor(text: string, { tokens, comments }: Scan, grammar: () => Grammar) {
    this.text = text;
    this.tokens = tokens;
    this.comments = comments;
    this.grammar = grammar;
    this.add(-1, 0, -1);
    this.places[0] = new PlaceOfText(this, 0);
  }

  /**
   * @param part the part of the grammar
   * @param token the first token
   * @param around the reading around it
   * @returns the number of the new reading
   */
  add(part: number, token: number, around: number): number {
    const reading = this.parts.length;
    this.parts.push(part);
    this.firsts.push(token);
    this.ends.push(reading + 1);
    this.arounds.push(around);
    this.places.push(undefined);
    return reading;
  }

  /** Ends the reading of a rule: what was added since is within it. */
  close(reading: number): void {
    this.ends[reading] = this.parts.length;
  }

  get root(): PlaceOfText {
    return this.places[0] as PlaceOfText;
  }

  /** The place of what a rule has read, or of a token. */
  placeOf(reading: number): PlaceOfNode | PlaceOfToken {
    const known = this.places[reading];
    if (known !== undefined) return known;
    const isToken = this.ends[reading] === reading + 1; // a rule reads at least one
    const place = isToken ? new PlaceOfToken(this, reading) : new PlaceOfNode(this, reading);
    this.places[reading] = place;
    return place;
  }

  /** The place around another; the whole text is within none. */
  placeAround(reading: number): PlaceOfNode | undefined {
    return reading === 0 ? undefined : (this.placeOf(this.arounds[reading] as number) as PlaceOfNode);
  }

  /** What stands directly within a place, with comments. Linear in it. */
  placesWithin(place: PlaceOfNode): CstNode[] {
    const { reading } = place;
    const found: CstNode[] = [];
    const behind = this.ends[reading] as number;
    for (let part = reading + 1; part < behind; part = this.ends[part] as number) {
      // Comments before all that a rule has read are outside it.
      if (found.length > 0 || reading === 0)
        found.push(...this.commentsBefore(this.firsts[part] as number, place));
      found.push(this.placeOf(part));
    }
    if (reading === 0) found.push(...this.commentsBefore(this.tokens.kinds.length - 1, place));
    return found;
  }

  /** The places of what was read for a property of a node, in the order of the text. Linear in the node's own tokens. */
  placesOf(property: string, node: AstNode, reading: number): CstNode[] {
    const found: CstNode[] = [];
    const behind = this.ends[reading] as number;
    for (let part = reading + 1; part < behind; part = this.ends[part] as number) {
      if (PART_PROPERTIES[this.parts[part] as number] === property) found.push(this.placeOf(part));
      else if (!this.isOfOther(node, part)) found.push(...this.placesOf(property, node, part));
    }
    return found;
  }

  /** Places of nodes are made as soon as those are read. */
  private isOfOther(node: AstNode, reading: number): boolean {
    const place = this.places[reading];
    return place instanceof PlaceOfNode && place.node !== undefined && place.node !== node;
  }

  private commentsBefore(token: number, around: PlaceOfNode): PlaceOfComment[] {
    const { starts } = this.comments;
    const from = token === 0 ? 0 : (this.tokens.ends[token - 1] as number);
    const found: PlaceOfComment[] = [];
    const first = firstIndexWhere(starts.length, (comment) => (starts[comment] as number) >= from);
    for (let comment = first; comment < starts.length; comment++) {
      if ((starts[comment] as number) > (this.tokens.starts[token] as number)) break;
      found.push(new PlaceOfComment(this, around, this.comments, comment));
    }
    return found;
  }

  offsetOf(reading: number): number {
    return this.tokens.starts[this.firsts[reading] as number] as number;
  }

  endOf(reading: number): number {
    const lastToken = this.firsts[(this.ends[reading] as number) - 1] as number;
    return this.tokens.ends[lastToken] as number;
  }

  kindOf(reading: number): number {
    return this.tokens.kinds[this.firsts[reading] as number] as number;
  }

  partOf(reading: number): GrammarAST.AbstractElement {
    return partsOf(this.grammar())[this.parts[reading] as number] as GrammarAST.AbstractElement;
  }

  /** The lines and columns between two offsets, from 0. Logarithmic in the lines. */
  rangeOf(start: number, end: number): Range {
    return { start: this.positionAt(start), end: this.positionAt(end) };
  }

  private positionAt(offset: number): Range["start"] {
    this.lines ??= startsOfLines(this.text);
    const { lines } = this;
    const line = firstIndexWhere(lines.length, (each) => (lines[each] as number) > offset) - 1;
    return { line, character: offset - (lines[line] as number) };
  }
}

abstract class Place implements CstNode {
  protected readonly readings: Readings;

  constructor(readings: Readings) {
    this.readings = readings;
  }

  abstract readonly container?: PlaceOfNode;
  abstract readonly offset: number;
  abstract readonly end: number;
  abstract readonly hidden: boolean;
  abstract readonly astNode: AstNode;

  get root(): PlaceOfText {
    return this.readings.root;
  }

  get length(): number {
    return this.end - this.offset;
  }

  get text(): string {
    return this.readings.text.substring(this.offset, this.end);
  }

  get range(): Range {
    return this.readings.rangeOf(this.offset, this.end);
  }
}

/** Of what a part of the grammar has read. */
abstract class PlaceOfReading extends Place {
  readonly reading: number;

  constructor(readings: Readings, reading: number) {
    super(readings);
    this.reading = reading;
  }

  get container(): PlaceOfNode {
    return this.readings.placeAround(this.reading) as PlaceOfNode; // of the whole text undefined, as the framework has it
  }

  get offset(): number {
    return this.readings.offsetOf(this.reading);
  }

  get end(): number {
    return this.readings.endOf(this.reading);
  }

  get hidden(): boolean {
    return false;
  }

  get grammarSource(): GrammarAST.AbstractElement {
    return this.readings.partOf(this.reading);
  }
}

/** What a rule of the grammar has read. */
export class PlaceOfNode extends PlaceOfReading implements CompositeCstNode {
  /** The node that was made of it; undefined where that has a place around this one. */
  node: AstNode | undefined = undefined;
  private within: readonly CstNode[] | undefined = undefined;

  get content(): readonly CstNode[] {
    this.within ??= this.readings.placesWithin(this);
    return this.within;
  }

  get astNode(): AstNode {
    return this.node ?? this.container.astNode;
  }

  /** What was read for a property of the node, as `findNodesForProperty` finds it, without a look at the grammar. */
  placesOf(property: string): CstNode[] {
    return this.readings.placesOf(property, this.astNode, this.reading);
  }
}

/** The whole of a text. */
export class PlaceOfText extends PlaceOfNode implements RootCstNode {
  get fullText(): string {
    return this.readings.text;
  }

  override get offset(): number {
    return this.spoken[0]?.offset ?? 0;
  }

  override get end(): number {
    return this.spoken.at(-1)?.end ?? 0;
  }

  /** What is no comment, where there is anything else. */
  private get spoken(): readonly CstNode[] {
    const spoken = this.content.filter(({ hidden }) => !hidden);
    return spoken.length > 0 ? spoken : this.content;
  }
}

/** A word, number or sign. */
export class PlaceOfToken extends PlaceOfReading implements LeafCstNode {
  get tokenType(): TokenType {
    return TYPES[this.readings.kindOf(this.reading)] as TokenType;
  }

  get astNode(): AstNode {
    return this.container.astNode;
  }
}

export class PlaceOfComment extends Place implements LeafCstNode {
  readonly container: PlaceOfNode;
  private readonly comments: Tokens;
  private readonly index: number;

  constructor(readings: Readings, container: PlaceOfNode, comments: Tokens, index: number) {
    super(readings);
    this.container = container;
    this.comments = comments;
    this.index = index;
  }

  get offset(): number {
    return this.comments.starts[this.index] as number;
  }

  get end(): number {
    return this.comments.ends[this.index] as number;
  }

  get hidden(): boolean {
    return true;
  }

  get tokenType(): TokenType {
    return TYPES[this.comments.kinds[this.index] as number] as TokenType;
  }

  get astNode(): AstNode {
    return this.container.astNode;
  }
}

const TYPES: readonly TokenType[] = TOKENS.map((name) => ({ name }));

function startsOfLines(text: string): number[] {
  const starts = [0];
  if (text.includes("\r")) {
    for (const { index, 0: end } of text.matchAll(/\r\n|[\r\n]/g)) starts.push(index + end.length);
  } else {
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  }
  return starts;
}
