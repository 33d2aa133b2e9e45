/** How the elements of the tree are shown. All texts are plain: a name is never read as markup. */
import { l10n, ThemeIcon, TreeItem, TreeItemCollapsibleState } from "vscode";
import { keyOf } from "../../../shared/protocol/message.ts";
import type { SessionScore } from "../../../shared/protocol/session-score.ts";
import { openCommand, placeText } from "../../places.ts";
import { verdictText } from "../../score-texts.ts";
import { shown } from "../../shown-text.ts";
import { verdictIcon } from "../verdict-icon.ts";
import type { BlockElement, PlayerElement, ProblemElement, SessionElement } from "./elements.ts";

export function playerItem({ player, sessions, isNameShared }: PlayerElement): TreeItem {
  const name = player === null ? l10n.t("Player not known") : shown(player.name);
  const item = new TreeItem(
    name,
    sessions.length === 0 ? TreeItemCollapsibleState.None : TreeItemCollapsibleState.Collapsed,
  );
  item.id = player === null ? "player" : `player ${keyOf(player)}`;
  item.iconPath = new ThemeIcon("account");
  item.contextValue = "player";
  const facts = [handText(player?.hand ?? null), sessionsText(sessions.length)];
  if (player !== null && isNameShared) facts.push(placeText(player));
  item.description = facts.filter((fact) => fact !== "").join(" · ");
  item.tooltip = [name, item.description].join("\n");
  item.accessibilityInformation = { label: [name, item.description].join(", ") };
  return item;
}

/** @param score undefined while it is not known. */
export function sessionItem({ session }: SessionElement, score: SessionScore | undefined): TreeItem {
  const name = shown(session.name);
  const outcome = score === undefined ? "" : outcomeText(score);
  const item = new TreeItem(name, TreeItemCollapsibleState.Collapsed);
  item.id = `session ${keyOf(session)}`;
  item.contextValue = session.plan === null ? "session" : "session-of-plan";
  item.iconPath = score === undefined ? new ThemeIcon("history") : scoreIcon(score);
  item.description = session.date ?? "";
  item.tooltip = [name, session.plan && l10n.t("Plan: {0}", shown(session.plan.name)), session.date, outcome]
    .filter((line) => line)
    .join("\n");
  item.accessibilityInformation = { label: [name, session.date, outcome].filter((part) => part).join(", ") };
  item.command = openCommand(session);
  return item;
}

export function blockItem({ block, session }: BlockElement): TreeItem {
  const name = shown(block.name);
  const outcome = block.verdict === null ? "" : verdictText(block.verdict, l10n.t);
  const item = new TreeItem(name, TreeItemCollapsibleState.None);
  item.id = `block ${keyOf(session)}#${block.name}`;
  item.contextValue = "block";
  item.iconPath = verdictIcon(block.verdict);
  item.description = block.summary;
  item.tooltip = [name, outcome, block.summary].filter((line) => line !== "").join("\n");
  item.accessibilityInformation = {
    label: [name, outcome, block.summary].filter((part) => part !== "").join(", "),
  };
  item.command = openCommand(block.location);
  return item;
}

export function problemItem({ text, session }: ProblemElement): TreeItem {
  const item = new TreeItem(text, TreeItemCollapsibleState.None);
  item.id = `problem ${keyOf(session)}`;
  item.iconPath = new ThemeIcon("warning");
  item.tooltip = text;
  return item;
}

function scoreIcon({ verdict, problem }: SessionScore): ThemeIcon {
  return problem === null ? verdictIcon(verdict) : new ThemeIcon("warning");
}

function outcomeText({ verdict, summary, problem }: SessionScore): string {
  if (problem !== null) return problem;
  return verdict === null ? summary : `${verdictText(verdict, l10n.t)}: ${summary}`;
}

function handText(hand: "left" | "right" | null): string {
  if (hand === null) return "";
  return hand === "left" ? l10n.t("left-handed") : l10n.t("right-handed");
}

function sessionsText(count: number): string {
  if (count === 0) return l10n.t("no sessions yet");
  return count === 1 ? l10n.t("1 session") : l10n.t("{0} sessions", count);
}
