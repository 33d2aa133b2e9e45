import type { PracticedSession } from "../shared/protocol/sessions.ts";
import { shownBesideIcons } from "./shown-text.ts";

/** A session in a list to choose from: its name, and beside it when it was and who practised. */
export function sessionLabel({ name, date, player }: PracticedSession): {
  label: string;
  description: string;
} {
  const beside = [date, player].filter((part) => part !== null);
  return { label: shownBesideIcons(name), description: shownBesideIcons(beside.join(" · ")) };
}
