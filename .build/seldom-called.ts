import type { LateNames } from "./late-imports.ts";

/**
 * What most runs never call. The parser and what explains mistakes: texts without one are read by the reader that is written
 * from the grammar. Services of the framework that nobody asks for. And the flight model.
 */
export const SELDOM_CALLED: LateNames = {
  "language/syntax/guarded-parser.ts": { "./recovering-parser.ts": ["createRecoveringParser"] },
  "language/checks/document-validator.ts": { "../syntax/syntax-errors.ts": ["syntaxErrors"] },
  "language/checks/broken-parts.ts": { "../syntax/syntax-errors.ts": ["brokenPlaces"] },
  "language/core-module.ts": {
    "./syntax/error-messages.ts": ["DrillwrightParserErrorMessages"],
    "./syntax/slip-tokens.ts": ["DrillwrightTokenBuilder"],
  },
  "server/scoring/physics.ts": {
    "../flight/launch-efficiency.ts": ["launchEfficiency"],
    "../flight/standard-carry.ts": ["standardCarry"],
  },
  "server/flight/cross-checks.ts": { "./flight-cross-checks.ts": ["disagreementsWithFlight"] },
  "node_modules/langium/lib/default-module.js": {
    "./documentation/documentation-provider.js": ["JSDocDocumentationProvider"],
    "./languages/grammar-config.js": ["createGrammarConfig"],
    "./parser/completion-parser-builder.js": ["createCompletionParser"],
    "./parser/langium-parser-builder.js": ["createLangiumParser"],
    "./parser/langium-parser.js": ["LangiumParserErrorMessageProvider"],
    "./parser/lexer.js": ["DefaultLexer", "DefaultLexerErrorMessageProvider"],
    "./parser/token-builder.js": ["DefaultTokenBuilder"],
    "./serializer/hydrator.js": ["DefaultHydrator"],
  },
};

/** And what an editor may never ask for, or asks for later. */
export const SELDOM_CALLED_BY_EDITORS: LateNames = {
  "language/editor/editor-module.ts": {
    "./completion/completion-parser.ts": ["createCompletionParser"],
    "../syntax/lexer.ts": ["createLexer"],
  },
  "server/lsp/main.ts": { "node:crypto": ["createHash"] },
  "server/node/growing-file.ts": {
    "node:crypto": ["createHash"],
    "node:fs/promises": ["open", "stat"],
  },
  "node_modules/vscode-jsonrpc/lib/node/main.js": { crypto: ["randomBytes"] },
  "node_modules/vscode-languageserver/lib/node/files.js": { child_process: ["fork", "spawnSync"] },
};
