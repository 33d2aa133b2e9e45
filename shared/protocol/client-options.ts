/** What an editor tells about itself when it starts the server, as `initializationOptions`. All may be missing. */
export interface ClientOptions {
  /**
   * Ids of the commands the editor can run, from `shared/commands.ts`. Only these may stand on a code lens: an editor
   * that does not know a command would show a link that leads nowhere.
   */
  readonly commands?: readonly string[];
}
