/** The framework's parser for completion, built when the first completion is asked for. */
import {
  type CompletionParserResult,
  createCompletionParser,
  LangiumCompletionParser,
  type LangiumCoreServices,
} from "langium";

/** Building the parser takes a fifth of a server's start, and most servers start for other reasons. */
export class LateCompletionParser extends LangiumCompletionParser {
  private readonly services: LangiumCoreServices;
  private built: LangiumCompletionParser | undefined;

  constructor(services: LangiumCoreServices) {
    super(services);
    this.services = services;
  }

  override parse(input: string): CompletionParserResult {
    this.built ??= createCompletionParser(this.services);
    return this.built.parse(input);
  }
}
