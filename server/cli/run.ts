/** The command line without its process: words in, texts and an exit code out. */
import { EXIT_CODES, type ExitCode } from "../../shared/exit-codes.ts";
import { PathError } from "../node/path-error.ts";
import { UnreadableDataError } from "../node/unreadable-data-error.ts";
import { toolVersion } from "../node/version.ts";
import { printable } from "../report/printable.ts";
import { paletteFor } from "./colors.ts";
import { type Command, UsageError } from "./command.ts";
import { COMMANDS } from "./command-table.ts";
import { faultText } from "./fault.ts";
import type { Io } from "./io.ts";
import {
  checkOperands,
  didYouMean,
  GLOBAL_OPTIONS,
  type GlobalOptions,
  parseOptions,
  type Split,
  splitCommand,
} from "./parse-arguments.ts";

/** Runs the command that these words name. Never throws. */
export async function runCli(words: readonly string[], io: Io): Promise<ExitCode> {
  let name: string | undefined;
  try {
    const split = splitCommand(words);
    name = split.name === "help" ? undefined : split.name;
    return name === undefined ? await runWithoutCommand(split, io) : await runCommand(name, split.rest, io);
  } catch (error) {
    if (error instanceof UnreadableDataError) {
      io.stderr.write(`drillwright: ${printable(error.message)}\n`);
      return EXIT_CODES.dataUnreadable.code;
    }
    if (!(error instanceof UsageError || error instanceof PathError)) {
      io.stderr.write(faultText(error, words, io.env));
      return EXIT_CODES.fault.code;
    }
    const more = name !== undefined && Object.hasOwn(COMMANDS, name) ? `${name} --help` : "--help";
    io.stderr.write(`drillwright: ${printable(error.message)}\n`);
    if (error instanceof UsageError) io.stderr.write(`See \`drillwright ${more}\`.\n`);
    return EXIT_CODES.usage.code;
  }
}

async function runCommand(name: string, words: readonly string[], io: Io): Promise<ExitCode> {
  const command = commandOf(name);
  const { operands, options } = parseOptions(words, { ...command.options, ...GLOBAL_OPTIONS });
  if (options.help) return showHelp(name, io, options.color);
  if (options.version) return showVersion(io);
  checkOperands(name, command, operands);
  const palette = paletteFor(io.stdout, options.color, io.env);
  const errorPalette = paletteFor(io.stderr, options.color, io.env);
  return command.run({ operands, options, palette, errorPalette }, io);
}

/** `drillwright`, `drillwright --help`, `drillwright help [COMMAND]`, `drillwright --version`. */
async function runWithoutCommand({ name, rest }: Split, io: Io): Promise<ExitCode> {
  const { operands, options } = parseOptions(rest, GLOBAL_OPTIONS);
  if (options.version) return showVersion(io);
  if (options.help || name === "help") return showHelp(operands[0], io, options.color);
  const { overview } = await import("./help.ts");
  io.stderr.write(overview(COMMANDS, paletteFor(io.stderr, options.color, io.env)));
  return EXIT_CODES.usage.code;
}

async function showHelp(name: string | undefined, io: Io, color: GlobalOptions["color"]): Promise<ExitCode> {
  const { commandHelp, overview } = await import("./help.ts");
  const palette = paletteFor(io.stdout, color, io.env);
  io.stdout.write(
    name === undefined ? overview(COMMANDS, palette) : commandHelp(name, commandOf(name), palette),
  );
  return EXIT_CODES.ok.code;
}

function showVersion(io: Io): ExitCode {
  io.stdout.write(`drillwright ${toolVersion()}\n`);
  return EXIT_CODES.ok.code;
}

/** @throws UsageError where there is none of that name. */
function commandOf(name: string): Command {
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (command !== undefined) return command;
  throw new UsageError(`There is no command ${name}.${didYouMean(name, Object.keys(COMMANDS))}`);
}
