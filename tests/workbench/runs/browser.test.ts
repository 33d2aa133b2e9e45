import { showRun } from "../host/show-run.ts";
import { full } from "./full.ts";

await showRun("in a browser, in a folder on no disk", { ...full, host: "browser" });
