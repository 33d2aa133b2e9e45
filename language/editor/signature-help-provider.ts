/** The parameters of a drill while its arguments are typed: `block "Gate" from "Start-line gate" with …`. */
import type { DocumentationProvider, LangiumDocument } from "langium";
import type { SignatureHelpProvider } from "langium/lsp";
import type { SignatureHelp, SignatureHelpOptions, SignatureHelpParams } from "vscode-languageserver";
import type { Document, Drill } from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import { givenNames, openUse } from "./completion/drills.ts";
import { documented, written } from "./descriptions/markdown.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";

export class DrillwrightSignatureHelpProvider implements SignatureHelpProvider {
  readonly signatureHelpOptions: SignatureHelpOptions = {
    triggerCharacters: [" ", ","],
    retriggerCharacters: ["=", ","],
  };
  private readonly names: Names;
  private readonly documentation: DocumentationProvider;

  constructor(services: DrillwrightEditorServices) {
    this.names = services.names.Names;
    this.documentation = services.documentation.DocumentationProvider;
  }

  /** Reads the statement before the cursor alone, since its tree is not finished yet. */
  provideSignatureHelp(
    document: LangiumDocument,
    { position }: SignatureHelpParams,
  ): SignatureHelp | undefined {
    const end = document.textDocument.offsetAt(position);
    const text = document.textDocument.getText().slice(Math.max(0, end - LONGEST_STATEMENT), end);
    const use = openUse(text, document as LangiumDocument<Document>, this.names);
    if (use === undefined || use.drill.parameters.length === 0) return undefined;
    const { drill, name, given = "" } = use;
    const parameters = drill.parameters.map((parameter) => ({ label: written(parameter) }));
    const documentation = this.documentation.getDocumentation(drill);
    return {
      signatures: [
        {
          label: `${name} with ${parameters.map(({ label }) => label).join(", ")}`,
          parameters,
          ...(documentation === undefined
            ? {}
            : { documentation: { kind: "markdown", value: documented(documentation) } }),
        },
      ],
      activeSignature: 0,
      ...active(drill, given),
    };
  }
}

/** How far back a statement is looked for. */
const LONGEST_STATEMENT = 2000;

/** The parameter that is being given: the one named last, else the first that is not given yet. */
function active(drill: Drill, given: string): { activeParameter?: number } {
  const named = givenNames(given);
  const last = named.at(-1);
  const index =
    last === undefined
      ? drill.parameters.findIndex(({ name }) => !named.includes(name))
      : drill.parameters.findIndex(({ name }) => name === last);
  return index < 0 ? {} : { activeParameter: index };
}
