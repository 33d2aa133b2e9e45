import { type FileSystemNode, UriUtils } from "langium";
import { DrillwrightWorkspaceManager } from "../../language/library/workspace-manager.ts";
import { FILE_ENDING } from "../../language/names/use-target.ts";

/** Folders that hold nobody's plans: those that the command line leaves out as well. */
const SKIPPED = new Set(["node_modules", "dist"]);

/** Looks for files where the command line does, so that both say the same of a folder. */
export class EditorWorkspaceManager extends DrillwrightWorkspaceManager {
  override shouldIncludeEntry({ uri, isDirectory }: FileSystemNode): boolean {
    const name = UriUtils.basename(uri);
    if (name.startsWith(".")) return false;
    return isDirectory ? !SKIPPED.has(name) : name.endsWith(FILE_ENDING);
  }
}
