/** The only list of settings. The manifest of the extension and the server's reading of them are made from it. */

import type { Verdict } from "./score-report.ts";

interface SettingBase {
  /** In Markdown. */
  readonly description: string;
  /** `resource` where folders of one workspace may differ, `window` where they cannot. */
  readonly scope: "resource" | "window";
}

export interface SwitchSetting extends SettingBase {
  readonly type: "boolean";
  readonly default: boolean;
}

export interface ChoiceSetting<Choice extends string = string> extends SettingBase {
  readonly type: "choice";
  readonly default: Choice;
  /** Every choice with what it does. */
  readonly choices: Readonly<Record<Choice, string>>;
}

export type Setting = SwitchSetting | ChoiceSetting;

/** How loudly an editor shows something. */
export type Level = "error" | "warning" | "information" | "hint" | "none";

function level(verdict: string, meaning: string, standard: Level): ChoiceSetting<Level> {
  return {
    type: "choice",
    default: standard,
    description: `How a goal is shown that is *${verdict}*: ${meaning}`,
    scope: "resource",
    choices: {
      error: "As an error, beside mistakes in the text.",
      warning: "As a warning.",
      information: "As information.",
      hint: "As a hint: a few dots under the line, not listed among the problems.",
      none: "Not at all.",
    },
  };
}

/** Every setting by its name, in the order in which people see them. */
export const SETTINGS = {
  "drillwright.verdicts.show": {
    type: "boolean",
    default: true,
    description:
      "Shows on the lines of a plan how its goals came out in the session shown. Off hides every verdict and leaves mistakes in the text as they are.",
    scope: "resource",
  },
  "drillwright.verdicts.levels.met": level("met", "the shots reached it.", "information"),
  "drillwright.verdicts.levels.missed": level(
    "missed",
    "the shots did not reach it, or no longer can.",
    "warning",
  ),
  "drillwright.verdicts.levels.undecided": level("undecided", "the shots allow neither answer yet.", "hint"),
  "drillwright.verdicts.levels.notMeasured": level(
    "not measured",
    "the data does not hold what it asks about.",
    "hint",
  ),
  "drillwright.verdicts.inlay": {
    type: "boolean",
    default: true,
    description: "Shows what was observed at the end of each line that sets a goal.",
    scope: "resource",
  },
  "drillwright.verdicts.lens": {
    type: "boolean",
    default: true,
    description: "Shows a one-line summary over each block and plan that was scored.",
    scope: "resource",
  },
  "drillwright.trace.server": {
    type: "choice",
    default: "messages",
    description:
      "How much of the talk between the editor and the language server is logged while the level of the *Drillwright* output channel is *Trace*.",
    scope: "window",
    choices: {
      messages: "That a message was sent, and how long its answer took.",
      compact: "Messages with what they hold, shortened.",
      verbose: "Messages with all they hold.",
    },
  },
} as const satisfies Readonly<Record<`drillwright.${string}`, Setting>>;

export type SettingName = keyof typeof SETTINGS;

/** The setting that says how loudly a verdict is shown. */
export const LEVEL_OF = {
  met: "drillwright.verdicts.levels.met",
  missed: "drillwright.verdicts.levels.missed",
  undecided: "drillwright.verdicts.levels.undecided",
  "not-measured": "drillwright.verdicts.levels.notMeasured",
} as const satisfies Readonly<Record<Verdict, SettingName>>;

type Value<S extends Setting> = S extends ChoiceSetting ? Extract<keyof S["choices"], string> : boolean;

/** A value for every setting. */
export type Settings = { readonly [Name in SettingName]: Value<(typeof SETTINGS)[Name]> };

export const DEFAULT_SETTINGS: Settings = settingsFrom(undefined);

/**
 * Reads the section `drillwright` of an editor's configuration, nested as editors hand it out:
 * `{ verdicts: { show: false } }`. A value that is missing or is none of the choices takes its default.
 */
export function settingsFrom(section: unknown): Settings {
  const entries = Object.entries(SETTINGS).map(([name, setting]: [string, Setting]) => {
    const value = name.split(".").slice(1).reduce<unknown>(member, section);
    return [name, fits(setting, value) ? value : setting.default];
  });
  return Object.fromEntries(entries) as Settings;
}

function member(of: unknown, key: string): unknown {
  return typeof of === "object" && of !== null ? (of as Record<string, unknown>)[key] : undefined;
}

function fits(setting: Setting, value: unknown): boolean {
  if (setting.type === "boolean") return typeof value === "boolean";
  return typeof value === "string" && Object.hasOwn(setting.choices, value);
}
