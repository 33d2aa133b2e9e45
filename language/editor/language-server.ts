/** What an editor's messages are answered by. */
import { eagerLoad } from "langium";
import { DefaultLanguageServer } from "langium/lsp";

export class DrillwrightLanguageServer extends DefaultLanguageServer {
  /** Those that listen to the editor's greeting. The default makes all, for which it reads the grammar. */
  protected override eagerLoadServices(): void {
    eagerLoad(this.services);
    for (const { lsp } of this.services.ServiceRegistry.all as readonly { lsp?: object }[]) eagerLoad(lsp);
  }
}
