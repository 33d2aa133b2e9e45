/** The language's services, wired. Nothing here knows an editor. */
import {
  CstUtils,
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  type DefaultSharedCoreModuleContext,
  type GrammarConfig,
  inject,
  type LangiumCoreServices,
  type LangiumSharedCoreServices,
  type Module,
  type PartialLangiumCoreServices,
  type PartialLangiumSharedCoreServices,
} from "langium";
import { DrillwrightDocumentValidator } from "./checks/document-validator.ts";
import { DrillwrightGeneratedModule, DrillwrightGeneratedSharedModule } from "./generated/tree/module.ts";
import { DrillwrightWorkspaceManager } from "./library/workspace-manager.ts";
import { DrillwrightDocumentBuilder } from "./names/document-builder.ts";
import { DrillwrightDocuments } from "./names/documents.ts";
import { DrillwrightIndexManager } from "./names/index-manager.ts";
import { NotingLinker } from "./names/linker.ts";
import { Names } from "./names/names.ts";
import { DrillwrightScopeComputation } from "./names/scope-computation.ts";
import { DrillwrightScopeProvider } from "./names/scope-provider.ts";
import { DrillwrightParserErrorMessages } from "./syntax/error-messages.ts";
import { createGuardedParser } from "./syntax/guarded-parser.ts";
import { DrillwrightTokenBuilder } from "./syntax/slip-tokens.ts";

/** What the language adds to the framework's services. */
export interface DrillwrightAddedServices {
  names: { Names: Names };
}

export type DrillwrightServices = LangiumCoreServices & DrillwrightAddedServices;

/** Stated here, as finding it out would read the grammar, which nothing else needs where a text has no mistake. */
export const GRAMMAR_CONFIG: GrammarConfig = {
  multilineCommentRules: ["ML_COMMENT"],
  nameRegexp: CstUtils.DefaultNameRegexp,
};

export const drillwrightModule: Module<
  DrillwrightServices,
  PartialLangiumCoreServices & DrillwrightAddedServices
> = {
  names: { Names: (services) => new Names(services.shared) },
  parser: {
    GrammarConfig: () => GRAMMAR_CONFIG,
    LangiumParser: (services) => createGuardedParser(services),
    ParserErrorMessageProvider: () => new DrillwrightParserErrorMessages(),
    TokenBuilder: () => new DrillwrightTokenBuilder(),
  },
  references: {
    Linker: (services) => new NotingLinker(services),
    ScopeComputation: (services) => new DrillwrightScopeComputation(services),
    ScopeProvider: (services) => new DrillwrightScopeProvider(services),
  },
  validation: { DocumentValidator: (services) => new DrillwrightDocumentValidator(services) },
};

export const drillwrightSharedModule: Module<LangiumSharedCoreServices, PartialLangiumSharedCoreServices> = {
  workspace: {
    DocumentBuilder: (services) => new DrillwrightDocumentBuilder(services),
    IndexManager: (services) => new DrillwrightIndexManager(services),
    LangiumDocuments: (services) => new DrillwrightDocuments(services),
    WorkspaceManager: (services) => new DrillwrightWorkspaceManager(services),
  },
};

/** Services for hosts without an editor: the command line, tests, other programs. */
export function createCoreServices(context: DefaultSharedCoreModuleContext): {
  shared: LangiumSharedCoreServices;
  drillwright: DrillwrightServices;
} {
  const shared = inject(
    createDefaultSharedCoreModule(context),
    DrillwrightGeneratedSharedModule,
    drillwrightSharedModule,
  );
  const drillwright = inject(
    createDefaultCoreModule({ shared }),
    DrillwrightGeneratedModule,
    drillwrightModule,
  );
  shared.ServiceRegistry.register(drillwright);
  return { shared, drillwright };
}
