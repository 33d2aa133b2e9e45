import { ThemeColor, ThemeIcon } from "vscode";
import type { Verdict } from "../../shared/score-report.ts";

/** Told apart by shape, and by colour only besides. */
const ICONS = {
  met: new ThemeIcon("pass", new ThemeColor("testing.iconPassed")),
  missed: new ThemeIcon("error", new ThemeColor("testing.iconFailed")),
  undecided: new ThemeIcon("question", new ThemeColor("testing.iconQueued")),
  "not-measured": new ThemeIcon("circle-slash", new ThemeColor("testing.iconSkipped")),
} as const satisfies Record<Verdict, ThemeIcon>;

/** @param verdict null where nothing was asked. */
export function verdictIcon(verdict: Verdict | null): ThemeIcon {
  return verdict === null ? new ThemeIcon("circle-outline") : ICONS[verdict];
}
