import type { Workbench } from "../workbench.ts";

/** Starts the server anew, also after it has given up. */
export async function restartServer({ client }: Workbench): Promise<void> {
  if (client.isRunning()) await client.stop();
  await client.start();
}
