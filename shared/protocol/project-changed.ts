import type { NotificationMessage } from "./message.ts";

/** A file of the workspace, or a table that was read, has changed: what `sessionScore` answers may be another. */
export const projectChanged: NotificationMessage<ProjectChangedParams> = {
  method: "drillwright/projectChanged",
};

export interface ProjectChangedParams {
  /** True where what `project` answers has changed as well. */
  readonly declarations: boolean;
}
