import { showRun } from "../host/show-run.ts";
import { full } from "./full.ts";

await showRun("in the editor", { ...full, host: "editor" });
