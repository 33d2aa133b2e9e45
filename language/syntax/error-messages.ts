/** What the parser expected where it could not go on. What is said about it is made from this, when all is parsed. */
import { AbstractParserErrorMessageProvider } from "langium";
import type { TokenType } from "./tokens.ts";

export class DrillwrightParserErrorMessages extends AbstractParserErrorMessageProvider {
  /** What could have followed at the last error, as starts of paths. */
  expected: readonly (readonly TokenType[])[] = [];

  override buildMismatchTokenMessage({ expected }: { expected: TokenType }): string {
    return this.record([[expected]]);
  }

  override buildNoViableAltMessage({
    expectedPathsPerAlt,
  }: {
    expectedPathsPerAlt: TokenType[][][];
  }): string {
    return this.record(expectedPathsPerAlt.flat());
  }

  override buildEarlyExitMessage({
    expectedIterationPaths,
  }: {
    expectedIterationPaths: TokenType[][];
  }): string {
    return this.record(expectedIterationPaths);
  }

  override buildNotAllInputParsedMessage(): string {
    return this.record([]);
  }

  private record(expected: readonly (readonly TokenType[])[]): string {
    this.expected = expected;
    return "This cannot be read.";
  }
}
