/** A proposal as the text of a `.drill` file. */

import { textLiteral } from "../../../shared/text-literal.ts";
import type { ProposedColumn } from "./columns.ts";
import type { Form } from "./form.ts";
import { MOST_GROUPS } from "./groups.ts";
import type { DeclaredSource } from "./project.ts";
import type { SideColumn } from "./side-columns.ts";

export interface ProposedSource {
  readonly name: string;
  /** Null where the project declares none that reads the table. */
  readonly known: DeclaredSource | null;
  readonly form: Pick<Form, "separator" | "decimal" | "thousands" | "blanks" | "headerRow" | "doubts">;
  readonly columns: readonly ProposedColumn[];
  /** Header of the column that gives the order of the shots, where the rows do not stand in it. */
  readonly orderedBy: string | null;
  readonly dateOrder: "day-month-year" | "month-day-year" | null;
  /** What to ask where it is not clear whether days or months stand first. */
  readonly dateDoubt: string | null;
}

export interface ProposedSession {
  readonly name: string;
  readonly player: string | null;
  /** The plan that was practised; several where it may be any of them. */
  readonly plans: readonly string[];
  readonly date: string | null;
  readonly data: readonly { readonly path: string; readonly source: string }[];
  /** How many rows it takes; null where the table is not parted. */
  readonly rows: number | null;
  /** True where the name is what the table calls it, by which its rows are found. */
  readonly isNamedInTable: boolean;
}

export interface Writing {
  /** Those that the project does not declare. */
  readonly sources: readonly ProposedSource[];
  readonly sessions: readonly ProposedSession[];
  /** Players that the project does not declare yet. */
  readonly newPlayers: readonly string[];
  /** Files to use, as `use` lines write them. */
  readonly uses: readonly string[];
  /** The plans and players of the project, to choose from where the table does not tell. */
  readonly choices: { readonly plans: readonly string[]; readonly players: readonly string[] };
  /** Tables that hold more sessions than are proposed. */
  readonly cut: readonly string[];
}

/** More lines to choose from help nobody. */
const MOST_CHOICES = 12;

/** Nor do more names of columns that are not read. */
const MOST_UNREAD = 40;

export function writeProposal({ sources, sessions, newPlayers, uses, choices, cut }: Writing): string {
  const parts = [
    "// A proposal. What is marked `settle` is for you to decide; delete the remark when it is.",
    ...(uses.length > 0 ? [uses.map((use) => `use ${textLiteral(use)}`).join("\n")] : []),
    ...sources.map(writeSource),
    ...newPlayers.map(writePlayer),
    ...sessions.map((session) => writeSession(session, choices)),
    ...cut.map((path) => settling(moreSessions(path))),
  ];
  return `${parts.join("\n\n")}\n`;
}

function moreSessions(path: string): string {
  return `${textLiteral(path)} holds more than ${MOST_GROUPS} sessions, and those that come first in it are proposed. Are they sessions? If so, part the table, by year for instance, and import each part.`;
}

function writeSource({ name, form, columns, orderedBy, ...dates }: ProposedSource): string {
  const lines = [
    ...form.doubts.map(settling),
    ...(form.separator === null ? [] : [`separator ${form.separator}`]),
    ...(form.decimal === "comma" ? ["decimal comma"] : []),
    ...(form.thousands === null ? [] : [`thousands ${form.thousands}`]),
    ...(form.blanks.length === 0 ? [] : [`no reading is ${form.blanks.map(textLiteral).join(", ")}`]),
    ...(form.headerRow === 1 ? [] : [`header row ${form.headerRow}`]),
    ...columns.flatMap((column) => writeColumn(column, dates)),
    ...(orderedBy === null ? [] : [`shots in order of ${textLiteral(orderedBy)}`]),
    ...unread(columns),
  ];
  return block(`source ${textLiteral(name)}`, lines);
}

function writeColumn(
  {
    header,
    meaning,
    settle,
    signs,
    units,
    sideTexts,
    foreignSides,
    sidesIn,
    minus,
    confidence,
  }: ProposedColumn,
  { dateOrder, dateDoubt }: Pick<ProposedSource, "dateOrder" | "dateDoubt">,
): string[] {
  if (meaning === null || meaning.kind === "order" || meaning.kind === "sides") return [];
  const start = `column ${textLiteral(header)} is`;
  const remarks = settle.map(settling);
  switch (meaning.kind) {
    case "metric": {
      const alone =
        sideTexts.length > 0
          ? whereSides(sideTexts, signs)
          : (signs.length > 0 ? signs : [meaning.positive]).map(
              (side) => `${positive(side)}${whereMinus(side, minus)}${spelled(foreignSides)}`,
            );
      const tails = sidesIn === null ? alone : [bySides(sidesIn), ...alone];
      const symbols = units.length > 0 ? units : [meaning.unit.symbol];
      const lines = symbols.flatMap((unit) =>
        tails.map((tail) => `${start} ${meaning.metric}${inUnit(unit)}${tail}`),
      );
      const isOpen = lines.length > 1 || confidence === "doubtful";
      return [...remarks, ...lines.map((line) => (isOpen ? `// ${line}` : line))];
    }
    case "category":
      return [
        ...remarks,
        confidence === "doubtful" ? `// ${start} ${meaning.metric}` : `${start} ${meaning.metric}`,
      ];
    case "exclusion":
      return [
        ...remarks,
        `column ${textLiteral(header)} excludes when ${meaning.texts.map(textLiteral).join(", ")}`,
      ];
    case "date": {
      const order = dateOrder === null ? "" : ` as ${dateOrder}`;
      const doubt = dateDoubt === null ? [] : [settling(dateDoubt)];
      return [...remarks, ...doubt, `${start} date${order}`];
    }
    default:
      return [
        ...remarks,
        confidence === "doubtful" ? `// ${start} ${meaning.kind}` : `${start} ${meaning.kind}`,
      ];
  }
}

function inUnit(symbol: string): string {
  return symbol === "" ? "" : ` in ${symbol}`;
}

/** The two ways in which two texts can stand for two sides. */
function whereSides(
  [one = "", other = ""]: readonly string[],
  [first = "", second = ""]: readonly string[],
): string[] {
  return [
    [first, second],
    [second, first],
  ].map(([a = "", b = ""]) => ` where ${textLiteral(one)} is ${a}, ${textLiteral(other)} is ${b}`);
}

/** The sides stand in another column; what the language does not know of their texts is said. */
function bySides({ header, sides }: SideColumn): string {
  const foreign = [...sides].filter(([text, side]) => !side.startsWith(text.toLowerCase()));
  return ` sides in ${textLiteral(header)}${spelled(foreign)}`;
}

function spelled(sides: Iterable<readonly [text: string, side: string]>): string {
  const meanings = [...sides].map(([text, side]) => `${textLiteral(text)} is ${side}`);
  return meanings.length === 0 ? "" : ` where ${meanings.join(", ")}`;
}

function positive(side: string | null): string {
  return side === null ? "" : ` positive ${side}`;
}

function whereMinus(side: string | null, minus: ProposedColumn["minus"]): string {
  const word = side === null ? undefined : minus?.side.get(side);
  return word === undefined ? "" : ` where ${textLiteral(minus?.text ?? "")} is ${word}`;
}

function unread(columns: readonly ProposedColumn[]): string[] {
  const names = columns
    .filter(({ meaning, header }) => meaning === null && header.trim() !== "")
    .map(({ header }) => textLiteral(header));
  const more = names.length > MOST_UNREAD ? ` and ${names.length - MOST_UNREAD} more` : "";
  return names.length === 0 ? [] : [`// Not read: ${names.slice(0, MOST_UNREAD).join(", ")}${more}.`];
}

function writePlayer(name: string): string {
  return block(`player ${textLiteral(name)}`, [settling("right-handed or left-handed?")]);
}

function writeSession(
  { name, player, plans, date, data, rows }: ProposedSession,
  choices: Writing["choices"],
): string {
  return block(`session ${textLiteral(name)}`, [
    ...(plans.length > 1
      ? settledBy("plan", plans, "Which plan was practised? These have the blocks that the table names.")
      : choice("plan", plans[0], choices.plans, "Which plan was practised?")),
    ...choice("player", player ?? undefined, choices.players, "Who practised?"),
    ...(date === null ? [] : [`date ${date}`]),
    ...data.map(({ path, source }) => `data ${textLiteral(path)} from ${textLiteral(source)}`),
    ...(rows === null ? [] : [`// ${rows} ${rows === 1 ? "row" : "rows"}`]),
  ]);
}

/** A line that names a plan or a player, or the question and the lines to choose from. */
function choice(
  keyword: "plan" | "player",
  name: string | undefined,
  names: readonly string[],
  question: string,
): string[] {
  if (name !== undefined) return [`${keyword} ${textLiteral(name)}`];
  const isFew = names.length > 0 && names.length <= MOST_CHOICES;
  return isFew ? settledBy(keyword, names, question) : [settling(`${question} ${keyword} "…"`)];
}

function settledBy(keyword: string, names: readonly string[], question: string): string[] {
  return [
    settling(`${question} Keep one of these lines.`),
    ...names.map((name) => `// ${keyword} ${textLiteral(name)}`),
  ];
}

function settling(question: string): string {
  return `// settle: ${question.replace(/[\r\n]+/g, " ")}`;
}

function block(head: string, lines: readonly string[]): string {
  return lines.length === 0 ? `${head} {\n}` : `${head} {\n${lines.map((line) => `  ${line}\n`).join("")}}`;
}
