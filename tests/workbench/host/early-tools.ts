/** Begins to install what the tests in an editor need while the others run. A test that needs it waits, and says what went wrong. */
import { ensureChromium, ensureServer } from "./tools.ts";

export default function begin(): void {
  for (const install of [ensureServer, ensureChromium]) install().catch(() => {});
}
