import type { Workbench } from "../workbench.ts";

/** Shows what the extension and its server have logged. */
export function showOutput({ output }: Workbench): void {
  output.show();
}
