/** How the elements of the tree are shown. All texts are plain: a name is never read as markup. */
import { l10n, ThemeColor, ThemeIcon, TreeItem, TreeItemCollapsibleState } from "vscode";
import type { StepState } from "../../../shared/curriculum-standing.ts";
import { keyOf } from "../../../shared/protocol/message.ts";
import { openCommand, placeText } from "../../places.ts";
import { shown } from "../../shown-text.ts";
import type { CurriculumElement, NoteElement, PlayerElement, StepElement } from "./elements.ts";
import { countsText, spokenText, standingText, stateText } from "./standing-texts.ts";

export function curriculumItem({ curriculum, isNameShared, isOpen }: CurriculumElement): TreeItem {
  const { Expanded, Collapsed } = TreeItemCollapsibleState;
  const item = new TreeItem(shown(curriculum.name), isOpen ? Expanded : Collapsed);
  item.id = `curriculum ${keyOf(curriculum)}`;
  item.iconPath = new ThemeIcon("list-ordered");
  item.contextValue = "curriculum";
  if (isNameShared) item.description = placeText(curriculum);
  item.tooltip = [shown(curriculum.name), placeText(curriculum)].join("\n");
  item.accessibilityInformation = {
    label: [shown(curriculum.name), item.description].filter((part) => part).join(", "),
  };
  return item;
}

export function stepItem(element: StepElement): TreeItem {
  const { plan, players } = element.step;
  const name = shown(plan.name);
  const { None, Collapsed } = TreeItemCollapsibleState;
  const item = new TreeItem(name, players.length === 0 ? None : Collapsed);
  const counts = countsText(
    players.map(({ standing }) => standing),
    l10n.t,
  );
  const place = l10n.t("Step {0} of {1}", element.place, element.of);
  item.id = idOf(element);
  item.iconPath = new ThemeIcon("milestone");
  item.contextValue = "step";
  item.description = counts;
  item.tooltip = [name, place, counts].filter((line) => line !== "").join("\n");
  item.accessibilityInformation = { label: [name, place, counts].filter((part) => part !== "").join(", ") };
  item.command = openCommand(plan);
  return item;
}

export function playerItem({ step, session, player: { player, standing } }: PlayerElement): TreeItem {
  const name = shown(player.name);
  const state = stateText(standing.state, l10n.t);
  const behind = standingText(standing, l10n.t);
  const item = new TreeItem(name, TreeItemCollapsibleState.None);
  item.id = `${idOf(step)} ${keyOf(player)}`;
  item.iconPath = ICONS[standing.state];
  item.contextValue = session === null ? "player" : "session-of-plan";
  item.description = behind;
  item.tooltip = [`${name}: ${state}`, behind, session && l10n.t("Latest session: {0}", shown(session.name))]
    .filter((line) => line)
    .join("\n");
  item.accessibilityInformation = { label: `${name}, ${spokenText(standing, l10n.t)}` };
  item.command = openCommand(session ?? step.step.plan);
  return item;
}

export function noteItem({ curriculum, text, isProblem }: NoteElement): TreeItem {
  const item = new TreeItem(text, TreeItemCollapsibleState.None);
  item.id = `note ${keyOf(curriculum)}`;
  item.iconPath = new ThemeIcon(isProblem ? "warning" : "info");
  item.tooltip = text;
  return item;
}

function idOf({ curriculum, step, place }: StepElement): string {
  return `step ${place} ${keyOf(curriculum)} ${keyOf(step.plan)}`;
}

/** Told apart by shape, and by colour only besides. */
const ICONS = {
  met: new ThemeIcon("pass", new ThemeColor("testing.iconPassed")),
  due: new ThemeIcon("calendar", new ThemeColor("list.warningForeground")),
  current: new ThemeIcon("arrow-circle-right"),
  closed: new ThemeIcon("lock"),
} as const satisfies Record<StepState, ThemeIcon>;
