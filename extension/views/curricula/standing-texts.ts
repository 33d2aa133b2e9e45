/** Where players stand, in words. Knows no editor, so that its sentences can be tested. */
import type { Standing, StepState, WaitingGate } from "../../../shared/curriculum-standing.ts";
import { type Translate, verdictText } from "../../score-texts.ts";
import { shown } from "../../shown-text.ts";

export function stateText(state: StepState, t: Translate): string {
  switch (state) {
    case "met":
      return t("Met");
    case "due":
      return t("Due for review");
    case "current":
      return t("Current");
    case "closed":
      return t("Not open yet");
  }
}

const ORDER: readonly StepState[] = ["due", "current", "met", "closed"];

/** How many players are where: `1 due for review · 2 met`. */
export function countsText(standings: readonly Standing[], t: Translate): string {
  const counted = ORDER.map((state) => {
    const count = standings.filter((each) => each.state === state).length;
    return count === 0 ? "" : countText(state, count, t);
  });
  return counted.filter((text) => text !== "").join(" · ");
}

function countText(state: StepState, count: number, t: Translate): string {
  switch (state) {
    case "met":
      return t("{0} met", count);
    case "due":
      return t("{0} due for review", count);
    case "current":
      return t("{0} current", count);
    case "closed":
      return t("{0} not open yet", count);
  }
}

/** What is behind a state, in a few words: `met on 2026-09-14 · review on 2026-10-12`. */
export function standingText(standing: Standing, t: Translate): string {
  return [...behind(standing, t), unscoredText(standing.unscored, t)]
    .filter((text) => text !== "")
    .join(" · ");
}

/** The same for those who do not see the icon: with the state, where the words do not hold it. */
export function spokenText(standing: Standing, t: Translate): string {
  const { state } = standing;
  const text = standingText(standing, t);
  return state === "met" || state === "due" ? text : `${stateText(state, t)}, ${text}`;
}

function behind({ state, metOn, review, waitsFor, sessions, latest }: Standing, t: Translate): string[] {
  switch (state) {
    case "met":
      return [
        metOn === null ? t("met, on a day that no session states") : t("met on {0}", metOn),
        review === null ? "" : t("review on {0}", review),
      ];
    case "due":
      return [t("review due since {0}", review ?? ""), t("met on {0}", metOn ?? "")];
    case "current":
      return [sessions === 0 ? t("not practised yet") : sessionsText(sessions, latest, t)];
    case "closed":
      return [
        ...waitsFor.map((gate) => gateText(gate, t)),
        sessions === 0 ? "" : sessionsText(sessions, latest, t),
      ];
  }
}

function sessionsText(sessions: number, latest: Standing["latest"], t: Translate): string {
  const count = sessions === 1 ? t("1 session") : t("{0} sessions", sessions);
  return latest === null ? count : t("{0}, the last: {1}", count, verdictText(latest, t));
}

function gateText({ plan, block, times, met }: WaitingGate, t: Translate): string {
  const name = shown(plan);
  if (block === null) {
    return times === 1
      ? t("waits for “{0}”", name)
      : t("waits for “{0}”, met in {1} of {2} sessions", name, met, times);
  }
  return times === 1
    ? t("waits for block “{0}” of “{1}”", shown(block), name)
    : t("waits for block “{0}” of “{1}”, met in {2} of {3} sessions", shown(block), name, met, times);
}

function unscoredText(count: number, t: Translate): string {
  if (count === 0) return "";
  return count === 1 ? t("1 session not scored") : t("{0} sessions not scored", count);
}
