/** Finds declarations by name in the whole workspace and in the library. */
import type { AstNodeDescription } from "langium";
import { DefaultWorkspaceSymbolProvider } from "langium/lsp";
import type { WorkspaceSymbol } from "vscode-languageserver";
import { UnitName } from "../generated/tree/ast.ts";

export class DrillwrightWorkspaceSymbolProvider extends DefaultWorkspaceSymbolProvider {
  /** Units are left out: nobody looks for `m`, and each has a handful of spellings. */
  protected override getWorkspaceSymbol(description: AstNodeDescription): WorkspaceSymbol | undefined {
    return description.type === UnitName.$type ? undefined : super.getWorkspaceSymbol(description);
  }
}
