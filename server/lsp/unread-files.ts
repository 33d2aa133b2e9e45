/** Which files are not read, why, and what to do about it, by their URIs. Each is told once, until that changes. */
export class UnreadFiles {
  private readonly problems = new Map<string, string>();
  private listener: (uri: string, problem: string) => void = () => {};

  onFound(listener: (uri: string, problem: string) => void): void {
    this.listener = listener;
  }

  /** In a sentence or two; undefined for a file that was read. */
  problemOf(uri: string): string | undefined {
    return this.problems.get(uri);
  }

  set(uri: string, problem: string | undefined): void {
    const isNew = problem !== this.problems.get(uri);
    if (problem === undefined) this.problems.delete(uri);
    else this.problems.set(uri, problem);
    if (isNew && problem !== undefined) this.listener(uri, problem);
  }
}
