/** Which versions of the texts that are open the trees were made from, by the URIs of the files. */
export class TextVersions {
  private readonly versions = new Map<string, number>();

  /** Undefined for a file that was read from disk. The text itself may have gone on: an editor does not wait. */
  of(uri: string): number | undefined {
    return this.versions.get(uri);
  }

  /** Those of now, which stay as they are. */
  all(): ReadonlyMap<string, number> {
    return new Map(this.versions);
  }

  set(uri: string, version: number | undefined): void {
    if (version === undefined) this.versions.delete(uri);
    else this.versions.set(uri, version);
  }
}
