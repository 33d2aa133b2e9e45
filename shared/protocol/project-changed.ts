import type { NotificationMessage } from "./message.ts";

/** What `project` would answer may have changed. */
export const projectChanged: NotificationMessage<null> = { method: "drillwright/projectChanged" };
