import type { Disposable } from "vscode";

/** Does something a moment after it was last asked to: once for a burst of reasons. */
export class Soon implements Disposable {
  private readonly run: () => void;
  private readonly delay: number;
  private timer: ReturnType<typeof setTimeout> | undefined;

  /** @param delay in milliseconds. */
  constructor(run: () => void, delay: number) {
    this.run = run;
    this.delay = delay;
  }

  ask(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(this.run, this.delay);
  }

  dispose(): void {
    clearTimeout(this.timer);
  }
}
