import { showRun } from "../host/show-run.ts";

await showRun("in a folder nobody has vouched for", {
  suite: "restricted",
  folder: "examples",
  trusted: false,
  host: "editor",
});
