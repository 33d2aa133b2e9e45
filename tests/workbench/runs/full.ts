/** What the runs of the whole suite have in common, wherever the extension lives. */
import type { Run } from "../host/show-run.ts";

export const full: Omit<Run, "host"> = {
  suite: "editor",
  folder: "examples",
  trusted: true,
  // Files are chosen in a list, which a suite can answer, and not in a window of the system.
  settings: { "files.simpleDialog.enable": true },
  // Of the two sample folders that are created, and of the two pages that are saved.
  tells: [
    /^Info: The sample coaching folder was created in /,
    /wrenlow-practice-centre-2\.$/,
    /^Info: Saved: plans\/.*\.html/,
    /^Info: Saved: sessions\/.*\.html/,
  ],
};
