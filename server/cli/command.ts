/** What a command is. Every file in `commands/` is one; `command-table.ts` lists them. */
import type { ExitCode } from "../../shared/exit-codes.ts";
import type { Palette } from "../report/palette.ts";
import type { Io } from "./io.ts";

export type Option =
  | { readonly kind: "flag"; readonly meaning: string; readonly short?: string; readonly isHidden?: true }
  | {
      readonly kind: "text";
      readonly placeholder: string;
      readonly meaning: string;
      readonly default?: string;
      readonly isHidden?: true;
    }
  | {
      readonly kind: "choice";
      readonly choices: readonly string[];
      readonly meaning: string;
      readonly default: string;
      readonly isHidden?: true;
    };

/** Options by name, without the dashes. */
export type Options = Readonly<Record<string, Option>>;

type ValueOf<O extends Option> = O extends { kind: "flag" }
  ? boolean
  : O extends { kind: "choice"; choices: readonly (infer Choice)[] }
    ? Choice
    : O extends { default: string }
      ? string
      : string | undefined;

export type Values<O extends Options> = { readonly [Name in keyof O]: ValueOf<O[Name]> };

/** What was written after the command's name. */
export interface Arguments<O extends Options> {
  readonly operands: readonly string[];
  readonly options: Values<O>;
  /** How text is made to stand out on standard output, and on standard error. */
  readonly palette: Palette;
  readonly errorPalette: Palette;
}

export interface Command<O extends Options = Options> {
  /** What it does, in a line. */
  readonly summary: string;
  /** What may be written after its name, as usage lines show it, and how many of that. */
  readonly operands: { readonly usage: string; readonly least: number; readonly most: number };
  /** Paragraphs. */
  readonly description: readonly string[];
  readonly options: O;
  /** What follows the tool's name, and what it is for. */
  readonly examples: readonly (readonly [line: string, meaning: string])[];
  /**
   * Does the work. What it needs beyond arguments it loads with `import()` when it runs, so that other commands do not
   * pay for it.
   * @throws UsageError, PathError, UnreadableDataError
   */
  run(args: Arguments<O>, io: Io): Promise<ExitCode>;
}

/** Gives a command the types of its own options. */
export function defineCommand<const O extends Options>(command: Command<O>): Command {
  return command as unknown as Command;
}

/** The command was given wrongly. The message says what was found, what was expected, and what to do. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}
