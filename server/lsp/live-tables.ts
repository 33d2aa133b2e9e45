/** Follows the tables of what is shown while shots are added to them. */
import { PACE } from "../import/follow/pace.ts";
import type { CachedDataFiles } from "./cached-data-files.ts";

/**
 * Looks at tables again and again, whoever else tells of changes: nobody watches files outside the editor's folders. The
 * next look waits until what a change led to is done, so that however fast a table grows, its scores are seen.
 */
export class LiveTables {
  private readonly dataFiles: Pick<CachedDataFiles, "look">;
  private readonly shown: () => readonly string[];
  private readonly onChange: () => Promise<void>;
  private isFollowing = false;

  /**
   * @param shown the tables that are to be followed
   * @param onChange what is to be done when one of them has changed
   */
  constructor(
    dataFiles: Pick<CachedDataFiles, "look">,
    shown: () => readonly string[],
    onChange: () => Promise<void>,
  ) {
    this.dataFiles = dataFiles;
    this.shown = shown;
    this.onChange = onChange;
  }

  /** Follows what is shown, as long as something is. */
  async follow(): Promise<void> {
    if (this.isFollowing) return;
    this.isFollowing = true;
    while (this.shown().length > 0) {
      await new Promise((resolve) => setTimeout(resolve, PACE));
      const looks = await Promise.all(this.shown().map((uri) => this.dataFiles.look(uri)));
      if (looks.includes(true)) await this.onChange();
    }
    this.isFollowing = false;
  }
}
