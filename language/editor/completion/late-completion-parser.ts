/** The framework's parser for completion, built when the first completion is asked for. */
import {
  type CompletionParserResult,
  createParser,
  LangiumCompletionParser,
  type LangiumCoreServices,
} from "langium";

/**
 * Building the parser takes a good part of a server's start, and most servers start for other reasons. It does not
 * recover from mistakes: what is looked for is how the text before the cursor can go on, not how to get over it.
 */
export class LateCompletionParser extends LangiumCompletionParser {
  private build: (() => void) | undefined;

  constructor(services: LangiumCoreServices) {
    super(withoutRecovery(services));
    this.build = () => {
      createParser(services.Grammar, this, services.parser.Lexer.definition);
      this.finalize();
    };
  }

  override parse(input: string): CompletionParserResult {
    this.build?.();
    this.build = undefined;
    return super.parse(input);
  }
}

function withoutRecovery(services: LangiumCoreServices): LangiumCoreServices {
  const config = { ...services.parser.ParserConfig, recoveryEnabled: false };
  const parser = Object.create(services.parser, { ParserConfig: { value: config } });
  return Object.create(services, { parser: { value: parser } });
}
