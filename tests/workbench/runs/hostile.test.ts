import { showRun } from "../host/show-run.ts";

await showRun("with hostile names", {
  suite: "hostile",
  folder: "tests/workbench/fixtures/hostile",
  trusted: true,
  host: "editor",
});
