/** From the words on the command line to a command, its operands and its options. */
import { parseArgs } from "node:util";
import { nearest } from "../../shared/nearest.ts";
import { type Command, type Option, type Options, UsageError, type Values } from "./command.ts";

/** What every command understands. */
export const GLOBAL_OPTIONS = {
  help: { kind: "flag", short: "h", meaning: "Show this help." },
  version: { kind: "flag", meaning: "Show the version." },
  color: {
    kind: "choice",
    choices: ["auto", "always", "never"],
    default: "auto",
    meaning:
      "Colours. auto: where a person reads along at a terminal, unless NO_COLOR is set or TERM is dumb; FORCE_COLOR overrules both.",
  },
  debug: { kind: "flag", meaning: "Say more when the tool itself fails. DRILLWRIGHT_DEBUG=1 does the same." },
} as const satisfies Options;

export type GlobalOptions = Values<typeof GLOBAL_OPTIONS>;

export interface Parsed<O extends Options> {
  readonly operands: readonly string[];
  readonly options: Values<O>;
}

/** The command's name, if one is given, and the words without it. */
export interface Split {
  readonly name: string | undefined;
  readonly rest: readonly string[];
}

/** @throws UsageError where an option in front of the command is not one of every command. */
export function splitCommand(words: readonly string[]): Split {
  for (const token of tokensOf(words, GLOBAL_OPTIONS)) {
    if (token.kind === "positional") {
      return { name: token.value, rest: words.filter((_, index) => index !== token.index) };
    }
    if (token.kind === "option" && !Object.hasOwn(GLOBAL_OPTIONS, token.name)) {
      throw new UsageError(
        `There is no option ${token.rawName} in front of the command. The options of a command follow it: drillwright COMMAND ${token.rawName}.`,
      );
    }
  }
  return { name: undefined, rest: [...words] };
}

/** @throws UsageError where a word fits nothing. */
export function parseOptions<const O extends Options>(words: readonly string[], options: O): Parsed<O> {
  const values: Record<string, string | boolean | undefined> = {};
  for (const [name, option] of Object.entries<Option>(options)) {
    values[name] = option.kind === "flag" ? false : option.default;
  }
  const operands: string[] = [];
  for (const token of tokensOf(words, options)) {
    if (token.kind === "positional") operands.push(token.value);
    if (token.kind !== "option") continue;
    const option = Object.hasOwn(options, token.name) ? options[token.name] : undefined;
    if (option === undefined) throw unknownOption(token.rawName, options);
    values[token.name] = optionValue(token, option);
  }
  return { operands, options: values as Values<O> };
}

/** @throws UsageError where there are too few or too many. */
export function checkOperands(
  name: string,
  { operands: { usage, least, most } }: Command,
  given: readonly string[],
): void {
  if (given.length < least) throw new UsageError(`${name} needs ${usage}.`);
  const surplus = given[most];
  if (surplus === undefined) return;
  throw new UsageError(
    most === 0
      ? `${name} takes options only, but found \`${surplus}\`.`
      : `${name} takes ${usage} and no more, but found \`${surplus}\` as well.`,
  );
}

/** `Did you mean x?` with a space in front; nothing where no candidate is close. */
export function didYouMean(name: string, candidates: Iterable<string>, prefix = ""): string {
  const candidate = nearest(name, candidates)[0];
  return candidate === undefined ? "" : ` Did you mean ${prefix}${candidate}?`;
}

const MOST_NAMES = 8;

/** `There are "A", "B" and 3 more.` with a space in front, each once and in order; nothing where there are none. */
export function thereAre(names: Iterable<string>): string {
  const different = [...new Set(names)].sort();
  const shown = different.slice(0, MOST_NAMES).map((name) => JSON.stringify(name));
  const more = different.length - shown.length;
  if (shown.length === 0) return "";
  return ` There ${different.length === 1 ? "is" : "are"} ${shown.join(", ")}${more > 0 ? ` and ${more} more` : ""}.`;
}

function tokensOf(words: readonly string[], options: Options) {
  const configuration = Object.fromEntries(
    Object.entries(options).map(([name, option]) => [
      name,
      option.kind === "flag"
        ? { type: "boolean" as const, ...(option.short === undefined ? {} : { short: option.short }) }
        : { type: "string" as const },
    ]),
  );
  const { tokens } = parseArgs({
    args: [...words],
    options: configuration,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  return tokens;
}

type OptionToken = Extract<ReturnType<typeof tokensOf>[number], { kind: "option" }>;

function optionValue({ rawName, value, inlineValue }: OptionToken, option: Option): string | true {
  switch (option.kind) {
    case "flag":
      if (value !== undefined) throw new UsageError(`${rawName} takes no value, but found \`${value}\`.`);
      return true;
    case "choice":
      if (value !== undefined && option.choices.includes(value)) return value;
      throw new UsageError(
        `${rawName} takes ${alternatives(option.choices)}, ${value === undefined ? "but nothing follows it" : `not \`${value}\``}.`,
      );
    case "text":
      if (value !== undefined && value !== "" && (inlineValue || !looksLikeOption(value))) return value;
      throw new UsageError(`${rawName} needs a value: ${rawName}=${option.placeholder}.`);
  }
}

/** `--force`, `-h`, and not `-5 °C`: no option is a number. */
function looksLikeOption(word: string): boolean {
  return /^-(?![.\d])/.test(word);
}

function unknownOption(rawName: string, options: Options): UsageError {
  const names = Object.keys(options).filter((name) => options[name]?.isHidden !== true);
  return new UsageError(
    `There is no option ${rawName}.${didYouMean(rawName.replace(/^-+/, ""), names, "--")}`,
  );
}

/** `text, json or sarif` */
function alternatives(choices: readonly string[]): string {
  return choices.length < 2 ? choices.join() : `${choices.slice(0, -1).join(", ")} or ${choices.at(-1)}`;
}
