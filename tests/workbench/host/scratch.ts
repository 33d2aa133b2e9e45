/** Temporary folders. */
import { mkdtempSync, rmSync } from "node:fs";
import { rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

export type Scratch = {
  readonly path: string;
  remove(): Promise<void>;
};

/** A new empty folder, removed at the latest when the process exits by itself. */
export function scratchFolder(purpose: string): Scratch {
  const path = mkdtempSync(join(tmpdir(), `drillwright-${purpose}-`));
  const removeNow = (): void => rmSync(path, { recursive: true, force: true });
  process.once("exit", removeNow);
  return {
    path,
    remove: async () => {
      process.off("exit", removeNow);
      // Programs that were just told to end may still be writing.
      await rm(path, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    },
  };
}
