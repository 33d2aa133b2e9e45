import { showRun } from "../host/show-run.ts";

await showRun("on an ordinary day", {
  suite: "everyday",
  folder: "examples",
  trusted: true,
  host: "editor",
});
