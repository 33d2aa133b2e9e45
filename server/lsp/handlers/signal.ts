import type { CancellationToken } from "vscode-languageserver";

/** A signal that is aborted when somebody no longer waits for the answer. */
export function signalOf(token: CancellationToken): AbortSignal {
  const controller = new AbortController();
  if (token.isCancellationRequested) controller.abort();
  else token.onCancellationRequested(() => controller.abort());
  return controller.signal;
}
