/** The parts of the extension's manifest that the lists in `shared/` decide. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { COMMAND_CATEGORY, COMMANDS, type Command, type Menu } from "../../shared/commands.ts";
import { SETTINGS, type Setting } from "../../shared/settings.ts";

const manifestFile = "../../extension/package.json";
const textsFile = "../../extension/package.nls.json";
const read = (file: string) => JSON.parse(readFileSync(new URL(file, import.meta.url), "utf8"));
const write = (value: object) => `${JSON.stringify(value, null, 2)}\n`;

const commands: [name: string, command: Command][] = Object.entries(COMMANDS);
const settings: [id: string, setting: Setting][] = Object.entries(SETTINGS);
const titleKey = (name: string) => `command.${name}`;
const settingKey = (id: string, choice = "") =>
  `setting.${id.replace(/^drillwright\./, "")}${choice && `.${choice}`}`;

test("the manifest offers the commands and the settings of the lists", async () => {
  const manifest = read(manifestFile);
  const written = {
    ...manifest,
    version: read("../../package.json").version,
    contributes: {
      ...manifest.contributes,
      configuration: { title: "Drillwright", properties: Object.fromEntries(settings.map(property)) },
      commands: commands.map(([name, { id, icon }]) => ({
        command: id,
        title: `%${titleKey(name)}%`,
        category: COMMAND_CATEGORY,
        ...(icon && { icon }),
      })),
      menus: {
        commandPalette: commands
          .filter(([, { palette }]) => palette !== true)
          .map(([, { id, palette }]) => ({ command: id, when: String(palette) })),
        "editor/title": menu("editor/title"),
        "editor/context": menu("editor/context"),
        "file/newFile": menu("file/newFile"),
        "view/title": menu("view/title"),
        "view/item/context": menu("view/item/context"),
        "explorer/context": menu("explorer/context"),
      } satisfies Record<Menu | "commandPalette", unknown>,
    },
  };
  await expect(write(written)).toMatchFileSnapshot(manifestFile);
});

test("every text of the lists is in the file of texts, for translators", async () => {
  const others = Object.entries(read(textsFile)).filter(([key]) => !/^(command|setting)\./.test(key));
  const texts = Object.fromEntries([
    ...others,
    ...commands.map(([name, { title }]) => [titleKey(name), title]),
    ...settings.flatMap(([id, setting]) => [
      [settingKey(id), setting.description],
      ...(setting.type === "choice"
        ? Object.entries(setting.choices).map(([choice, text]) => [settingKey(id, choice), text])
        : []),
    ]),
  ]);
  await expect(write(texts)).toMatchFileSnapshot(textsFile);
});

function property([id, setting]: [string, Setting], order: number) {
  const choices = setting.type === "choice" ? Object.keys(setting.choices) : undefined;
  return [
    id,
    {
      type: choices ? "string" : "boolean",
      ...(choices && {
        enum: choices,
        markdownEnumDescriptions: choices.map((choice) => `%${settingKey(id, choice)}%`),
      }),
      default: setting.default,
      markdownDescription: `%${settingKey(id)}%`,
      scope: setting.scope,
      order,
    },
  ];
}

function menu(id: Menu) {
  return commands.flatMap(([, command]) => {
    const entries = [command.menus?.[id] ?? []].flat();
    return entries.map((entry) => ({ command: command.id, ...entry }));
  });
}
