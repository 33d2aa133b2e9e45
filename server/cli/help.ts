/** Help texts, made from the table of commands. */
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import type { Palette } from "../report/palette.ts";
import type { Command, Option, Options } from "./command.ts";
import { GLOBAL_OPTIONS } from "./parse-arguments.ts";

const TOOL = "drillwright";
const WIDTH = 88;

/** What the tool can do. */
export function overview(commands: Readonly<Record<string, Command>>, { strong }: Palette): string {
  return text([
    [`${strong(TOOL)} checks golf practice plans and scores practice sessions against them.`],
    [strong("Usage"), `  ${TOOL} COMMAND [OPTION ...] [FILE|FOLDER ...]`],
    [strong("Commands"), ...table(Object.entries(commands).map(([name, { summary }]) => [name, summary]))],
    [strong("Options of every command"), ...optionLines(GLOBAL_OPTIONS)],
    [strong("Exit codes"), ...exitCodeLines()],
    [`${TOOL} COMMAND --help says more.`],
  ]);
}

/** One command: examples first. */
export function commandHelp(name: string, command: Command, { strong }: Palette): string {
  const { summary, operands, description, options, examples } = command;
  const usage = [TOOL, name, operands.usage, "[OPTION ...]"].filter((part) => part !== "").join(" ");
  return text([
    [summary],
    [strong("Examples"), ...table(examples.map(([line, meaning]) => [`${TOOL} ${line}`, meaning]))],
    [strong("Usage"), `  ${usage}`],
    ...description.map((paragraph) => wrapped(paragraph, WIDTH)),
    Object.keys(options).length === 0 ? [] : [strong("Options"), ...optionLines(options)],
    [strong("Options of every command"), ...optionLines(GLOBAL_OPTIONS)],
  ]);
}

function text(paragraphs: readonly (readonly string[])[]): string {
  return `${paragraphs
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function optionLines(options: Options): string[] {
  return table(
    Object.entries(options)
      .filter(([, option]) => option.isHidden !== true)
      .map(([name, option]) => [usageOf(name, option), meaningOf(option)]),
  );
}

function usageOf(name: string, option: Option): string {
  switch (option.kind) {
    case "flag":
      return option.short === undefined ? `--${name}` : `-${option.short}, --${name}`;
    case "choice":
      return `--${name} ${option.choices.join("|")}`;
    case "text":
      return `--${name} ${option.placeholder}`;
  }
}

function meaningOf(option: Option): string {
  return "default" in option ? `${option.meaning} Otherwise ${option.default}.` : option.meaning;
}

function exitCodeLines(): string[] {
  return table(Object.values(EXIT_CODES).map(({ code, meaning }) => [String(code).padStart(3), meaning]));
}

/** Two columns; what does not fit beside its name goes under it. */
function table(rows: readonly (readonly [name: string, meaning: string])[]): string[] {
  const widest = Math.max(...rows.map(([name]) => name.length));
  const column = Math.min(widest, 30) + 4;
  return rows.flatMap(([name, meaning]) => {
    const lines = wrapped(meaning, WIDTH - column).map((line) => " ".repeat(column) + line);
    const fits = name.length + 4 <= column;
    const first = `  ${name}`;
    return fits ? [first + (lines[0] ?? "").slice(first.length), ...lines.slice(1)] : [first, ...lines];
  });
}

function wrapped(paragraph: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of paragraph.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
