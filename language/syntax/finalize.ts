/** Makes a parser ready, and puts off what its first text may not need: a process that reads one plan reads it once. */
import type { LangiumParser } from "langium";
import { engineOf } from "./engine.ts";

/** What tells the alternatives of a rule apart is worked out when the rule is entered first; most are in few plans. */
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
  engine.recoveryEnabled = false; // else the tokens that may follow each rule are gathered, which recovery here never asks
  parser.finalize();
  engine.recoveryEnabled = recoveryEnabled;
}
