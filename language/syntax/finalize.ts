/** Makes a parser ready, and puts off what its first text may not need: a process that reads one plan reads it once. */
import type { LangiumParser } from "langium";
import { type Engine, engineOf } from "./engine.ts";
import { decideByTable } from "./lookahead.ts";

/** How to decide in a rule is read from the table when the rule is entered first; most rules are in few plans. */
export function finalize(parser: LangiumParser): void {
  const engine = engineOf(parser);
  const { recoveryEnabled } = engine;
  const pending = new Map<number, { readonly name: string }>();
  const compute = engine.preComputeLookaheadFunctions.bind(engine);
  engine.preComputeLookaheadFunctions = (rules) => {
    for (const rule of rules) pending.set(engine.fullRuleNameToShort[rule.name] as number, rule);
  };
  const enter = engine.ruleInvocationStateUpdate.bind(engine);
  engine.ruleInvocationStateUpdate = (index, name, occurrence) => {
    const rule = pending.get(index);
    if (rule !== undefined) {
      pending.delete(index);
      compute([rule]);
    }
    enter(index, name, occurrence);
  };
  recordWithFew(engine);
  decideByTable(engine);
  engine.recoveryEnabled = false; // else the tokens that may follow each rule are gathered, which recovery here never asks
  parser.finalize();
  engine.recoveryEnabled = recoveryEnabled;
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
