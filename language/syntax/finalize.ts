/** Makes a parser ready, and puts off what its first text may not need: a process that reads one plan reads it once. */
import type { LangiumParser } from "langium";
import { type Engine, engineOf } from "./engine.ts";
import { decideByTable } from "./lookahead.ts";

/**
 * The library would now learn the grammar from its rules. A text without a mistake is read without that: the table says how
 * to decide, and the rest is needed to explain what could have followed.
 */
export function finalize(parser: LangiumParser): void {
  const engine = engineOf(parser);
  decideByTable(engine);
  recordWithFew(engine);
  const productions = engine.getGAstProductions.bind(engine);
  engine.getGAstProductions = () => {
    engine.getGAstProductions = productions;
    const { recoveryEnabled } = engine;
    engine.recoveryEnabled = false; // else the tokens that may follow each rule are gathered, which recovery here never asks
    parser.finalize();
    engine.recoveryEnabled = recoveryEnabled;
    return productions();
  };
  engine.selfAnalysisDone = true; // the library would refuse to read a text
}

/**
 * The parser library learns the grammar by running each rule while the parser's methods note what they are called with.
 * For that it replaces, and then deletes, a hundred of them. The framework calls these six.
 */
function recordWithFew(engine: Engine): void {
  const noting: Partial<Engine> = {
    consume: (occurrence, type, options) => engine.consumeInternalRecord(type, occurrence, options),
    subrule: (occurrence, rule, options) => engine.subruleInternalRecord(rule, occurrence, options),
    option: (occurrence, action) => engine.optionInternalRecord(action, occurrence),
    or: (occurrence, alternatives) => engine.orInternalRecord(alternatives, occurrence),
    many: (occurrence, action) => engine.manyInternalRecord(occurrence, action),
    atLeastOne: (occurrence, action) => engine.atLeastOneInternalRecord(occurrence, action),
  };
  const { consume, subrule, option, or, many, atLeastOne } = engine;
  engine.enableRecording = () => void Object.assign(engine, noting, { RECORDING_PHASE: true });
  engine.disableRecording = () => {
    Object.assign(engine, { consume, subrule, option, or, many, atLeastOne, RECORDING_PHASE: false });
  };
}
