import type { Workbench } from "../workbench.ts";

/** Starts the server anew, also after it has given up. */
export async function restartServer({ server }: Workbench): Promise<void> {
  await server.restart();
}
