/** Where an editor enters that runs in a browser. */
import type { ExtensionContext } from "vscode";
import { activateWith } from "./activate.ts";
import type { TestingApi } from "./testing-api.ts";

export { deactivate } from "./activate.ts";

export function activate(context: ExtensionContext): TestingApi {
  return activateWith(context, async (output) => {
    const { createLanguageClient } = await import("./language-client/browser.ts");
    return createLanguageClient(context, output);
  });
}
